#!/usr/bin/env bash
# Writes the static site to dist/. Run .tools/setup.sh page first.
# shellcheck source=lib.sh
. "$(dirname "$0")/lib.sh"
use_tools
wasm=wasm32-unknown-unknown
# Rust's standard library is compiled along, for size and without what panics would say. That takes
# options which a stable compiler knows but keeps behind RUSTC_BOOTSTRAP, and crates that only the
# library's own lock file names; where any of it or the library's source is missing, the page is built
# as usual and is larger.
small="-Zlocation-detail=none -Zfmt-debug=none -Zunstable-options -Cpanic=immediate-abort"
# shellcheck disable=SC2086 # words on purpose
library=$(rustc --print sysroot)/lib/rustlib/src/rust/library
if [ -e "$library/Cargo.lock" ] &&
    RUSTC_BOOTSTRAP=1 rustc --target $wasm $small --print cfg >/dev/null 2>&1 &&
    RUSTC_BOOTSTRAP=1 cargo fetch --locked --quiet --manifest-path "$library/Cargo.toml"; then
    export RUSTC_BOOTSTRAP=1 CARGO_UNSTABLE_BUILD_STD=std,panic_abort
    export CARGO_UNSTABLE_BUILD_STD_FEATURES=optimize_for_size
else
    small=
    say "Rust's source or its crates are missing, or this Rust lacks an option: the page will be larger"
    large=yes
fi
# The cut into parts (.tools/bin/wasm-bindgen) follows what the linker notes down.
export CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_RUSTFLAGS="$small -Clink-arg=--emit-relocs"
export CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER=$root/.tools/bin/linker
export WASM_BINDGEN_PROGRAM=$wasm_bindgen_dir/bin/wasm-bindgen PARTS_FOLDER=$root/target/parts
PATH=$root/.tools/bin:$PATH
export SLACKWATER_TEXTS=$root/target/texts
# Cargo does not know of these files: it writes them only when it runs .tools/words.rs.
[ -e "$SLACKWATER_TEXTS/en.txt" ] || touch .tools/words.rs
cargo fetch --locked --quiet
# Offline, so that Trunk never looks for newer or other tools than the pinned ones on PATH.
# NO_COLOR=1, a common habit, is no value that Trunk understands; a failed build needs no backtrace of it.
env -u NO_COLOR -u RUST_BACKTRACE trunk --offline --skip-version-check build --release --locked
node .tools/release.mjs dist
# What the stage of sizes must know: such a page is weighed, but not held to the budget.
rm -f tests/browser/out/large
if [ "${large:-}" ]; then mkdir -p tests/browser/out && touch tests/browser/out/large; fi
