#!/usr/bin/env bash
# Writes the static site to dist/. Run .tools/setup.sh page first.
# shellcheck source=lib.sh
. "$(dirname "$0")/lib.sh"
use_tools
cargo fetch --locked --quiet
# Offline, so that Trunk never looks for newer or other tools than the pinned ones on PATH.
# NO_COLOR=1, a common habit, is no value that Trunk understands; a failed build needs no backtrace of it.
env -u NO_COLOR -u RUST_BACKTRACE trunk --offline --skip-version-check build --release --locked
node .tools/release.mjs dist
