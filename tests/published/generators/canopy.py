#!/usr/bin/env python3
"""The energy balance of a canopy, solved independently.

Equations 4-7 of Graamans et al. (2017), Agricultural Systems 153:138-147, as one system of four
linear equations for surface excess, sensible heat, latent heat and surface vapour, solved by
NumPy. Saturation is FAO-56 Eq. 11 as a concentration; its slope is taken by the complex step, not
by a formula. Constants: air 1.2 kg/m3, 1005 J/(kg K); latent heat 2450 J/g.

Needs: numpy==2.4.6.
Prints tests/published/data/canopy_balance.csv.
"""

import cmath
import itertools
import math

import numpy

AIR_HEAT = 1.2 * 1005.0
LATENT = 2450.0
COLUMNS = (
    "air_c relative_humidity net_radiation_w_per_m2 leaf_area_index stomatal_s_per_m "
    "aerodynamic_s_per_m concentration_g_per_m3 slope latent_w_per_m2 sensible_w_per_m2 "
    "water_g_per_m2_s surface_excess_k source"
).split()


def concentration(t):
    """Saturated vapour concentration, g/m3; takes a complex temperature in degrees Celsius."""
    return 610.8 * cmath.exp(17.27 * t / (t + 237.3)) * 2.16679 / (t + 273.15)


def main():
    print("# Printed by generators/canopy.py; do not edit by hand.")
    print(",".join(COLUMNS))
    airs = [(5.0, 0.9), (19.0, 0.83), (24.0, 0.6), (34.0, 0.35), (12.0, 1.0)]
    leaves = [(0.05, 200.0, 200.0), (1.2, 450.0, 100.0), (3.0, 157.5, 100.0), (4.5, 90.0, 40.0)]
    for (t, humidity), radiation, (area, stomatal, aerodynamic) in itertools.product(
        airs, [0.0, 60.0, 350.0], leaves
    ):
        radiation = round(radiation * (1 - math.exp(-0.9 * area)), 3)
        saturated = concentration(t + 0j).real
        per_kelvin = concentration(t + 1e-20j).imag / 1e-20
        slope = per_kelvin * LATENT / AIR_HEAT
        air = saturated * humidity
        # Unknowns: excess, sensible, latent, vapour concentration at the surface.
        system = numpy.array([
            [0, 1, 1, 0],
            [-area * AIR_HEAT / aerodynamic, 1, 0, 0],
            [0, 0, 1, -area * LATENT / (stomatal + aerodynamic)],
            [-slope * AIR_HEAT / LATENT, 0, 0, 1],
        ])
        known = [radiation, 0, -area * LATENT / (stomatal + aerodynamic) * air, saturated]
        excess, sensible, latent, _ = numpy.linalg.solve(system, known)
        row = [t, humidity, radiation, area, stomatal, aerodynamic]
        row += ["%.12g" % v for v in (saturated, slope, latent, sensible, latent / LATENT, excess)]
        print(",".join(map(str, row)) + ",Graamans et al. 2017 Eqs 4-7 solved by NumPy")


if __name__ == "__main__":
    main()
