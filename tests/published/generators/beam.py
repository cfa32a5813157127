"""Beams of one section under one load all along, on two to four supports with overhangs, solved with
cubic finite elements (SciPy): no formula of a handbook and none of this project. Prints
tests/published/data/building_beam.csv.
"""

import numpy as np
from scipy.sparse import lil_matrix
from scipy.sparse.linalg import spsolve

ELEMENTS = 480


def solve(length, supports, load, rigidity):
    """Deflections (m, downwards) at all nodes and reactions (N) at the supports."""
    # Nodes: an even division of each part between ends and supports, so that supports are nodes.
    marks = sorted({0.0, *supports, length})
    nodes = [0.0]
    for start, end in zip(marks, marks[1:]):
        parts = max(8, round(ELEMENTS * (end - start) / length))
        nodes.extend(np.linspace(start, end, parts + 1)[1:])
    nodes = np.array(nodes)
    size = 2 * len(nodes)
    stiffness = lil_matrix((size, size))
    forces = np.zeros(size)
    for index, part in enumerate(np.diff(nodes)):
        block = rigidity / part**3 * np.array([
            [12, 6 * part, -12, 6 * part],
            [6 * part, 4 * part**2, -6 * part, 2 * part**2],
            [-12, -6 * part, 12, -6 * part],
            [6 * part, 2 * part**2, -6 * part, 4 * part**2],
        ])
        at = np.arange(2 * index, 2 * index + 4)
        stiffness[np.ix_(at, at)] += block
        forces[at] += load * part * np.array([1 / 2, part / 12, 1 / 2, -part / 12])
    held = [2 * int(np.argmin(abs(nodes - support))) for support in supports]
    free = [index for index in range(size) if index not in held]
    matrix = stiffness.tocsr()
    moved = np.zeros(size)
    moved[free] = spsolve(matrix[free][:, free].tocsc(), forces[free])
    reactions = -(matrix @ moved - forces)[held]
    return nodes, moved[::2], reactions


CASES = [
    (1.22, [0.16, 1.06], 32.0, 11.1),
    (1.22, [0.2975, 0.9225], 32.0, 11.1),
    (1.4, [0.2, 1.2], 50.0, 30.0),
    (1.0, [0.0, 1.0], 50.0, 30.0),
    (1.22, [0.0, 0.61, 1.22], 65.0, 18.2),
    (1.25, [0.1, 0.5, 1.1], 40.0, 12.0),
    (2.4, [0.0, 0.8, 1.6, 2.4], 70.0, 25.0),
    (2.0, [0.3, 0.7, 1.5, 1.8], 20.0, 5.0),
]


def main():
    print("length_m,supports_m,load_n_per_m,rigidity_n_m2,lowest_mm,left_tip_mm,right_tip_mm,middle_mm,"
          "first_reaction_n,source")
    for length, supports, load, rigidity in CASES:
        nodes, down, reactions = solve(length, supports, load, rigidity)
        middle = (supports[0] + supports[1]) / 2
        at = np.interp(middle, nodes, down)
        figures = [max(down.max(), 0.0), down[0], down[-1], at]
        places = " ".join(f"{place:g}" for place in supports)
        cells = ",".join(f"{1000 * figure + 0.0:.4f}" for figure in figures)
        print(f"{length:g},{places},{load:g},{rigidity:g},{cells},{abs(reactions[0]):.4f},"
              "SciPy sparse solve of cubic beam elements")


if __name__ == "__main__":
    main()
