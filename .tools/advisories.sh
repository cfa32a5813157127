#!/usr/bin/env bash
# Holds every dependency, Rust's and npm's, to the published advisories. Fails where the lists of
# advisories cannot be had: then nothing is known. Run .tools/setup.sh advisories first.
# shellcheck source=lib.sh
. "$(dirname "$0")/lib.sh"
"$cargo_audit_dir/bin/cargo-audit" audit --deny warnings ||
    fail "cargo audit found an advisory, or had no list of them: see above."
(cd tests/browser && npm audit --audit-level=low) ||
    fail "npm audit found an advisory, or had no list of them: see above."
say "no known advisory on any dependency"
