#!/usr/bin/env bash
# Sets up what a job needs; says what it does, and leaves alone what is there already.
# Usage: .tools/setup.sh check | page | test | mutation | advisories
#   check  Rust with its formatter and linter
#   page   check, and what builds and serves the page
#   test   page, and three browsers with their drivers, a PDF reader and Python packages
#   mutation, advisories   check, and the program that the job is named after
# shellcheck source=lib.sh
. "$(dirname "$0")/lib.sh"

# Installs Debian packages where this user may; else says exactly what to run.
debian_packages() {
    local purpose=$1
    shift
    local install="apt-get install --no-install-recommends $*"
    have apt-get || fail "$purpose needs these programs (Debian's package names): $*. Install them, then run the same command again."
    [ "$(id -u)" = 0 ] || fail "$purpose needs Debian packages. Run: sudo $install   then the same command again."
    say "installing with root rights, for $purpose: $*"
    DEBIAN_FRONTEND=noninteractive apt-get -qq update </dev/null
    # shellcheck disable=SC2086 # words on purpose
    DEBIAN_FRONTEND=noninteractive $install -y -qq </dev/null >/dev/null
}

need_rust() {
    local oldest
    oldest=$(sed -n 's/^rust-version *= *"\(.*\)"/\1/p' Cargo.toml)
    have cargo && have rustc || fail "there is no Rust here. Install Rust $oldest or newer with rustup (https://rustup.rs), then run the same command again."
    local found
    found=$(rustc --version | cut -d' ' -f2)
    at_least "$oldest" "$found" || fail "Rust $found is too old: $oldest or newer is needed. Run: rustup update stable"
    have cc || debian_packages "linking Rust programs" gcc libc6-dev
    need_component rustfmt "cargo fmt"
    need_component clippy "cargo clippy"
}

need_component() {
    # shellcheck disable=SC2086 # words on purpose
    if $2 --version >/dev/null 2>&1; then return; fi
    have rustup || fail "'$2' is missing and there is no rustup to add it. Install Rust with rustup (https://rustup.rs)."
    say "adding Rust's $1"
    rustup component add "$1"
}

need_wasm_target() {
    [ -d "$(rustc --print sysroot)/lib/rustlib/wasm32-unknown-unknown/lib" ] && return
    have rustup || fail "Rust's target wasm32-unknown-unknown is missing and there is no rustup to add it. Install Rust with rustup (https://rustup.rs)."
    say "adding Rust's target wasm32-unknown-unknown"
    rustup target add wasm32-unknown-unknown
}

# The standard library is compiled along with the page, for size; build.sh does without it if need be.
need_rust_source() {
    [ -e "$(rustc --print sysroot)/lib/rustlib/src/rust/library/Cargo.lock" ] && return
    have rustup || { say "no rustup to add the source of Rust's library: the page will be larger" && return; }
    say "adding the source of Rust's library"
    rustup component add rust-src || say "that failed: the page will be larger"
}

# need_cargo_tool FOLDER PROGRAM CRATE VERSION [--locked]
need_cargo_tool() {
    local folder=$1 program=$2 crate=$3 version=$4
    shift 4
    case "$("$folder/bin/$program" --version 2>/dev/null | head -n 1) " in *" $version "*) return ;; esac
    say "building $crate $version into $folder (once for all clones; some minutes)"
    # The flags and folders of this project's own builds are not meant for its tools.
    env -u RUSTFLAGS -u CARGO_TARGET_DIR -u CARGO_BUILD_TARGET \
        cargo install --quiet --root "$folder" --version "$version" "$crate" "$@"
}

# This tool cannot tell its version; its folder's name does.
need_wasm_split() {
    [ -x "$wasm_split_dir/bin/wasm-split-cli" ] && return
    say "building wasm_split_cli_support $WASM_SPLIT into $wasm_split_dir (once for all clones; some minutes)"
    env -u RUSTFLAGS -u CARGO_TARGET_DIR -u CARGO_BUILD_TARGET \
        cargo install --quiet --root "$wasm_split_dir" --version "$WASM_SPLIT" --locked \
        --features build-binary wasm_split_cli_support
}

need_node() {
    local oldest=$1 purpose=$2
    have node && have npm || debian_packages "$purpose" nodejs npm
    local found
    found=$(node --version)
    at_least "$oldest" "${found#v}" || fail "Node ${found#v} is too old for $purpose: $oldest or newer is needed."
}

need_npm_packages() {
    local stamp=tests/browser/node_modules/.slackwater
    cmp -s tests/browser/package-lock.json "$stamp" && return
    say "installing wasm-opt and the browser driver into tests/browser/node_modules"
    (cd tests/browser && npm ci --no-audit --no-fund --loglevel=error </dev/null)
    cp tests/browser/package-lock.json "$stamp"
}

need_browser() {
    local missing=()
    [ -n "${CHROMIUM:-}" ] || have chromium || missing+=(chromium)
    # The main job runs in three engines, each with its driver; WebKit's browser needs a screen.
    have chromedriver || missing+=(chromium-driver)
    have firefox-esr || missing+=(firefox-esr)
    have WebKitWebDriver || missing+=(webkit2gtk-driver)
    have xvfb-run && have xauth || missing+=(xvfb xauth)
    have pdftotext && have pdfinfo && have pdftoppm || missing+=(poppler-utils)
    have zbarimg || missing+=(zbar-tools)
    # A browser without a single font prints empty boxes.
    [ -n "$(fc-list 2>/dev/null)" ] || missing+=(fontconfig fonts-liberation)
    [ ${#missing[@]} = 0 ] || debian_packages "the browser tests" "${missing[@]}"
}

need_python() {
    have python3 && python3 -c 'import venv, ensurepip' 2>/dev/null ||
        debian_packages "regenerating published values" python3 python3-venv
    local folder
    folder=$(python_dir)
    [ -e "$folder/complete" ] && return
    say "installing the Python packages of .tools/requirements.txt into $folder"
    rm -rf "$folder"
    python3 -m venv "$folder"
    "$folder/bin/pip" install --quiet --disable-pip-version-check -r .tools/requirements.txt
    touch "$folder/complete"
}

# The versions that must stand in a second file too.
check_versions() {
    grep -qF "wasm-bindgen = { version = \"=$WASM_BINDGEN\"" Cargo.toml ||
        fail "Cargo.toml must ask for wasm-bindgen =$WASM_BINDGEN, as .tools/versions does."
    local pair
    for pair in "\"binaryen\": \"$BINARYEN\"" "\"playwright-core\": \"$PLAYWRIGHT_CORE\"" "\"lighthouse\": \"$LIGHTHOUSE\""; do
        grep -qF "$pair" tests/browser/package.json ||
            fail "tests/browser/package.json must say $pair, as .tools/versions does."
    done
}

job=${1:-}
case $job in check | page | test | mutation | advisories) ;; *) fail "usage: .tools/setup.sh check | page | test | mutation | advisories" ;; esac
mkdir -p "$cache"
# Two clones must not install the same tool at the same time.
if have flock; then
    exec 9>"$cache/lock"
    flock -n 9 || { say "waiting for another set-up to finish" && flock 9; }
fi
check_versions
need_rust
case $job in
check) exit ;;
mutation) need_cargo_tool "$cargo_mutants_dir" cargo-mutants cargo-mutants "$CARGO_MUTANTS" --locked && exit ;;
advisories) need_cargo_tool "$cargo_audit_dir" cargo-audit cargo-audit "$CARGO_AUDIT" --locked && exit ;;
esac
need_wasm_target
need_rust_source
need_node "$NODE_FOR_PAGE" "building the page"
need_npm_packages
need_cargo_tool "$trunk_dir" trunk trunk "$TRUNK" --locked
# Not --locked: the crate's own lock file asks for more than it needs, and takes longer.
need_cargo_tool "$wasm_bindgen_dir" wasm-bindgen wasm-bindgen-cli "$WASM_BINDGEN"
need_wasm_split
[ "$job" = page ] && exit
need_node "$NODE_FOR_TESTS" "the browser tests"
need_browser
need_cargo_tool "$geckodriver_dir" geckodriver geckodriver "$GECKODRIVER" --locked
need_python
