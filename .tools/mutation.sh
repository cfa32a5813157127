#!/usr/bin/env bash
# Changes the readers and writers of saved plans in small ways, one at a time, and tells which changes
# no test notices. Usage: .tools/mutation.sh [ARGUMENTS OF cargo mutants]
# For instance: .tools/mutation.sh --file 'src/plan/link/*.rs' --shard 0/4
# Run .tools/setup.sh mutation first. What is found stands in target/mutation/mutants.out.
# shellcheck source=lib.sh
. "$(dirname "$0")/lib.sh"
files=()
for path in 'src/plan/link/*.rs' src/plan/kept.rs 'src/plan/kept/*.rs' src/plan/document.rs src/plan/members.rs src/plan/pick.rs; do
    files+=(--file "$path")
done
case " $* " in *" --file "*) files=() ;; esac
mkdir -p target/mutation
# No debugging information: each change is compiled anew. The million of `make fuzz` and the short
# fuzz judge time, which a machine at work on this does not keep.
export CARGO_PROFILE_DEV_DEBUG=0 CARGO_PROFILE_TEST_DEBUG=0
nice -n 10 "$cargo_mutants_dir/bin/cargo-mutants" mutants --no-shuffle --jobs 1 --output target/mutation \
    --timeout 90 --baseline run --cargo-arg=--locked --no-default-features "${files[@]}" "$@" \
    -- --lib --test laws -- plan:: links:: saved:: garbage::
