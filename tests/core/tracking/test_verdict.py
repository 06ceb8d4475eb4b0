"""The verdict names the largest cause; logs of runs are read in pixels too."""

import numpy as np
import pytest

from core.alignment.driftlog.records import UnusableLog
from core.tracking.exposure import Limit, SteadyDrift
from core.tracking.guiding import check_guiding
from core.tracking.periodic import analyse
from core.tracking.run import UnusableRun, run_without_place
from core.tracking.runlog import ScaleNeeded, read_run, read_run_file
from core.tracking.training import DataSheet, Training, compare
from core.tracking.verdict import Cause, TrackingEvidence, judge_tracking
from tests.core.tracking.drive import START_S, noisy_run

LIMIT = Limit(1.0, 1.0)


def trained(repeating, changing):
    return Training(repeating, changing, changing, 0.1, 8, True, "")


def guiding(east_rms, north_rms, seeing=2.5):
    rng = np.random.default_rng(1)
    utc_s = START_S + 2.0 * np.arange(900.0)
    east, north = (rng.normal(scale=rms, size=900) for rms in (east_rms, north_rms))
    return check_guiding(utc_s, east, north, LIMIT, seeing_fwhm_arcsec=seeing)


@pytest.mark.parametrize(
    ("evidence", "cause", "words"),
    [
        (TrackingEvidence(LIMIT, 120.0, training=trained(6.0, 0.5)), Cause.WORM, "train"),
        (TrackingEvidence(LIMIT, 120.0, training=trained(1.0, 4.0)), Cause.UNEVEN, "balance"),
        (
            TrackingEvidence(LIMIT, 600.0, training=trained(0.5, 0.3), drift=SteadyDrift(1.0, 1.0)),
            Cause.ALIGNMENT,
            "polar alignment",
        ),
        (TrackingEvidence(LIMIT, 120.0, guiding=guiding(1.5, 0.5)), Cause.GUIDING, "east"),
        (
            TrackingEvidence(LIMIT, 60.0, guiding=guiding(0.2, 0.2), seeing_fwhm_arcsec=2.5),
            Cause.AIR,
            "steadier air",
        ),
        (
            TrackingEvidence(LIMIT, 5.0, drift=SteadyDrift(0.1, 0.1)),
            Cause.NONE,
            "Nothing needs doing",
        ),
    ],
)
def test_the_largest_cause_is_named_with_the_first_thing_to_try(evidence, cause, words):
    verdict = judge_tracking(evidence)
    assert verdict.cause is cause
    assert words in str(verdict.paragraph)
    assert str(verdict.first_thing) in str(verdict.paragraph)
    sizes = [share.smear_arcsec for share in verdict.shares]
    assert sizes == sorted(sizes, reverse=True)


def test_without_measurements_there_is_no_verdict():
    with pytest.raises(UnusableRun, match="Nothing has been measured"):
        judge_tracking(TrackingEvidence(LIMIT, 60.0))


def test_the_data_sheet_is_compared_with_what_was_measured():
    found = analyse(run_without_place(noisy_run(1, minutes=60.0)))
    assert compare(found, DataSheet.plus_minus(12.0, 480.0)).keeps_promise is True
    broken = compare(found, DataSheet(8.0, 600.0))
    assert broken.keeps_promise is False
    assert broken.period_agrees is False
    size = found.size.peak_to_peak_arcsec
    assert compare(found, DataSheet(size)).keeps_promise is None
    assert compare(found, DataSheet()).findings == ()


HEAD = "leg,utc,ra_deg,dec_deg,{}\n"
ROWS = "".join(f"a,2026-11-24T20:00:{n:02d}Z,10,20,{n}.5,{n}\n" for n in range(5))


def test_pixels_without_a_scale_are_asked_for():
    text = HEAD.format("east_px,north_px") + ROWS
    with pytest.raises(ScaleNeeded, match="arcseconds per pixel"):
        read_run(text)
    with pytest.raises(ScaleNeeded):
        read_run(text, scale_arcsec_per_px=0.0)
    for log in (
        read_run(text, scale_arcsec_per_px=2.0),
        read_run("# scale_arcsec_per_px: 2.0\n" + text),
    ):
        np.testing.assert_allclose(log.legs[0].east_arcsec, 2.0 * (np.arange(5) + 0.5))
        np.testing.assert_allclose(log.legs[0].north_arcsec, 2.0 * np.arange(5))


def test_a_run_without_north_and_an_ordinary_log_are_read():
    alone = HEAD.format("east_arcsec") + "".join(
        f"a;2026-11-24T20:00:{n:02d}Z;10;20;{n},5\n" for n in range(5)
    )
    log = read_run(
        alone.replace(HEAD.format("east_arcsec"), HEAD.format("east_arcsec").replace(",", ";"))
    )
    np.testing.assert_allclose(log.legs[0].east_arcsec, np.arange(5) + 0.5)
    assert np.all(log.legs[0].north_arcsec == 0.0)
    plain = read_run(HEAD.format("east_arcsec,north_arcsec") + ROWS)
    np.testing.assert_allclose(plain.legs[0].north_arcsec, np.arange(5))


def test_files_are_read_in_either_form(tmp_path):
    path = tmp_path / "run.csv"
    path.write_text(HEAD.format("east_px,north_px") + ROWS, encoding="utf-8")
    assert read_run_file(path, scale_arcsec_per_px=2.0).legs[0].east_arcsec[0] == 1.0
    with pytest.raises(ScaleNeeded, match=r"run\.csv"):
        read_run_file(path)
    path.write_text(HEAD.format("east_arcsec,north_arcsec") + ROWS, encoding="utf-8")
    assert read_run_file(path).legs[0].east_arcsec[0] == 0.5
    path.write_bytes(b"\x00\x01\x02" * 1000)
    with pytest.raises(UnusableLog):
        read_run_file(path)
    with pytest.raises(UnusableLog):
        read_run_file(tmp_path / "nowhere.csv")
