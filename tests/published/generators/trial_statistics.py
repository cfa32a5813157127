"""Distributions, analyses of variance, checks of residuals and power by SciPy and statsmodels.

Data come from a small congruent generator, so that the inputs are exact decimals and the same
everywhere. Sets of NIST's Statistical Reference Datasets are read from the files that SciPy ships,
with their certified values as printed there. Observations are written treatment:block:value.

Needs: scipy, statsmodels, pandas, numpy. Prints one of tests/published/data/statistics_nist.csv,
tests/published/data/statistics_distributions.csv, tests/published/data/statistics_range.csv,
tests/published/data/statistics_anova.csv, tests/published/data/statistics_residuals.csv,
tests/published/data/statistics_power.csv.
"""

import pathlib
import re
import sys
from importlib.metadata import version

import numpy
import pandas
import scipy.stats
from scipy.stats import f, ncf, norm, studentized_range, t
from statsmodels.formula.api import ols
from statsmodels.stats.anova import anova_lm
from statsmodels.stats.oneway import anova_oneway
from statsmodels.stats.power import FTestAnovaPower


class Congruent:
    """Numbers with one decimal from low to high, by Lehmer's generator (1951)."""

    def __init__(self, seed):
        self.state = seed

    def number(self, low, high):
        self.state = 48271 * self.state % 2147483647
        return (low * 10 + self.state % ((high - low) * 10 + 1)) / 10

    def bell(self, centre, spread):
        """Roughly normal: the sum of four."""
        total = sum(self.number(-spread, spread) for _ in range(4))
        return round(centre + total, 1)


def show(number):
    return f"{float(number):.13g}"


def nist():
    print("case,observations,between,within,f,r_squared,residual_sd,source")
    folder = pathlib.Path(scipy.stats.__file__).parent / "tests/data/nist_anova"
    for case in ["SiRstv", "SmLs01", "SmLs04", "SmLs07", "AtmWtAg"]:
        lines = (folder / f"{case}.dat").read_text().splitlines()
        head = "\n".join(lines[:60])
        between = re.search(r"^Between \w+\s+\d+ (\S+) \S+ (\S+)", head, re.M)
        within = re.search(r"^Within \w+\s+\d+ (\S+)", head, re.M)
        squared = re.search(r"R-Squared (\S+)", head)
        deviation = re.search(r"Standard Deviation\s+(\S+)", head)
        data = [line.split() for line in lines[60:] if line.strip()]
        cells = " ".join(f"{int(group) - 1}:0:{value}" for group, value in data)
        print(
            f"{case},{cells},{between[1]},{within[1]},{between[2]},{squared[1]},{deviation[1]},"
            f"NIST StRD analysis of variance {case}"
        )


def distributions():
    print("function,x,a,b,c,value,source")

    def line(function, x, value, a=0, b=0, c=0):
        print(f"{function},{x:g},{a:g},{b:g},{c:g},{show(value)},scipy.stats {version('scipy')}")

    for a, b in [(1, 1), (1, 10), (2, 6), (2, 12), (3, 16), (4, 20.5), (8, 180), (2.7, 3.3), (11, 1000)]:
        for x in [0.01, 0.3, 1, 2.5, 6, 25]:
            line("f_upper_tail", x, f.sf(x, a, b), a, b)
        for x in [0.001, 0.01, 0.05, 0.5, 0.95]:
            line("f_quantile", x, f.isf(x, a, b), a, b)
        for x in [0.5, 3, 10]:
            for c in [0, 0.5, 4, 30, 400]:
                line("noncentral_f_below", x, ncf.cdf(x, a, b, c) if c else f.cdf(x, a, b), a, b, c)
    for a in [1, 2, 4, 10, 12.5, 20, 200]:
        for x in [0.001, 0.01, 0.05, 0.2]:
            line("t_quantile", x, t.isf(x / 2, a), a)
        for x in [0.3, 2, 5]:
            line("t_two_tails", x, 2 * t.sf(x, a), a)
    for x in [1e-6, 0.001, 0.025, 0.3, 0.5, 0.9, 0.995]:
        line("normal_quantile", x, norm.ppf(x))


def studentized():
    print("groups,freedom,q,upper_tail,above,quantile,source")
    for groups in [2, 3, 4, 5, 8, 12, 20]:
        for freedom in [1, 2, 3, 4, 6, 10, 12.5, 20, 60, 240]:
            for q, above in [(1, 0.5), (3.5, 0.05), (5.5, 0.01)]:
                print(
                    f"{groups},{freedom:g},{q:g},{studentized_range.sf(q, groups, freedom):.9f},"
                    f"{above:g},{studentized_range.isf(above, groups, freedom):.7f},"
                    f"scipy.stats.studentized_range {version('scipy')}"
                )


def unit_means(cells):
    """Observations (treatment, block, values) as a table of unit means."""
    rows = [(a, b, numpy.mean(v)) for a, b, v in cells]
    return pandas.DataFrame(rows, columns=["t", "b", "y"])


def anova_cases():
    def trial(seed, treatments, blocks, heads, gone=(), effect=8, per_block=5):
        chance = Congruent(seed)
        cells = []
        for a in range(treatments):
            for b in range(blocks):
                unit = chance.bell(150 + effect * a + per_block * b, 5)
                values = [round(unit + chance.bell(0, 6), 1) for _ in range(heads)]
                values = [v for i, v in enumerate(values) if (a, b, i) not in gone]
                if (a, b) not in gone and values:
                    cells.append((a, b, values))
        return cells

    one_way = [(a, 0, v) for a, b, v in trial(21, 4, 5, 1)]
    uneven = [(a, 0, v) for a, b, v in trial(22, 3, 6, 1, {(0, 2), (1, 1), (1, 4)})]
    return {
        "one-way": (one_way, False),
        "one-way and uneven": (uneven, False),
        "blocks": (trial(23, 3, 4, 1), True),
        "blocks with two cells missing": (trial(24, 4, 5, 1, {(0, 0), (2, 3)}), True),
        "blocks with half missing": (trial(25, 4, 4, 1, {(0, 0), (0, 1), (1, 2), (2, 3), (3, 0)}), True),
        "subsamples": ([(a, 0, v) for a, b, v in trial(26, 3, 4, 4)], False),
        "blocks and subsamples": (trial(27, 3, 4, 4), True),
        "blocks and subsamples missing": (trial(28, 3, 4, 4, {(0, 1, 2), (2, 3, 0), (2, 3, 1)}), True),
    }


def anova():
    print("case,observations,blocks,quantity,first,second,value,source")
    tool = f"statsmodels {version('statsmodels')}"
    for case, (cells, blocked) in anova_cases().items():
        text = " ".join(f"{a}:{b}:{'/'.join(f'{x:g}' for x in v)}" for a, b, v in cells)

        def line(quantity, value, first=0, second=0, source=tool):
            print(f"{case},{text},{int(blocked)},{quantity},{first},{second},{show(value)},{source}")

        data = unit_means(cells)
        model = ols("y ~ C(b) + C(t)" if blocked else "y ~ C(t)", data).fit()
        table = anova_lm(model, typ=2)
        line("treatment_ss", table.sum_sq["C(t)"])
        line("treatment_f", table.F["C(t)"])
        line("treatment_p", table["PR(>F)"]["C(t)"])
        line("error_ss", table.sum_sq["Residual"])
        line("error_freedom", table.df["Residual"])
        line("r_squared", model.rsquared)
        if blocked:
            sequential = anova_lm(model, typ=1)
            line("block_ss", sequential.sum_sq["C(b)"])
            line("block_f", sequential.F["C(b)"])
        names = model.model.exog_names
        treatments, blocks = sorted(set(data.t)), sorted(set(data.b))

        def row(a):
            out = numpy.zeros(len(names))
            out[0] = 1
            for b in blocks[1:] if blocked else []:
                out[names.index(f"C(b)[T.{b}]")] = 1 / len(blocks)
            if a:
                out[names.index(f"C(t)[T.{a}]")] = 1
            return out

        for a in treatments:
            test = model.t_test(row(a))
            line("mean", test.effect[0], a)
            line("standard_error", test.sd[0][0], a)
            low, high = test.conf_int(0.05)[0]
            line("half_width", (high - low) / 2, a)
            for b in treatments[a + 1 :]:
                test = model.t_test(row(a) - row(b))
                line("difference_error", test.sd[0][0], a, b)
                q = abs(test.tvalue[0][0]) * numpy.sqrt(2)
                tail = studentized_range.sf(q, len(treatments), model.df_resid)
                line("tukey_p", tail, a, b, f"{tool} and scipy.stats.studentized_range")
        groups = [data.y[data.t == a] for a in treatments]
        if not blocked:
            welch = anova_oneway(groups, use_var="unequal", welch_correction=True)
            line("welch_f", welch.statistic)
            line("welch_freedom", welch.df_denom)
            line("welch_p", welch.pvalue)
            tool_s = f"scipy.stats.tukey_hsd {version('scipy')}"
            howell = scipy.stats.tukey_hsd(*groups, equal_var=False).pvalue
            for a in treatments:
                for b in treatments[a + 1 :]:
                    line("games_howell_p", howell[a, b], a, b, tool_s)
        counts = {len(v) for _, _, v in cells}
        if max(counts) > 1:
            heads = pandas.DataFrame(
                [(a, b, i, x) for i, (a, b, v) in enumerate(cells) for x in v],
                columns=["t", "b", "u", "y"],
            )
            within = ols("y ~ C(u)", heads).fit()
            line("heads_ss", within.ssr)
            line("heads_freedom", within.df_resid)
            if len(counts) == 1:
                # On the scale of the heads: treatments over units, units over heads.
                rough = ols("y ~ C(b) + C(t)" if blocked else "y ~ C(t)", heads).fit()
                treated = anova_lm(rough, typ=1)
                treated = treated.sum_sq["C(t)"] / treated.df["C(t)"]
                between = (rough.ssr - within.ssr) / (rough.df_resid - within.df_resid)
                line("treatment_f", treated / between)
                line("units_f", between / (within.ssr / within.df_resid))


def residuals():
    print("case,values,quantity,value,source")
    chance = Congruent(31)

    def bells(count, spread=9):
        return [chance.bell(100, spread) for _ in range(count)]

    samples = {f"bell {n}": bells(n) for n in [3, 4, 5, 6, 9, 11, 12, 20, 48, 200]}
    samples["skewed"] = [round(1.2**i, 3) for i in range(15)]
    samples["two heaps"] = [round(x + 40 * (i % 2), 1) for i, x in enumerate(bells(16, 2))]
    samples["one far out"] = bells(11) + [400]
    for case, values in samples.items():
        found = scipy.stats.shapiro(values)
        text = " ".join(f"{v:g}" for v in values)
        for quantity, value in [("w", found.statistic), ("p", found.pvalue)]:
            print(f"{case},{text},{quantity},{show(value)},scipy.stats.shapiro {version('scipy')}")
    sets = {
        "alike": [bells(6), bells(6), bells(6)],
        "uneven": [bells(4), bells(7), bells(5), bells(9)],
        "spreads differ": [bells(6, 2), bells(6, 5), bells(6, 25)],
    }
    for case, groups in sets.items():
        text = "/".join(" ".join(f"{v:g}" for v in group) for group in groups)
        for quantity, center in [("levene", "mean"), ("brown_forsythe", "median")]:
            found = scipy.stats.levene(*groups, center=center)
            for name, value in [(quantity, found.statistic), (quantity + "_p", found.pvalue)]:
                print(f"{case},{text},{name},{show(value)},scipy.stats.levene {version('scipy')}")


def powers():
    print("groups,replicates,difference,deviation,alpha,power,source")
    for groups in [2, 3, 4, 6]:
        for replicates in [3, 4, 8, 20]:
            for difference in [5, 20, 35]:
                for alpha in [0.05, 0.01]:
                    deviation = 15
                    # Two at the ends, the others half way.
                    effect = numpy.sqrt(difference**2 / 2 / groups) / deviation
                    value = FTestAnovaPower().power(effect, groups * replicates, alpha, k_groups=groups)
                    print(
                        f"{groups},{replicates},{difference},{deviation},{alpha:g},{show(value)},"
                        f"statsmodels FTestAnovaPower {version('statsmodels')}"
                    )


TABLES = {
    "statistics_nist.csv": nist,
    "statistics_distributions.csv": distributions,
    "statistics_range.csv": studentized,
    "statistics_anova.csv": anova,
    "statistics_residuals.csv": residuals,
    "statistics_power.csv": powers,
}

if __name__ == "__main__":
    print("# Generated by trial_statistics.py")
    TABLES[sys.argv[1]]()
