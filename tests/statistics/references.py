"""Random cases with a fixed seed, and what Python says of them. Mean and variance in exact fractions, limits of a ratio
by root finding, power by integration: each another way than the code under test goes.

Writes into the folder given: cases.csv (function;columns…;numbers, blanks apart), scipy.csv (a line a case), and the
measurements of NIST's analysis-of-variance sets that scipy ships, with their certified values (anova.csv)."""

import math
import pathlib
import sys
from fractions import Fraction

import numpy
import scipy
from scipy import optimize, special, stats

folder = pathlib.Path(sys.argv[1])
random = numpy.random.default_rng(20260101)
each = 1000


def t_exceeded(beyond, degrees):
    """scipy 1.10 finds it to nine digits only; Newton's steps on the distribution itself add the others."""
    t = stats.t.isf(beyond / 2, degrees)
    for _ in range(4):
        t += (stats.t.sf(t, degrees) - beyond / 2) / stats.t.pdf(t, degrees)
    return t


def moments(runs):
    exact = [Fraction(run) for run in runs]
    mean = sum(exact) / len(exact)
    variance = sum((run - mean) ** 2 for run in exact) / (len(exact) - 1)
    return mean, variance


def series(runs, confidence):
    mean, variance = moments(runs)
    deviation = math.sqrt(variance)
    half = t_exceeded(1 - confidence, len(runs) - 1) * math.sqrt(variance / len(runs))
    variation = deviation / float(mean) if mean > 0 else None
    return [len(runs), float(mean), deviation, variation, float(mean) - half, float(mean) + half, confidence]


def difference(baseline, new, confidence):
    test = stats.ttest_ind(new, baseline, equal_var=False)
    (b, vb), (a, va) = moments(baseline), moments(new)
    vb, va = float(vb / len(baseline)), float(va / len(new))
    degrees = (va + vb) ** 2 / (va**2 / (len(new) - 1) + vb**2 / (len(baseline) - 1))
    half = t_exceeded(1 - confidence, degrees) * math.sqrt(va + vb)
    change = float(a - b)
    return [change, change - half, change + half, test.pvalue, degrees, confidence]


def saving(baseline, new, confidence, pooled):
    (b, sb), (a, sa) = moments(baseline), moments(new)
    b, sb, a, sa = float(b), float(sb), float(a), float(sa)
    n, m = len(baseline), len(new)
    if pooled:
        degrees = n + m - 2
        sb = sa = ((n - 1) * sb + (m - 1) * sa) / degrees
    vb, va = sb / n, sa / m
    ratio = a / b
    if not pooled:
        scaled = ratio**2 * vb
        degrees = (va + scaled) ** 2 / (va**2 / (m - 1) + scaled**2 / (n - 1))
    t = t_exceeded(1 - confidence, degrees)
    refused = lambda q: abs(a - q * b) / math.sqrt(va + q * q * vb) - t
    limits = [None, None]
    if b / math.sqrt(vb) > t:  # what the test statistic tends to far out
        limits = []
        for direction in (1, -1):
            far = 1.0
            while refused(ratio + direction * far) < 0:
                far *= 2
            distance = optimize.brentq(lambda d: refused(ratio + direction * d), 0, far, xtol=1e-16, rtol=1e-15)
            limits.append(1 - (ratio + direction * distance))
    p = 2 * stats.t.sf(abs(a - b) / math.sqrt(va + vb), degrees)
    return [1 - ratio, *limits, p, degrees, confidence]


def outlier(runs, confidence):
    mean, variance = moments(runs)
    distances = [abs(Fraction(run) - mean) for run in runs]
    n = len(runs)
    t = t_exceeded((1 - confidence) / n, n - 2)
    critical = (n - 1) / math.sqrt(n) * math.sqrt(t * t / (n - 2 + t * t))
    apart = float(max(distances)) > critical * math.sqrt(variance)
    return [distances.index(max(distances)) + 1 if apart else 0]


nodes, weights = numpy.polynomial.legendre.leggauss(300)


def power(n, effect, confidence):
    """The noncentral t is (Z + shift)/W: integrated over W = sqrt(chi-square/degrees)."""
    degrees, shift = 2 * (n - 1), effect * math.sqrt(n / 2)
    t = t_exceeded(1 - confidence, degrees)
    low, high = max(0.0, 1 - 12 / math.sqrt(2 * degrees)), 1 + 12 / math.sqrt(2 * degrees)
    turn, width = shift / t, 9 / t  # the integrand's step
    cuts = sorted({low, high, *(c for c in (turn - width, turn, turn + width) if low < c < high)})
    total = 0.0
    for start, end in zip(cuts, cuts[1:]):
        w = (end - start) / 2 * nodes + (end + start) / 2
        density = numpy.exp(stats.chi2.logpdf(degrees * w * w, degrees)) * 2 * degrees * w
        total += (end - start) / 2 * numpy.sum(weights * density * (special.ndtr(shift - t * w) + special.ndtr(-shift - t * w)))
    return total


def runs_needed(variation, change, confidence, wanted):
    too_few, enough = 1, 10000
    if power(enough, change / variation, confidence) < wanted:
        return [None]
    while enough - too_few > 1:
        middle = (too_few + enough) // 2
        if power(middle, change / variation, confidence) >= wanted:
            enough = middle
        else:
            too_few = middle
    return [enough]


def some_runs(fewest, about, variation):
    most = random.choice([fewest + 3, 30])  # a few runs are the commonest
    runs = about * (1 + variation * random.standard_normal(random.integers(fewest, most)))
    if random.random() < 0.5:  # as a scale shows them
        runs = numpy.round(runs, max(0, 4 - math.ceil(math.log10(about))))
    return [float(run) for run in runs]


def some_confidence():
    return float(random.choice([0.8, 0.9, 0.95, 0.99, round(random.uniform(0.5, 0.9999), 4)]))


def scale():
    return 10 ** random.uniform(-2, 6), 10 ** random.uniform(-4, 0)


def scatters(*all_runs):
    return all(len(set(runs)) > 1 and sum(runs) > 0 for runs in all_runs)


cases, answers = [], []


def add(function, columns, numbers, answer):
    cases.append(";".join([function, *(" ".join(map(repr, column)) for column in [*columns, numbers])]))
    answers.append(" ".join("NA" if value is None else repr(float(value)) for value in answer))


while len(cases) < each:
    runs, confidence = some_runs(2, *scale()), some_confidence()
    if scatters(runs):
        add("SERIES", [runs], [confidence], series(runs, confidence))
while len(cases) < 3 * each:
    (about, variation), confidence, pooled = scale(), some_confidence(), int(random.integers(0, 2))
    baseline = some_runs(2, about, variation)
    new = some_runs(2, about * random.uniform(0.5, 1.2), variation * random.uniform(0.3, 3))
    if not scatters(baseline, new):
        continue
    if len(cases) < 2 * each:
        add("DIFFERENCE", [baseline, new], [confidence], difference(baseline, new, confidence))
    else:
        add("SAVING", [baseline, new], [confidence, pooled], saving(baseline, new, confidence, pooled))
while len(cases) < 4 * each:
    (about, variation), confidence = scale(), some_confidence()
    runs = some_runs(5, about, variation)
    runs[int(random.integers(0, len(runs)))] += about * variation * random.choice([0, 0, -4, 4, 8])
    if scatters(runs):
        add("OUTLIER", [runs], [confidence], outlier(runs, confidence))
while len(cases) < 5 * each:
    numbers = [10 ** random.uniform(-2, 0), 10 ** random.uniform(-2, 0), some_confidence(), random.uniform(0.5, 0.999)]
    numbers = [float(round(number, 5)) for number in numbers]
    add("RUNSNEEDED", [], numbers, runs_needed(*numbers))

(folder / "cases.csv").write_text("\n".join(cases) + "\n")
(folder / "scipy.csv").write_text("\n".join(answers) + "\n")

sets = pathlib.Path(scipy.__file__).parent / "stats" / "tests" / "data" / "nist_anova"
lines = []
for name in ("SiRstv", "AtmWtAg", "SmLs01", "SmLs04"):
    text = (sets / f"{name}.dat").read_text().splitlines()
    head, data = text[:60], [line.split() for line in text[60:]]
    within = next(line for line in head if line.startswith(("Within", "Within Treatment")))
    between = next(line for line in head if line.startswith("Between"))
    residual = next(line for line in head if "Standard Deviation" in line).split()[-1]
    groups = {}
    for group, measured in data:
        groups.setdefault(group, []).append(measured)
    lines.append(";".join([name, between.split()[-1], residual, *(" ".join(group) for group in groups.values())]))
(folder / "anova.csv").write_text("\n".join(lines) + "\n")
