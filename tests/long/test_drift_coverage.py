"""Coverage of the axis' 95 % intervals over 2,000 hard nights a row; a quarter of an hour.

    python3 packaging/check.py -m long tests/long/test_drift_coverage.py

writes its results beside this file, `drift_coverage.json`: the nights, the share of truths held by
azimuth and altitude, the median half-widths and the errors not exceeded by 95 %, arcmin on the sky,
the nights on which legs were said to contradict one another, and those without an answer.
"""

import json
from functools import cache
from pathlib import Path

import numpy as np
import pytest

from tests.truth.hard_rows import ROWS, base_night, outcome

pytestmark = pytest.mark.long

NIGHTS = 2000
RESULTS = Path(__file__).with_name("drift_coverage.json")


@cache
def nights(base):
    rng = np.random.default_rng(20261201)
    return [base_night(rng, base) for _ in range(NIGHTS)]


def told(row, seed):
    rng = np.random.default_rng(seed)
    errors, half_widths, alarms, untold = [], [], 0, 0
    for night in nights(row.base):
        error, half_width, found = outcome(row, night, rng)
        alarms += found.contradiction is not None
        if not found.determined:
            untold += 1
            continue
        errors.append(np.abs(error))
        half_widths.append(half_width)
    held = np.array(errors) <= np.array(half_widths)
    return {
        "nights": NIGHTS,
        "held": np.round(held.mean(axis=0), 4).tolist(),
        "half_width_median_arcmin": np.round(np.median(half_widths, axis=0), 3).tolist(),
        "error_95_arcmin": np.round(np.percentile(errors, 95, axis=0), 3).tolist(),
        "contradictions": alarms,
        "untold": untold,
    }


@pytest.mark.parametrize("name", ROWS)
def test_the_interval_holds_over_two_thousand_nights(name):
    row = ROWS[name]
    result = told(row, 1_000 + list(ROWS).index(name))
    kept = json.loads(RESULTS.read_text(encoding="utf-8")) if RESULTS.exists() else {}
    kept[name] = result
    ordered = {one: kept[one] for one in ROWS if one in kept}
    RESULTS.write_text(json.dumps(ordered, indent=1) + "\n", encoding="utf-8")
    for share in result["held"]:
        assert row.least <= share <= row.most
    assert result["contradictions"] <= 0.01 * NIGHTS
