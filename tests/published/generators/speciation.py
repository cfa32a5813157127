#!/usr/bin/env python3
"""Prints tests/published/data/speciation_phreeqc.csv: solutions worked out by PHREEQC.

PyPI package phreeqpython 1.6.2, database vitens.dat, with the brushite of minteq.v4.dat. The solutions
are those of tests/peers/phreeqc/cases.csv, and this is the same run as compare.py there, kept so that
the plain test run checks it without Python.
"""

import importlib.util
import pathlib

from phreeqpython import PhreeqPython

PEER = pathlib.Path(__file__).resolve().parents[2] / "peers" / "phreeqc" / "compare.py"
SHOWN = ("Ca+2", "Mg+2", "SO4-2", "H2PO4-", "HCO3-", "CaSO4", "MgSO4", "KSO4-", "CaHPO4")


def main():
    spec = importlib.util.spec_from_file_location("compare", PEER)
    peer = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(peer)
    code = PhreeqPython(database="vitens.dat")
    code.ip.run_string(peer.BRUSHITE)
    print("# PHREEQC's figures for the solutions of tests/peers/phreeqc/cases.csv: conductivity as it reports it,")
    print("# pH, ionic strength, saturation indices (empty where a part is missing), molalities.")
    print("case,ms_per_cm,ph,ionic_strength,gypsum,brushite,calcite," + ",".join(SHOWN) + ",source")
    for case in peer.cases():
        it = peer.theirs(code, peer.request(case))
        indices = ["" if it[name] is None else f"{it[name]:.4f}" for name in ("gypsum", "brushite", "calcite")]
        molal = [f"{it['species'].get(name, 0.0):.5e}" for name in SHOWN]
        head = [case["case"], f"{it['ms_per_cm']:.6g}", f"{it['ph']:.5f}", f"{it['ionic_strength']:.6g}"]
        print(",".join(head + indices + molal + ["phreeqpython 1.6.2 vitens.dat"]))


if __name__ == "__main__":
    main()
