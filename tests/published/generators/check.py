#!/usr/bin/env python3
"""Runs every generator and compares what it prints with the checked-in table.

A generator's docstring names the table that it prints: "Prints tests/published/data/X.csv". One
that names several prints the one that its only argument names ("X.csv").

Usage: check.py [--write] [GENERATOR.py ...]; --write replaces the tables instead.
"""

import ast
import difflib
import math
import pathlib
import re
import subprocess
import sys

HERE = pathlib.Path(__file__).resolve().parent
DATA = HERE.parent / "data"

# The generators' own libraries may differ in their last digits from one processor to the next;
# the tests that read the tables allow far more than this.
RELATIVE = 1e-9
ABSOLUTE = 1e-12
# A value near the middle between two decimals may be rounded to either. This only excuses figures
# written out far enough that one step of the last decimal is nothing: never an input such as 24.0.
ROUNDING = 1e-5


def tables(generator):
    """The names of the tables that a generator prints, read without running it."""
    words = ast.get_docstring(ast.parse(generator.read_text(encoding="utf-8"))) or ""
    names = list(dict.fromkeys(re.findall(r"data/([\w.-]+\.csv)", words)))
    if not names:
        raise SystemExit(f"{generator.name}: its docstring names no table, data/X.csv")
    return names


def last_place(number):
    """What a step in the last decimal that is written is worth: 0.01 for '3.14', 1000 for '4.1e4'."""
    digits, _, exponent = number.lower().partition("e")
    return 10.0 ** (int(exponent or 0) - len(digits.partition(".")[2]))


def same_cell(left, right):
    if left == right:
        return True
    try:
        number = float(left)
        step = 1.001 * last_place(left)
        # What is nothing but the last bits of larger numbers has no decimals worth a step.
        allowed = max(ABSOLUTE, step if step < ROUNDING * abs(number) else 0.0)
        return math.isclose(number, float(right), rel_tol=RELATIVE, abs_tol=allowed)
    except ValueError:
        return False


def same_line(left, right):
    left, right = left.split(","), right.split(",")
    return len(left) == len(right) and all(map(same_cell, left, right))


def differences(checked_in, printed):
    """The lines of a difference that matters, or nothing."""
    left, right = checked_in.splitlines(), printed.splitlines()
    if len(left) == len(right) and all(map(same_line, left, right)):
        return []
    return list(difflib.unified_diff(left, right, "checked in", "regenerated", lineterm="", n=0))


def run(generator, name, several):
    command = [sys.executable, str(generator), *([name] if several else [])]
    done = subprocess.run(command, capture_output=True, text=True, encoding="utf-8", stdin=subprocess.DEVNULL)
    if done.returncode != 0 or not done.stdout.strip():
        raise SystemExit(f"{generator.name} failed or printed nothing:\n{done.stderr}")
    return done.stdout


def main(arguments):
    write = "--write" in arguments
    chosen = [HERE / pathlib.Path(a).name for a in arguments if a != "--write"]
    faults = checked = 0
    for generator in chosen or sorted(HERE.glob("*.py")):
        if generator.samefile(__file__):
            continue
        names = tables(generator)
        for name in names:
            printed = run(generator, name, len(names) > 1)
            table = DATA / name
            checked += 1
            if write:
                table.write_text(printed, encoding="utf-8")
                continue
            found = differences(table.read_text(encoding="utf-8"), printed) if table.exists() else ["it is not checked in"]
            if found:
                faults += 1
                print(f"{name} is not what {generator.name} prints:", *found[:20], sep="\n  ")
    print(f"published tables regenerated: {checked - faults} as checked in, {faults} not")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
