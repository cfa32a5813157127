#!/usr/bin/env python3
"""Reads the calendar files of `slackwater-solve --calendar` with an independent parser.

The parser is the PyPI package icalendar (RFC 5545). Each ready plan's file must be taken without an
error, hold the dates of the plan's outcome, end each entry a day after its last, and give each entry an
identity of its own. The dates of one plan are worked out by hand below, from its harvest day alone.
"""

import datetime
import json
import os
import subprocess
import sys

import icalendar

EXAMPLES = ("bottle", "bucket", "covered-tank", "floating-boards")
COMMAND = ["cargo", "run", "--locked", "--quiet", "--no-default-features", "--bin", "slackwater-solve", "--"]
# Identity of an entry to the member of the outcome's calendar.
MEMBERS = {
    "seeding": "seeding",
    "transplanting": "transplanting",
    "boards-rest": "boards_rest",
    "pots-leave": "pots_leave",
    "harvest": "harvest",
    "clean": "clean",
    "refill": "refill",
    "seed-next": "seed_next",
    "replant": "replant",
}


def run(*arguments, text=b""):
    done = subprocess.run([*COMMAND, *arguments], input=text, capture_output=True, check=False)
    if done.returncode:
        sys.exit(f"slackwater-solve {arguments}: {done.stderr.decode()}")
    return done.stdout


def entries(file):
    """Identity to first day, day after the last, and title."""
    calendar = icalendar.Calendar.from_ical(file)
    assert not calendar.errors, calendar.errors
    found = {}
    for event in calendar.walk("VEVENT"):
        assert not event.errors, event.errors
        kind = str(event["UID"]).partition("@")[0].partition("-")[2]
        assert kind not in found, f"two entries '{kind}'"
        first, end = event.decoded("DTSTART"), event.decoded("DTEND")
        assert type(first) is datetime.date and type(end) is datetime.date, kind
        assert isinstance(event.decoded("DTSTAMP"), datetime.datetime)
        assert str(event["SUMMARY"]).strip(), kind
        found[kind] = (first, end)
    return found


def check(example):
    plan = run("--example", example)
    file = run("--calendar", text=plan)
    assert file == run("--calendar", text=plan), "the same plan gives the same file"
    lines = file.split(b"\r\n")
    assert lines[-1] == b"" and all(len(line) <= 75 and b"\n" not in line for line in lines)
    outcome = json.loads(run(text=plan))
    calendar, found = outcome["calendar"], entries(file)
    for kind, member in MEMBERS.items():
        written = calendar[member]
        assert (written is None) == (kind not in found), kind
        if written is None:
            continue
        first, end = found[kind]
        last = calendar["harvest_until"] if kind == "harvest" else written
        assert first == datetime.date.fromisoformat(written), kind
        assert end == datetime.date.fromisoformat(last) + datetime.timedelta(1), kind
    if example == "bucket":
        by_hand(json.loads(plan), outcome, found)
    print(f"{example}: {len(found)} entries read back")


def by_hand(plan, outcome, found):
    """Planted on the plan's date, sown 10 days before; cut for 7 days; cleaned for 2; sown again 10
    days before the next planting."""
    planted = datetime.date.fromisoformat(plan["crop"]["date"])
    day = datetime.timedelta
    ready = outcome["season"]["harvest_day"]
    expected = {
        "seeding": planted - day(10),
        "transplanting": planted,
        "harvest": planted + day(ready),
        "replant": planted + day(ready + 7 + 2),
        "seed-next": planted + day(ready + 7 + 2 - 10),
    }
    for kind, date in expected.items():
        assert found[kind][0] == date, (kind, found[kind], date)
    assert found["harvest"][1] - found["harvest"][0] == day(7)


for name in EXAMPLES:
    check(name)
