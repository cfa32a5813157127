#!/usr/bin/env python3
"""The ensemble beside a plain Monte Carlo in NumPy of the same draws, and one season by SciPy.

The seasons are lived through here anew, all members at once as NumPy arrays, from the published
equations: FAO-56 (sun, vapour, open water), Parton and Logan (1981), van Henten (1994), Graamans and
others (2017), Richardson and Wright (1984). The draws come from splitmix64 and scipy.stats.norm.ppf.
Means are numpy.mean, quantiles numpy.quantile (inverted_cdf). Slackwater is the test binary `peers`,
run by cargo. Exits with 1 on any miss; with `--bench` it also times one season by
scipy.integrate.solve_ivp and fails when Slackwater is less than 100 times as fast.
"""

import json
import math
import pathlib
import subprocess
import sys
import time

import numpy as np
from scipy.integrate import solve_ivp
from scipy.stats import norm

ROOT = pathlib.Path(__file__).resolve().parents[3]
# The same sums in the same order, but another library's exponentials: 1e-16 a step, grown over a season.
RELATIVE = 1e-9
# A head may reach its target within a rounding of midnight.
DAYS_OFF = 0
FASTER = 100.0
# One hour of the ensemble is one Heun step; solve_ivp integrates to this instead.
TOLERANCE = 1e-4
LONGEST = 150
MASK = (1 << 64) - 1


class Chance:
    """splitmix64 (Steele, Lea and Flood 2014)."""

    def __init__(self, seed):
        self.state = seed

    def bits(self):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        return z ^ (z >> 31)

    def share(self):
        return ((self.bits() >> 12) + 0.5) / 2**52


def stream(seed, number):
    turned = Chance(number).bits()
    turned = ((turned << 32) | (turned >> 32)) & MASK
    return Chance(Chance(seed).bits() ^ turned)


A = np.array([[0.567, 0.086, -0.002], [0.253, 0.504, -0.050], [-0.006, -0.039, 0.244]])
B = np.array([[0.781, 0, 0], [0.328, 0.637, 0], [0.238, -0.341, 0.873]])


def draws(seed, size):
    """Normals of growth and water, and the deviations of every day: (size, days, 4)."""
    shares, weather = [], []
    for member in range(size):
        chance = stream(seed, member)
        shares.append([chance.share() for _ in range(3)])
        spells = [stream(chance.bits(), 0) for _ in range(22)]
        weather.append([[spells[day // 7].share() for _ in range(4)] for day in range(LONGEST)])
    fresh = norm.ppf(np.array(weather))
    deviations = np.zeros((size, LONGEST, 4))
    today = np.zeros((size, 4))
    for day in range(LONGEST):
        new = np.empty_like(today)
        new[:, :3] = today[:, :3] @ A.T + fresh[:, day, :3] @ B.T
        new[:, 3] = 0.5 * today[:, 3] + math.sqrt(0.75) * fresh[:, day, 3]
        deviations[:, day] = today = new
    return norm.ppf(np.array(shares)), deviations


def saturated(t):  # kPa
    return 0.6108 * np.exp(17.27 * t / (t + 237.3))


def sun_of(latitude, day_of_year):
    phi, season = math.radians(latitude), 2 * math.pi / 365 * day_of_year
    decl = 0.409 * math.sin(season - 1.39)
    sunset = math.acos(max(-1, min(1, -math.tan(phi) * math.tan(decl))))

    def swept(a, b):
        return (b - a) * math.sin(phi) * math.sin(decl) + math.cos(phi) * math.cos(decl) * (math.sin(b) - math.sin(a))

    above = 24 * 60 / math.pi * 0.0820 * (1 + 0.033 * math.cos(season)) / 2 * swept(-sunset, sunset)
    edges = [max(-sunset, min(sunset, math.pi / 12 * (h - 12))) for h in range(25)]
    parts = np.array([swept(a, b) for a, b in zip(edges, edges[1:])])
    return above, parts / parts.sum(), 24 / math.pi * sunset


def weather_of(case, deviation, day):
    """Forcing of one day for all members: temperature, absorbed, PAR, photons, deficit by hour; open water."""
    kelvin, radiation, moist, _, _ = case["spreads"]
    away = np.clip(deviation, -3, 3)
    high, low = case["high"] + kelvin * away[:, 0], case["low"] + kelvin * away[:, 1]
    middle = (high + low) / 2
    high, low = np.where(low > high, middle, high), np.where(low > high, middle, low)
    humidity = np.clip(case["humidity"] + moist * away[:, 3], 0.05, 1)
    above, shares, length = sun_of(case["latitude"], (case["day_of_year"] - 1 + day) % 365 + 1)
    clear = above * (0.75 + 2e-5 * case["elevation"])
    mean = case["solar"]
    outside = np.minimum(np.maximum(mean * (1 + radiation * away[:, 2]), min(0.25 * above, mean)), max(clear, mean))
    inside = outside * case["through"]
    # Parton and Logan (1981), closed at the minimum.
    length = min(max(length, 3.5), 23.75)
    a, b, c = 1.86, 2.20, -0.17
    pace, start, to_sunset = math.pi / (length + 2 * a), 12 - length / 2 + c, length - c
    top = (high - low) * math.sin(pace * to_sunset)
    drop = top / math.expm1(b)
    hours = []
    vapour = (saturated(high) + saturated(low)) / 2 * humidity
    for hour in range(24):
        since = (hour + 0.5 - start) % 24
        if since <= to_sunset:
            t = low + (high - low) * math.sin(pace * since)
        else:
            t = low - drop + (top + drop) * math.exp(-b / (24 - length + c) * (since - to_sunset))
        watts = inside * 1e6 * shares[hour] / 3600
        kelvins = t + 273.15
        chi = 610.8 * np.exp(17.27 * t / (t + 237.3)) * 2.16679 / kelvins
        deficit = np.maximum(chi - 2.16679 * vapour * 1000 / kelvins, 0)
        slope = chi * (17.27 * 237.3 / (t + 237.3) ** 2 - 1 / kelvins) * 2450 / (1.2 * 1005)
        hours.append((t, 0.77 * watts, 0.5 * watts, 0.5 * watts * 4.57, deficit, slope))
    mean_t = (high + low) / 2
    emitted = 4.903e-9 * ((high + 273.16) ** 4 + (low + 273.16) ** 4) / 2
    loss = emitted * (0.34 - 0.14 * np.sqrt(vapour)) * (1.35 * np.minimum(outside / clear, 1) - 0.35)
    net = 0.77 * inside - loss * case["through"]
    gamma = 0.665e-3 * 101.3 * ((293 - 0.0065 * case["elevation"]) / 293) ** 5.26
    delta = 4098 * saturated(mean_t) / (mean_t + 237.3) ** 2
    lacking = (saturated(high) + saturated(low)) / 2 - vapour
    wind = case["wind"]
    et0 = (0.408 * delta * net + gamma * 900 / (mean_t + 273) * wind * lacking) / (delta + gamma * (1 + 0.34 * wind))
    return hours, 1.05 * np.maximum(et0, 0)


TAU, K, LAR = 0.15, 0.9, 0.075


def rates(n, s, t, par, co2, factor):
    """van Henten (1994): dn/dt, ds/dt in g m-2 s-1."""
    gamma = 40 * 2.0 ** ((t - 20) / 10)
    above = np.maximum(co2 - gamma, 0)
    efficiency = 17e-6 * above / (co2 + 2 * gamma)
    carboxylation = np.maximum(-1.32e-5 * t * t + 5.94e-4 * t - 2.64e-3, 0)
    conductance = carboxylation / ((1 / 0.007 + 1 / 0.005) * carboxylation + 1)
    light, diffusion = efficiency * par, conductance * 1.83e-3 * above
    both = light + diffusion
    gross = factor * light * diffusion / np.where(both > 0, both, 1) * (1 - np.exp(-K * LAR * (1 - TAU) * s))
    growth = 5e-6 * 1.6 ** ((t - 20) / 10) * n * s / (s + n)
    maintenance = (3.47e-7 * (1 - TAU) + 1.16e-7 * TAU) * s * 2.0 ** ((t - 25) / 10)
    return 0.68 * gross - growth / 0.8 - maintenance, growth


def thirst(s, hour, case):
    """Graamans and others (2017): kg m-2 s-1, and the share of light that the leaves take."""
    _, absorbed, _, photons, deficit, slope = hour
    leaves = LAR * (1 - TAU) * s
    cover = 1 - np.exp(-K * np.minimum(leaves, 50))
    lai, ra = np.minimum(leaves, 3), case["resistance"]
    stomata = 60 * (1500 + photons) / (200 + photons)
    latent = (slope * absorbed * cover + lai * 2450 * deficit / ra) / (1 + slope + stomata / ra)
    return latent / 2.45e6, cover


def monte_carlo(case, normals, deviations):
    """Harvest day, litres to harvest and litres per kilogram of every member."""
    growth = case["growth_factor"] * np.exp(case["spreads"][3] * normals[:, 0])
    water = np.exp(case["spreads"][4] * normals[:, 1])
    total = 0.04 * math.exp(0.2 * (case["seedling_age"] - 14)) / case["ground"]
    size = len(normals)
    n, s = np.full(size, 0.25 * total), np.full(size, 0.75 * total)
    drawn, harvest = np.zeros(size), np.zeros(size, int)
    needed, per_kg = np.zeros(size), np.zeros(size)
    ground = case["ground"] * case["plants"]
    for day in range(LONGEST):
        hours, open_water = weather_of(case, deviations[:, day], day)
        for hour in hours:
            rate, cover = thirst(s, hour, case)
            drawn += rate * 3600 * ground + open_water / 24 * case["open_area"] * (1 - cover)
            dn, ds = rates(n, s, hour[0], hour[2], case["carbon_dioxide"], growth)
            en, es = rates(np.maximum(n + 3600 * dn, 0), s + 3600 * ds, hour[0], hour[2], case["carbon_dioxide"], growth)
            n, s = np.maximum(n + 1800 * (dn + en), 0), s + 1800 * (ds + es)
        head = (n + s) * case["ground"] * (1 - case["root_share"]) / case["dry_matter"]
        new = (harvest == 0) & (head >= case["target"])
        harvest[new] = day + 1
        needed[new] = (drawn * water)[new]
        per_kg[new] = (drawn * water / (head / 1000 * case["plants"]))[new]
        if harvest.all():
            break
    return harvest, needed, per_kg


def one_season(case, deviation, days):
    """The first member's plants by solve_ivp, hour after hour: dry mass and litres."""
    total = 0.04 * math.exp(0.2 * (case["seedling_age"] - 14)) / case["ground"]
    state = np.array([0.25 * total, 0.75 * total, 0.0])
    ground = case["ground"] * case["plants"]
    for day in range(days):
        hours, open_water = weather_of(case, deviation[None, day], day)
        for hour in hours:
            hour = tuple(float(np.ravel(value)[0]) for value in hour)

            def slope(_, y, hour=hour):
                dn, ds = rates(y[0], y[1], hour[0], hour[2], case["carbon_dioxide"], case["growth_factor"])
                rate, cover = thirst(y[1], hour, case)
                return [dn, ds, rate * ground + float(open_water[0]) / 86400 * case["open_area"] * (1 - cover)]

            state = solve_ivp(slope, (0, 3600), state, rtol=TOLERANCE, atol=1e-6).y[:, -1]
    return state


def ours():
    command = "cargo test --locked --quiet --no-default-features --release --test peers".split()
    command += ["--", "--ignored", "--nocapture", "seasons_for_numpy"]
    text = subprocess.run(command, cwd=ROOT, check=True, capture_output=True, text=True).stdout
    return [json.loads(line.split("PEER ", 1)[1]) for line in text.splitlines() if "PEER " in line]


def main():
    bad, worst = 0, 0.0
    cases = ours()
    size = len(cases[0]["needed"])
    normals, deviations = draws(cases[0]["seed"], size)
    for case in cases:
        harvest, needed, per_kg = monte_carlo(case, normals, deviations)
        off = np.abs(harvest - np.array(case["harvest"])).max()
        theirs = {"harvest": harvest, "needed": needed, "per_kg": per_kg}
        misses = [np.abs(needed / np.array(case["needed"]) - 1).max(), np.abs(per_kg / np.array(case["per_kg"]) - 1).max()]
        for name, values in theirs.items():
            band = case["bands"][name]
            misses.append(abs(band["mean"] / np.mean(values) - 1))
            for end, share in (("low", 0.1), ("middle", 0.5), ("high", 0.9)):
                misses.append(abs(band[end] / np.quantile(values, share, method="inverted_cdf") - 1))
        lasts = np.mean(needed < case["start"])
        wrong = off > DAYS_OFF or max(misses) > RELATIVE or abs(lasts - case["lasts"]) > 1e-12
        worst = max(worst, max(misses))
        bad += wrong
        print(f"{case['name']:16} {size} seasons  largest difference {max(misses):.1e}, lasts {lasts:.3f} and {case['lasts']:.3f}{'  MISS' if wrong else ''}")
    print(f"largest relative difference {worst:.1e}, allowed {RELATIVE:.0e}")
    if "--bench" in sys.argv:
        for case in cases:
            days = int(case["harvest"][0])
            start = time.perf_counter()
            one_season(case, np.zeros((days, 4)), days)
            theirs = time.perf_counter() - start
            each = case["seconds"] / size
            ratio = theirs / each
            print(f"{case['name']:16} {size} seasons {case['seconds']:.3f} s; one by solve_ivp {theirs:.3f} s, {ratio:.0f} times ours")
            bad += ratio < FASTER
    sys.exit(1 if bad else 0)


if __name__ == "__main__":
    main()
