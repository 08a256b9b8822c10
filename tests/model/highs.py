"""Writes highs.txt: what HiGHS (scipy.optimize.milp) finds for the problems of assignment.rs.

python3 tests/model/highs.py > tests/model/highs.txt
"""

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp

MASK = (1 << 64) - 1
SHORT, OVER, AMOUNTS = 30, 2, 5


class Dice:
    """SplitMix64, as model/src/ensemble.rs has it."""

    def __init__(self, seed):
        self.state = seed

    def below(self, bound):
        self.state = (self.state + 0x9E3779B97F4A7C15) & MASK
        z = self.state
        z = ((z ^ (z >> 30)) * 0xBF58476D1CE4E5B9) & MASK
        z = ((z ^ (z >> 27)) * 0x94D049BB133111EB) & MASK
        return ((z ^ (z >> 31)) * bound) >> 64


def problem(seed, groups, options):
    dice = Dice(seed)
    made = []
    for _ in range(groups):
        mass = 100 + dice.below(1900)
        group = []
        for _ in range(options):
            cost, first, second = dice.below(1500), dice.below(5), dice.below(5)
            part, work = dice.below(101), dice.below(20)
            amounts = [0] * AMOUNTS
            amounts[first] += mass * part // 100
            amounts[second] += mass - mass * part // 100
            group.append((cost, amounts, work))
        made.append(group)
    targets = []
    for _ in range(AMOUNTS):
        wanted, amount = dice.below(3), dice.below(groups * 500)
        targets.append(amount if wanted > 0 else None)
    limited = dice.below(2)
    most = groups * 4 + dice.below(groups * 8)
    return made, targets, most if limited else None


def solve(groups, targets, most):
    every = [(place, choice) for place, group in enumerate(groups) for choice in group]
    size = len(every) + 2 * AMOUNTS
    costs = numpy.zeros(size)
    costs[: len(every)] = [choice[0] for _, choice in every]
    costs[len(every) : len(every) + AMOUNTS] = SHORT
    costs[len(every) + AMOUNTS :] = OVER
    rules = []
    for group in range(len(groups)):
        row = numpy.zeros(size)
        row[[at for at, (place, _) in enumerate(every) if place == group]] = 1
        rules.append(LinearConstraint(row, 1, 1))
    for amount, target in enumerate(targets):
        if target is not None:
            row = numpy.zeros(size)
            row[: len(every)] = [choice[1][amount] for _, choice in every]
            row[len(every) + amount], row[len(every) + AMOUNTS + amount] = 1, -1
            rules.append(LinearConstraint(row, target, target))
    if most is not None:
        row = numpy.zeros(size)
        row[: len(every)] = [choice[2] for _, choice in every]
        rules.append(LinearConstraint(row, -numpy.inf, most))
    upper = numpy.full(size, numpy.inf)
    upper[: len(every)] = 1
    whole = numpy.zeros(size)
    whole[: len(every)] = 1
    # Its presolve now and then finds nothing where there is something, so without a choice it is asked again.
    for presolve in (True, False):
        options = {"mip_rel_gap": 0, "presolve": presolve}
        found = milp(costs, constraints=rules, bounds=Bounds(0, upper), integrality=whole, options=options)
        if found.success:
            return round(found.fun)
    return None


for seed in range(5000, 5520):
    groups, options = 3 + seed % 20, 2 + seed % 5
    optimum = solve(*problem(seed, groups, options))
    print(seed, groups, options, *([] if optimum is None else [optimum]))
