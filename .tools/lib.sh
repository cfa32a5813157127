# Sourced by the scripts beside it: where things are, and how they speak.
# shellcheck shell=bash

set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
cd "$root"
# shellcheck source=versions
. .tools/versions

# Outside the checkout, with the version in the name, so that several clones share one set of tools.
cache=${XDG_CACHE_HOME:-$HOME/.cache}/slackwater
trunk_dir=$cache/trunk-$TRUNK
wasm_bindgen_dir=$cache/wasm-bindgen-$WASM_BINDGEN
wasm_split_dir=$cache/wasm-split-$WASM_SPLIT
geckodriver_dir=$cache/geckodriver-$GECKODRIVER
cargo_mutants_dir=$cache/cargo-mutants-$CARGO_MUTANTS
cargo_audit_dir=$cache/cargo-audit-$CARGO_AUDIT
node_bin=$root/tests/browser/node_modules/.bin

say() { printf '== %s\n' "$*"; }
fail() {
    printf 'slackwater: %s\n' "$*" >&2
    exit 1
}
have() { command -v "$1" >/dev/null 2>&1; }

# at_least 1.90 1.95.0: is the second version the first or newer?
at_least() { [ "$(printf '%s\n%s\n' "$1" "$2" | sort -V | head -n 1)" = "$1" ]; }

# The Python environment's folder changes with the interpreter and with the list of packages.
python_dir() {
    local key
    key=$({ python3 --version && cat .tools/requirements.txt; } | sha256sum | cut -c1-12)
    printf '%s/python-%s' "$cache" "$key"
}

# Puts the pinned tools before whatever else the machine has.
use_tools() { PATH=$trunk_dir/bin:$wasm_bindgen_dir/bin:$wasm_split_dir/bin:$node_bin:$PATH; }
use_python() { PATH=$(python_dir)/bin:$PATH; }
