#!/usr/bin/env python3
"""Seasons of the lettuce growth model, integrated independently.

The equations are those of van Henten (1994), Agricultural Systems 45:55-72, Eqs 1-10, with the
parameters printed there or the variants named in a row. Integration: SciPy's DOP853, relative
tolerance 1e-10, restarted wherever the climate jumps. Starvation follows the documented rule of
the tested code: an empty store stays empty until photosynthesis exceeds maintenance.

Each day has `lit_hours` of light from hour 0. Pattern 'square' holds `par_w_per_m2` throughout
them; pattern 'sine' holds, within each hour h, par * sin(pi * (h + 0.5) / lit_hours).
The columns d_nonstructural and d_structural are the rates in the first hour of the first crop.

Needs: scipy==1.17.1.
Prints tests/published/data/growth_seasons.csv.
"""

import math

from scipy.integrate import solve_ivp

PUBLISHED = dict(
    yield_=0.8, roots=0.15, saturation=1.0, boundary=0.007, conversion=0.68, epsilon=17e-6
)
COLUMNS = (
    "season start_nonstructural_g_per_m2 start_structural_g_per_m2 hours pattern lit_hours "
    "day_c par_w_per_m2 day_co2_ppm night_c night_co2_ppm growth_yield root_fraction "
    "growth_saturation boundary_layer_conductance_m_per_s carbohydrate_per_carbon_dioxide "
    "light_use_efficiency_g_per_j d_nonstructural_g_per_m2_s d_structural_g_per_m2_s "
    "nonstructural_g_per_m2 structural_g_per_m2 source"
).split()

# name, n, s, hours, pattern, lit hours, day T, PAR, day CO2, night T, night CO2, variants
SEASONS = [
    ("indoor", 0.18, 0.54, 840, "square", 16, 24, 65, 400, 19, 400, {}),
    ("indoor soilless roots", 0.18, 0.54, 840, "square", 16, 24, 65, 400, 19, 400, {"roots": 0.07}),
    ("indoor lower yield", 0.18, 0.54, 840, "square", 16, 24, 65, 400, 19, 400, {"yield_": 0.72}),
    ("indoor still air", 0.18, 0.54, 840, "square", 16, 24, 65, 400, 19, 400,
     {"roots": 0.07, "boundary": 0.004}),
    ("winter greenhouse", 0.675, 2.025, 1488, "square", 12, 14, 30, 750, 10, 400, {}),
    ("spring greenhouse", 0.18, 0.54, 1368, "square", 12, 16, 60, 750, 10, 400, {}),
    ("summer sun", 0.05, 0.15, 720, "sine", 15, 30, 220, 410, 20, 430, {}),
    ("hot shed", 0.2, 0.6, 720, "sine", 13, 37, 150, 400, 26, 450, {"roots": 0.07}),
    ("cool hall", 0.3, 0.7, 1200, "sine", 9, 8, 60, 420, 6, 420, {}),
    ("continuous light", 0.1, 0.3, 600, "square", 24, 21, 50, 1200, 21, 1200, {}),
    ("other saturation", 0.18, 0.54, 840, "square", 14, 22, 80, 600, 16, 500,
     {"saturation": 1.1981, "conversion": 30 / 44}),
    ("weak lamp", 0.25, 0.75, 960, "square", 10, 20, 8, 400, 18, 400, {"epsilon": 15e-6}),
    ("dark store", 10, 30, 48, "square", 0, 20, 0, 400, 20, 400, {}),
    ("starved", 0.2, 20, 96, "square", 0, 25, 0, 400, 25, 400, {}),
    ("starved then lit", 0.5, 40, 120, "square", 4, 12, 90, 400, 30, 400, {}),
    ("beyond the polynomial", 2, 6, 72, "square", 12, 43, 200, 400, 20, 400, {}),
]


def rates(n, s, climate, p):
    """dn/dt and ds/dt, g per m2 and second."""
    temperature, par, co2 = climate
    gamma = 40.0 * 2.0 ** ((temperature - 20) / 10)
    carboxylation = -1.32e-5 * temperature**2 + 5.94e-4 * temperature - 2.64e-3
    gross = 0.0
    if carboxylation > 0 and par > 0 and co2 > gamma:
        conductance = 1 / (1 / p["boundary"] + 1 / 0.005 + 1 / carboxylation)
        light = p["epsilon"] * (co2 - gamma) / (co2 + 2 * gamma) * par
        diffusion = conductance * 1.83e-3 * (co2 - gamma)
        gross = 1 / (1 / light + 1 / diffusion)
        gross *= -math.expm1(-0.9 * 0.075 * (1 - p["roots"]) * s)
    growth = 5e-6 * n / (p["saturation"] * s + n) * 1.6 ** ((temperature - 20) / 10) * s
    maintenance = (3.47e-7 * (1 - p["roots"]) + 1.16e-7 * p["roots"]) * s
    maintenance *= 2.0 ** ((temperature - 25) / 10)
    respiration = (1 - p["yield_"]) / p["yield_"] * growth
    return p["conversion"] * gross - growth - maintenance - respiration, growth


def climates(hours, pattern, lit, day_c, par, day_co2, night_c, night_co2):
    """(climate, seconds) for each stretch of constant climate."""
    stretches = []
    for hour in range(hours):
        h = hour % 24
        if h < lit:
            share = math.sin(math.pi * (h + 0.5) / lit) if pattern == "sine" else 1.0
            climate = (day_c, par * share, day_co2)
        else:
            climate = (night_c, 0.0, night_co2)
        if stretches and stretches[-1][0] == climate:
            stretches[-1][1] += 3600
        else:
            stretches.append([climate, 3600])
    return stretches


def live(state, stretches, p):
    for climate, seconds in stretches:
        if state[0] <= 0 and rates(0.0, state[1], climate, p)[0] <= 0:
            continue
        empty = lambda t, y: y[0]
        empty.terminal, empty.direction = True, -1
        solution = solve_ivp(
            lambda t, y: rates(y[0], y[1], climate, p), (0, seconds), state,
            method="DOP853", rtol=1e-10, atol=1e-13, events=empty,
        )
        assert solution.success
        state = [max(solution.y[0][-1], 0.0), solution.y[1][-1]]
        if solution.status == 1:
            state[0] = 0.0
    return state


def main():
    print("# Printed by generators/growth.py; do not edit by hand.")
    print(",".join(COLUMNS))
    for name, n, s, hours, pattern, lit, day_c, par, day_co2, night_c, night_co2, variants in SEASONS:
        p = {**PUBLISHED, **variants}
        stretches = climates(hours, pattern, lit, day_c, par, day_co2, night_c, night_co2)
        start = rates(n, s, stretches[0][0], p)
        end = live([n, s], stretches, p)
        row = [name, n, s, hours, pattern, lit, day_c, par, day_co2, night_c, night_co2]
        row += [p["yield_"], p["roots"], p["saturation"], p["boundary"]]
        row += [repr(p["conversion"]), p["epsilon"]]
        row += ["%.12g" % v for v in (*start, *end)]
        row += ["van Henten 1994 Eqs 1-10 integrated by SciPy DOP853"]
        print(",".join(str(v) for v in row))


if __name__ == "__main__":
    main()
