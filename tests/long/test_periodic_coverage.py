"""How often the intervals of a worm's periodic error hold the truth over 400 runs of each kind.

    python3 packaging/check.py -m long tests/long/test_periodic_coverage.py

writes its results beside this file, `periodic_coverage.json` (three minutes of one core): the
shares held, how many intervals they come from, and the runs of which nothing could be said.
"""

import json
from pathlib import Path

import numpy as np
import pytest

from tests.truth.worm_rows import ASKED, ROWS, ratios

pytestmark = pytest.mark.long

RUNS = 400
RESULTS = Path(__file__).with_name("periodic_coverage.json")


def told(row):
    runs = [ratios(row, number) for number in range(RUNS)]
    names = list(dict.fromkeys(name for one in runs for name in one))
    gathered = {name: np.array([one[name] for one in runs if name in one]) for name in names}
    return {
        "refused": sum(not one for one in runs),
        "held": {name: round(float(np.mean(of <= 1.0)), 3) for name, of in gathered.items()},
        "intervals": {name: of.size for name, of in gathered.items()},
    }


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.what)
def test_the_interval_holds_over_four_hundred_runs(row):
    result = told(row)
    kept = json.loads(RESULTS.read_text(encoding="utf-8")) if RESULTS.exists() else {}
    kept[row.what] = result
    ordered = {one.what: kept[one.what] for one in ROWS if one.what in kept}
    text = json.dumps(ordered, indent=1, ensure_ascii=False)
    RESULTS.write_text(text + "\n", encoding="utf-8")
    assert result["refused"] <= 0.01 * RUNS
    for name in ASKED:
        assert row.least <= result["held"][name] <= row.most, name
