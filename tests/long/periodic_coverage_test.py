"""The shares of `periodic_coverage`, counted anew over all runs of every row."""

import pytest

from tests.long.periodic_coverage import ASKED, ROWS, RUNS, outcome

pytestmark = pytest.mark.long


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row.what)
def test_intervals_hold_the_truth(row):
    told = outcome(row, range(RUNS))
    print(told)
    assert told["refused"] <= 0.01 * RUNS
    for name in ASKED:
        assert row.least <= told["held"][name] <= row.most, name
