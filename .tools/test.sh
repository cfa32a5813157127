#!/usr/bin/env bash
# Runs the checks. Usage: .tools/test.sh check | test (the first is the quick part of the second).
# Run .tools/setup.sh with the same word first.
# shellcheck source=lib.sh
. "$(dirname "$0")/lib.sh"
job=${1:-test}
wasm=wasm32-unknown-unknown
ran=()

# stage NAME COMMAND...: runs one check, tells its time, stops at the first that fails.
stage() {
    local name=$1 start=$SECONDS
    shift
    say "$name"
    "$@" || fail "make $job: '$name' failed."
    ran+=("$name $((SECONDS - start)) s")
}

# A last line that says what was run.
finish() {
    local all
    all=$(printf '%s; ' "${ran[@]}")
    printf 'make %s: all passed: %s\n' "$job" "${all%; }"
}

stage format cargo fmt --check
stage "lint, core" cargo clippy --locked --quiet --no-default-features --all-targets -- -D warnings
stage "unit, published, law and doc tests" cargo test --locked --no-default-features
if [ "$job" = check ]; then
    finish
    exit
fi

use_tools
use_python
stage "lint, page" cargo clippy --locked --quiet --target $wasm --lib --bin slackwater -- -D warnings
stage documentation env RUSTDOCFLAGS="-D warnings" cargo doc --locked --quiet --no-deps --lib --target $wasm
stage "published values, regenerated" python3 tests/published/generators/check.py
stage "comparison with PHREEQC" python3 tests/peers/phreeqc/compare.py
stage "comparison with NumPy" python3 tests/peers/ensemble/monte_carlo.py
stage "licences and sources" node .tools/dependencies.mjs
stage "calendar files, read back" python3 tests/peers/calendar/read_back.py
stage "page, built" .tools/build.sh
stage "page, sizes" node .tools/sizes.mjs dist
# By name: what a folder argument means has changed between versions of Node. Those that hold the page
# to a time have the machine to themselves, the others share it by two.
timed=(tests/browser/{chances,notebook-reach,speed}.test.mjs)
others=()
for file in tests/browser/*.test.mjs; do
    [[ " ${timed[*]} " == *" $file "* ]] || others+=("$file")
done
stage "browser tests" node --test --test-concurrency=2 "${others[@]}"
stage "browser tests, timed" node --test --test-concurrency=1 "${timed[@]}"
finish
