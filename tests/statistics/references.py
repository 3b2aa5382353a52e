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
    return [float(mean), len(runs), deviation, variation, float(mean) - half, float(mean) + half, confidence]


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
        sb = sa = ((n - 1) * sb + (m - 1) * sa) / (n + m - 2)
    vb, va = sb / n, sa / m

    def degrees(q):
        scaled = q * q * vb
        return n + m - 2 if pooled else (va + scaled) ** 2 / (va**2 / (m - 1) + scaled**2 / (n - 1))

    def refused(q):
        return 1 - confidence - 2 * special.stdtr(degrees(q), -abs(a - q * b) / math.sqrt(va + q * q * vb))

    ratio = a / b
    far_out = (n - 1) if not pooled else n + m - 2
    least_likely = ratio - (va + ratio * ratio * vb) / (vb * ratio)  # where the statistic is largest below the ratio
    limits = [None, None]
    # What the statistic tends to far out, and the most that it reaches below the ratio found.
    if b / math.sqrt(vb) > t_exceeded(1 - confidence, far_out) and refused(least_likely) > 0:
        up = 1.0
        while refused(ratio + up) < 0:
            up *= 2
        limits = [1 - optimize.brentq(refused, ratio, ratio + up, xtol=1e-16, rtol=1e-15),
                  1 - optimize.brentq(refused, least_likely, ratio, xtol=1e-16, rtol=1e-15)]
    no_change = degrees(1)
    p = 2 * stats.t.sf(abs(a - b) / math.sqrt(va + vb), no_change)
    return [1 - ratio, *limits, p, no_change, confidence]


def outlier(runs, confidence):
    """Generalised ESD, with a third of the runs at the most."""
    left = [(Fraction(run), place) for place, run in enumerate(runs, 1)]
    taken, found = [], 0
    for _ in range(len(runs) // 3):
        n = len(left)
        mean = sum(run for run, _ in left) / n
        variance = sum((run - mean) ** 2 for run, _ in left) / (n - 1)
        if variance == 0:
            break
        farthest = max(left, key=lambda one: (abs(one[0] - mean), -one[1]))
        t = t_exceeded((1 - confidence) / n, n - 2)
        critical = (n - 1) * t / math.sqrt((n - 2 + t * t) * n)
        taken.append(farthest[1])
        if abs(float(farthest[0] - mean)) > critical * math.sqrt(variance):
            found = len(taken)
        left.remove(farthest)
    return sorted(taken[:found]) or [0]


def paired_difference(before, after, confidence):
    change, variance = moments([Fraction(a) - Fraction(b) for b, a in zip(before, after)])
    degrees = len(before) - 1
    error = math.sqrt(variance / len(before))
    half = t_exceeded(1 - confidence, degrees) * error
    p = 2 * stats.t.sf(abs(float(change)) / error, degrees)
    return [float(change), float(change) - half, float(change) + half, p, degrees, confidence, len(before), 0]


def paired_saving(before, after, confidence):
    """The limits by root finding: where the paired t of after - q before is just refused."""
    b, a, n = moments(before)[0], moments(after)[0], len(before)
    t = t_exceeded(1 - confidence, n - 1)

    (mean_b, mean_a), covariances = numpy.mean([before, after], axis=1), numpy.cov(before, after) / n

    def statistic(q):
        variance = covariances[1, 1] - 2 * q * covariances[0, 1] + q * q * covariances[0, 0]
        return abs(mean_a - q * mean_b) - t * math.sqrt(max(variance, 0))

    limits, ratio = [None, None], float(a / b)
    if float(b) / math.sqrt(moments(before)[1] / n) > t:
        limits = []
        for direction in (1, -1):
            far = 1.0
            while statistic(ratio + direction * far) < 0:
                far *= 2
            limits.append(1 - (ratio + direction * optimize.brentq(
                lambda d: statistic(ratio + direction * d), 0, far, xtol=1e-16, rtol=1e-15)))
    change = paired_difference(before, after, confidence)
    return [1 - ratio, *limits, change[3], n - 1, confidence, n, 0]


nodes, weights = numpy.polynomial.legendre.leggauss(300)
coarse, coarse_weights = numpy.polynomial.legendre.leggauss(40)


def power(n, effect, confidence):
    """Of Welch's test, equal numbers of runs and equal scatter. The t is (Z + shift)/W, averaged over the share that the
    one variance has in the sum of both. Integrated over Z with the distribution of W for few runs, over W with that of
    Z for many: whichever is the smoother."""
    degrees, shift = 2 * (n - 1), effect * math.sqrt(n / 2)
    angle = (coarse + 1) / 2 * math.pi / 2
    below = numpy.sin(angle) ** 2  # as a square, since the ends are steep
    weight = coarse_weights * math.pi / 2 * numpy.sin(angle) * numpy.cos(angle)
    share = stats.beta.ppf(below / 2, (n - 1) / 2, (n - 1) / 2)  # one half of it: the other half is the same
    own = (n - 1) / (share**2 + (1 - share) ** 2)
    t = stats.t.isf((1 - confidence) / 2, own)[:, None]
    if degrees < 60:
        z = 9 * nodes
        shown = special.gammainc(degrees / 2, degrees / 2 * ((z + shift) / t) ** 2)
        return float(weight @ (shown @ (9 * weights * stats.norm.pdf(z))))
    half = 9 / math.sqrt(2 * degrees)
    w = 1 + half * nodes
    density = numpy.exp(stats.chi2.logpdf(degrees * w * w, degrees)) * 2 * degrees * w
    shown = special.ndtr(shift - t * w) + special.ndtr(-shift - t * w)
    return float(weight @ (shown @ (half * weights * density)))


def runs_needed(variation, change, confidence, wanted, pilot=None):
    if pilot is not None:
        variation *= math.sqrt((pilot - 1) / stats.chi2.ppf(0.2, pilot - 1))
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
    beside = about * variation * random.choice([0, 0, -4, 4, 8])
    for _ in range(int(random.integers(1, 3))):  # two may lie together
        runs[int(random.integers(0, len(runs)))] += beside
    if scatters(runs):
        add("OUTLIER", [runs], [confidence], outlier(runs, confidence))
while len(cases) < 6 * each:  # the same households or days before and after
    (about, variation), confidence = scale(), some_confidence()
    before = some_runs(2, about, variation)
    own = random.uniform(0.01, 1) * variation
    after = [float(run * random.uniform(0.5, 1.2) * (1 + own * random.standard_normal())) for run in before]
    if not scatters(before, after) or len({a - b for b, a in zip(before, after)}) == 1:
        continue
    if len(cases) < 5 * each:
        add("PAIREDDIFFERENCE", [before, after], [confidence], paired_difference(before, after, confidence))
    else:
        add("PAIREDSAVING", [before, after], [confidence], paired_saving(before, after, confidence))
plans = [(0.95, 0.8), (0.95, 0.9), (0.9, 0.8), (0.9, 0.9)]
for case in range(400):
    confidence, wanted = plans[case % 4] if case < 200 else (some_confidence(), random.uniform(0.5, 0.99))
    numbers = [10 ** random.uniform(-2, 0), 10 ** random.uniform(-2, 0), confidence, wanted]
    if case % 3 == 0:
        numbers.append(random.integers(3, 30))
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
