"""The ± holds on nights as people have them; `tests/long` has the same rows over 2,000 nights."""

from functools import cache

import numpy as np
import pytest
from scipy.stats import binom

from tests.truth.hard_rows import FAR, MANY, NEAR, ROWS, base_night, outcome

NIGHTS = 36
CHANCE = 1e-3  # that a row which holds what it has to fails here


@cache
def nights(base):
    rng = np.random.default_rng(20261130)
    return [base_night(rng, base) for _ in range(NIGHTS)]


@pytest.mark.parametrize("name", ROWS)
def test_a_95_percent_interval_holds_on_a_hard_night(name):
    row = ROWS[name]
    rng = np.random.default_rng(7)
    held, alarms = [], 0
    for night in nights(row.base):
        error, half_width, found = outcome(row, night, rng)
        alarms += found.contradiction is not None
        if found.determined:
            held.extend(np.abs(error) <= half_width)
    assert len(held) > 1.8 * NIGHTS
    assert binom.cdf(sum(held), len(held), row.least) > CHANCE
    assert binom.sf(sum(held) - 1, len(held), row.most) > CHANCE
    assert alarms <= 1


def test_both_bases_are_used():
    assert {row.base for row in ROWS.values()} == {FAR, NEAR, MANY}
