#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-2.0-or-later
"""calibrate_check.py PROGRAM: walkers by chance, worked out by the program and again with scipy.

Done here in another way wherever there is one: the fits by scipy.linalg, an outlier by leaving the try
out, fitting anew and foretelling it, Fieller's interval by looking for its ends, the slope table by numpy.interp.
On level ground with equal distances also by scipy.stats' mean and standard error, and Grubbs' own formula. Last, over
many walkers, how often the intervals hold the truth and good tries are called outliers.
"""
import os
import subprocess
import sys

import numpy
from scipy import linalg, optimize, stats

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "support"))
from check_record import record   # noqa: E402

UP = [30.4, 27.6, 24.4, 22.1, 19.7, 17.8, 15.0]     # Moss 1917, paragraph 1887, inches
DOWN = [30.4, 29.2, 28.3, 27.6, 26.4, 23.6, 19.7]
OUTLIER, CHANCE = 6, 0.01
ANGLES = numpy.arange(0, 31, 5)


def ratio(slope):
    return numpy.where(slope >= 0, numpy.interp(slope, ANGLES, UP), numpy.interp(-slope, ANGLES, DOWN)) / 30.4


def ask(program, walkers):
    """walkers: (kind, counts, metres, slopes). Returns for each (numbers by name, rows of tries)."""
    lines = []
    for kind, counts, metres, slopes in walkers:
        lines.append("%d %d" % (kind, len(counts)))
        lines += ["%.17g %.17g %.17g" % row for row in zip(counts, metres, slopes)]
    said = subprocess.run([program], input="\n".join(lines) + "\n", check=True, capture_output=True,
                          text=True).stdout.splitlines()
    answers, at = [], 0
    for _, counts, _, _ in walkers:
        words = said[at].split()
        numbers = {words[i]: float(words[i + 1]) for i in range(0, len(words), 2)}
        rows = numpy.array([[float(word) for word in line.split()] for line in said[at + 1:at + 1 + len(counts)]])
        answers.append((numbers, rows))
        at += 1 + len(counts)
    return answers


def near(ours, theirs, what, walker, tolerance=1e-9):
    allowed = tolerance * max(1, abs(theirs))
    record(what + " of calibratepaces", "", "computed with scipy, 1500 walkers by chance", theirs, ours, allowed, "")
    if not abs(ours - theirs) <= allowed:
        sys.exit("%s: %.15g instead of %.15g, walker %r" % (what, ours, theirs, walker))


def rows_of(x, line):
    return numpy.column_stack([numpy.ones(len(x)), x]) if line else numpy.ones((len(x), 1))


def fit(x, y, weights, line):
    """Estimates and their covariance, by orthogonal decomposition."""
    root = numpy.sqrt(weights)
    design = rows_of(x, line) * root[:, None]
    found, _, _, _ = linalg.lstsq(design, y * root)
    triangle = linalg.qr(design, mode="r")[0][:design.shape[1]]
    inverse = linalg.inv(triangle)
    freedom = len(y) - design.shape[1]
    variance = scatter(x, y, weights, found) if freedom else numpy.nan
    return found, inverse @ inverse.T * variance


def scatter(x, y, weights, found):
    off = y - rows_of(x, len(found) == 2) @ found
    return (weights * off**2).sum() / (len(y) - len(found))


def enough_slope(slopes, x):
    return (len(slopes) >= 4 and (abs(slopes) >= 2).sum() >= 3 and numpy.ptp(slopes) >= 5 and numpy.ptp(x) >= 0.01)


def outlier(x, y, weights, line):
    """The try that stands out most, and whether the test calls it an outlier; each foretold from the others."""
    n, p = len(y), 2 if line else 1
    if n - p < 2:
        return None, False
    whole, _ = fit(x, y, weights, line)
    t = numpy.zeros(n)
    for i in range(n):
        rest = numpy.arange(n) != i
        if line and numpy.ptp(x[rest]) == 0:
            continue
        found, covariance = fit(x[rest], y[rest], weights[rest], line)
        row = numpy.array([1, x[i]])[:p]
        variance = scatter(x[rest], y[rest], weights[rest], found) / weights[i] + row @ covariance @ row
        if abs(y[i] - row @ whole) > 0.03 * whole[0]:
            t[i] = abs(y[i] - row @ found) / numpy.sqrt(variance) if variance > 0 else numpy.inf
    worst = t.argmax()
    return worst, 2 * n * stats.t.sf(t[worst], n - p - 1) < CHANCE and t[worst] > 0


def check_walker(walker, answer):
    kind, counts, metres, slopes = walker
    numbers, rows = answer
    q = ratio(slopes)
    steps = (2 if kind else 1) * counts
    y, x = 100 * steps * q / metres, 1 - q
    for ours, theirs in zip(rows[:, 2], y):
        near(ours, theirs, "a try", walker, 1e-12)
    keep = numpy.arange(len(y))
    flags = numpy.zeros(len(y))
    median = numpy.median(y)
    good = (y / median >= 0.6) & (y / median <= 1.6)
    if good.sum() >= 2 and 2 * (~good).sum() < len(y):
        flags[~good] = -1
        keep = keep[good]
    line = enough_slope(slopes[keep], x[keep])
    while True:
        worst, is_outlier = outlier(x[keep], y[keep], metres[keep], line)
        if not is_outlier:
            break
        flags[keep[worst]] = OUTLIER
        if len(keep) <= 3:
            break
        keep = numpy.delete(keep, worst)
        line = enough_slope(slopes[keep], x[keep])
    for ours, theirs in zip(rows[:, 0], flags):
        if (ours in (2, 3, 4, 5)) != (theirs == -1) or (ours == OUTLIER) != (theirs == OUTLIER):
            sys.exit("flags: %r instead of %r, walker %r" % (rows[:, 0], flags, walker))
    if sorted(keep) != sorted(numpy.flatnonzero(rows[:, 1])):
        sys.exit("used: %r instead of %r, walker %r" % (numpy.flatnonzero(rows[:, 1]), keep, walker))
    x, y, weights = x[keep], y[keep], metres[keep]
    n, own = len(y), False
    if line:
        found, covariance = fit(x, y, weights, True)
        near(numbers["k"], 1 + found[1] / found[0], "k", walker)
        bound = stats.t.ppf(0.975, n - 2)

        def beyond(share):      # how far b - share a is from 0, beyond what t allows
            row = numpy.array([-share, 1])
            return (row @ found)**2 - bound**2 * row @ covariance @ row
        at = found[1] / found[0]
        if "k_low" in numbers:
            for name, far in (("k_low", -1), ("k_high", 1)):
                step = 1e-3
                while beyond(at + far * step) < 0:
                    step *= 2
                near(numbers[name], 1 + optimize.brentq(beyond, at, at + far * step, xtol=1e-13), name, walker, 1e-6)
            own = numbers["k_low"] > 1 or numbers["k_high"] < 1
        elif found[0]**2 > bound**2 * covariance[0, 0]:
            sys.exit("no interval of k, walker %r" % (walker,))
        if bool(numbers["own"]) != own:
            sys.exit("own, walker %r" % (walker,))
    elif "k" in numbers:
        sys.exit("a slope effect from too little, walker %r" % (walker,))
    found, covariance = fit(x, y, weights, own)
    near(numbers["steps"], found[0], "steps", walker)
    if n == 1:
        return 0
    freedom, mean = n - len(found), weights.mean()
    spread = numpy.sqrt(scatter(x, y, weights, found) / mean)
    least = (2 if kind else 1) * 100 / mean / numpy.sqrt(12)
    if bool(numbers["rounding"]) != (spread < least):
        sys.exit("rounding, walker %r" % (walker,))
    error = numpy.sqrt(covariance[0, 0])
    if spread < least:      # the spread of rounding in place of the tries' own
        error *= least / spread if spread > 1e-9 else numpy.nan
        spread = least
    near(numbers["spread"], spread, "spread", walker)
    if not numpy.isnan(error):
        low, high = stats.t.interval(0.95, freedom, found[0], error)
        near(numbers["low"], low, "low", walker)
        near(numbers["high"], high, "high", walker)
        within = stats.t.ppf(stats.norm.cdf(1), freedom) * numpy.hypot(spread, error)
        near(numbers["error"], max(100 * within / found[0], 0.1), "error", walker)
    if not own and numpy.ptp(metres) == 0 and not slopes.any() and spread > least:
        low, high = stats.t.interval(0.95, n - 1, y.mean(), stats.sem(y))
        near(numbers["low"], low, "mean and standard error, low", walker, 1e-9)
        near(numbers["high"], high, "mean and standard error, high", walker, 1e-9)
        near(numbers["spread"], y.std(ddof=1), "standard deviation", walker, 1e-9)
        if n > 2 and (flags == OUTLIER).sum() == 0:
            # Grubbs 1969: what is kept does not exceed his bound, but for what lies within 3 percent.
            t = stats.t.ppf(1 - CHANCE / (2 * n), n - 2)
            grubbs = abs(y - y.mean()) / y.std(ddof=1) > (n - 1) / numpy.sqrt(n) * numpy.sqrt(t**2 / (n - 2 + t**2))
            if (grubbs & (abs(y - y.mean()) > 0.03 * y.mean())).any():
                sys.exit("Grubbs calls an outlier what is kept, walker %r" % (walker,))
    return int((flags == OUTLIER).any()) + 2 * own


def by_chance(random, kind):
    n = int(random.integers(1, 13))
    steps, strays = random.uniform(100, 200), random.uniform(0.002, 0.05)
    metres = numpy.full(n, 100.0) if random.random() < 0.4 else random.choice([50, 60.96, 100, 150, 200, 400], n)
    slopes = numpy.zeros(n) if random.random() < 0.4 else numpy.round(random.uniform(-25, 25, n) * (random.random(n) < 0.7), 1)
    own = random.choice([1, 1, 0, 0.5, 1.6])
    q = ratio(slopes)
    counted = steps / 100 * metres * (1 + own * (1 / q - 1)) * (1 + strays * random.standard_normal(n) *
                                                                numpy.sqrt(100 / metres))
    if n > 3 and random.random() < 0.5:
        counted[random.integers(n)] *= random.choice([0.5, 2, 0.3048, 0.85, 1.12, 3])
    return kind, numpy.maximum(1, numpy.round(counted / (2 if kind else 1))), metres, slopes


def main():
    program = sys.argv[1]
    random = numpy.random.default_rng(20260620)
    walkers = [by_chance(random, i % 2) for i in range(1500)]
    seen = [check_walker(walker, answer) for walker, answer in zip(walkers, ask(program, walkers))]
    print("%d walkers as with scipy; outliers in %d, the table does not hold for %d" %
          (len(walkers), sum(one % 2 for one in seen), sum(one > 1 for one in seen)))
    if sum(one % 2 for one in seen) < 50 or sum(one > 1 for one in seen) < 50:
        sys.exit("too few of them to tell anything")

    # Good tries, not rounded: how often the truth lies inside, the next distance within one sigma, and a false alarm.
    for n in (2, 3, 4, 6, 10):
        count, truth = 4000, 140.0
        walkers, nexts = [], []
        for _ in range(count):
            stray = 1 + 0.06 * random.standard_normal(n + 1)
            walkers.append((0, truth * stray[:n], numpy.full(n, 100.0), numpy.zeros(n)))
            nexts.append(truth * stray[n])
        inside = told = alarms = 0
        for (numbers, rows), there in zip(ask(program, walkers), nexts):
            inside += numbers["low"] <= truth <= numbers["high"]
            told += abs(there / numbers["steps"] - 1) <= numbers["error"] / 100
            alarms += (rows[:, 0] == OUTLIER).any()
        print("%2d tries: interval holds %.3f (0.95), next distance within %.3f (0.683), false outlier %.3f (0.01)" %
              (n, inside / count, told / count, alarms / count))
        # Good tries left out narrow it: what false alarms cost at most. Three sigma of so many walkers: 0.011, 0.022.
        if not 0.95 - 0.011 - CHANCE <= inside / count <= 0.95 + 0.011:
            sys.exit("the interval does not hold what it should")
        if not 0.683 - 0.022 - CHANCE <= told / count <= 0.683 + 0.022:
            sys.exit("pace_error is not one sigma")
        if alarms / count > CHANCE + 0.005:
            sys.exit("too many false outliers")


if __name__ == "__main__":
    main()
