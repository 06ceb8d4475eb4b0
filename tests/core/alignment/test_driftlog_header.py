"""The lines above the readings of a drift log, and what only seems one of them."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from core.alignment import driftlog
from core.alignment.driftlog import header
from core.alignment.driftlog.files import write
from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import Header
from core.alignment.priors import RANGES, USUAL, Priors

from .logtexts import GOOD, log_of, reasons


def test_header_pairs_and_notes_are_kept() -> None:
    log = read("# camera: guide: 3\n# clear night\n# Temperature_C: −4,5\n" + log_of(*GOOD))
    assert log.header == Header(
        temperature_c=-4.5, other=(("camera", "guide: 3"),), notes=("clear night",)
    )
    assert log.header.site() is None


@pytest.mark.parametrize("line", ["elevation_m = 3000", "Elevation_M=3000", "elevation m : 3000"])
def test_an_equals_sign_stands_for_a_colon(line: str) -> None:
    log = read(f"# {line}\n" + log_of(*GOOD))
    assert log.header.elevation_m == 3000.0
    assert log.rejected == ()


@pytest.mark.parametrize(
    "line",
    [
        "altitude_m: 3000",
        "altitude_m = 3000",
        "pressure_inhg: 29.9",
        "pressure-mmHg=760",
        "temperature_f: 50",
        "height: 520",
        "lat: 48.1",
        "Lattitude: 48.1",
        "temp C: 5",
        "flexure_arcsec: 10",
        "flexure_arcmin_per_g: 0.2",
        "flexture: 10",
        "angle_deg: 2",
        "angle_sigma_arcmin: 60",
        "slow_wander_seconds: 150",
        "slow wander time: 150",
        "reading_step_px: 0.5",
        "Periodic eror: 12",
    ],
)
def test_a_key_that_seems_to_state_a_quantity_is_not_ignored(line: str) -> None:
    log = read(f"# {line}\n" + log_of(*GOOD))
    assert list(reasons(log)) == [1]
    assert "Known are latitude_deg, longitude_deg, elevation_m, pressure_hpa" in reasons(log)[1]
    assert all(name in reasons(log)[1] for name in RANGES)
    assert log.header == Header()


@pytest.mark.parametrize(
    "line",
    [
        "clear night, then cloud",
        "camera: guide",
        "scale_arcsec_per_px: 1.5",
        "scale_arcsec_per_px = 1.5",
        "focal_length_mm: 600",
        "height of the tripod leg: 1.2 m",
        "temperature fell quickly: see notebook",
        "reading start: 21:05",
        "reading stop: 22:15",
        "slow wind: 3 m/s",
        "angle of the camera: 90",
        "periodic error as in the run of 2026: trained",
        "drift = slow, seeing = 2",
        "a = 5",
        "=",
        ":",
    ],
)
def test_plain_comments_stay_silent(line: str) -> None:
    assert read(f"# {line}\n" + log_of(*GOOD)).rejected == ()


STATED = {
    "reading_step_arcsec": 5.0,
    "angle_sigma_deg": 0.0,
    "periodic_error_arcsec": 12.5,
    "slow_wander_arcsec": 0.25,
    "slow_wander_s": 200.0,
    "flexure_arcsec_per_g": 15.0,
}
AS_STATED = """# reading_step_arcsec: 5
# Angle-sigma-deg = 0
# periodic error arcsec: 12,5
# slow_wander_arcsec: 0.25
# slow_wander_arcsec: 0.250
"# slow_wander_s: 2e2",,,
# FLEXURE_ARCSEC_PER_G: +15
"""


def test_what_is_taken_for_granted_may_be_stated() -> None:
    log = read(AS_STATED + log_of(*GOOD))
    assert log.rejected == ()
    assert log.header == Header(stated_priors=STATED)
    assert log.header.priors() == Priors(5.0, 0.0, 12.5, 0.25, 200.0, 15.0)
    assert set(STATED) == set(RANGES)


def test_what_is_not_stated_is_as_usual() -> None:
    assert Header().priors() == USUAL
    usual_but_one = Header(stated_priors={"slow_wander_s": 200.0}).priors()
    assert usual_but_one == replace(USUAL, slow_wander_s=200.0)


def test_what_is_stated_is_written_and_two_equal_headers_are_one() -> None:
    log = read(AS_STATED + log_of(*GOOD))
    text = write(log.header, log.legs)
    assert text.startswith("# reading_step_arcsec: 5.0\n# angle_sigma_deg: 0.0\n")
    again = read(text).header
    assert again == log.header
    assert len({again, log.header}) == 1


def test_the_description_of_the_log_names_every_key() -> None:
    described = set(re.findall(r"\w+", driftlog.__doc__ or ""))
    assert described >= set(header.RANGES)


def test_air_without_pressure_is_that_of_the_elevation() -> None:
    # ISO 2533:1975, standard atmosphere: 795.0 hPa at 2000 m.
    air = Header(48.0, 11.0, elevation_m=2000.0).air()
    assert air.pressure_hpa == pytest.approx(795.0, abs=0.1)
    assert air.pressure_is_assumed
    assert not Header(pressure_hpa=950.0).air().pressure_is_assumed


@pytest.mark.parametrize(
    ("lines", "words"),
    [
        ("# latitude_deg: 95", "latitude_deg 95 is outside -90 to 90"),
        ("# latitude_deg: 121.5\n# longitude_deg: 48.1", "may be swapped"),
        ("# longitude_deg: 48.1\n# latitude_deg: 121.5", "may be swapped"),
        ("# latitude_deg: 48.1\n# latitude_deg: 47.0", "already 48.1 in line 1"),
        ("# latitude_deg: 48:06:00", "decimal degrees: 48.10000"),
        ("# latitude_deg: north", "is not a number"),
        ("# latitude: 48.1", "write “# latitude_deg: …”"),
        ("# pressure_hpa: 101325", "outside 0 to 1100"),
        ("# elevation_m: nan", "finite"),
        ("# elevation_m: 5 20", "“5 20” is not a number"),
        ("# reading_step_arcsec: 121", "121 is outside 0 to 120 (seconds of arc)"),
        ("# angle_sigma_deg: -1", "angle_sigma_deg -1 is outside 0 to 45 (degrees)"),
        ("# angle_sigma_deg: 0:30", "decimal degrees: 0.50000"),
        ("# periodic_error_arcsec: 1e3", "1000 is outside 0 to 300 (seconds of arc)"),
        ("# slow_wander_arcsec: inf", "finite"),
        ("# slow_wander_arcsec: 0,1,7", "mixes commas and points"),
        ("# slow_wander_s: 0", "slow_wander_s 0 is outside 10 to 3600 (seconds)"),
        ("# slow_wander_s: 2:30", "slow_wander_s “2:30” is not a number"),
        ("# flexure_arcsec_per_g: 15″", "“15″” is not a number"),
        ("# flexure_arcsec_per_g: 400", "outside 0 to 300 (seconds of arc per g)"),
        ("# flexure_arcsec_per_g: 15\n# flexure_arcsec_per_g: 12", "already 15 in line 1"),
        ("# flexure: 15", "write “# flexure_arcsec_per_g: …”"),
        ("# Reading step: 5", "write “# reading_step_arcsec: …”"),
        ("# angle sigma: 2", "write “# angle_sigma_deg: …”"),
        ("# periodic-error: 12", "write “# periodic_error_arcsec: …”"),
        ("# slow wander: 0.2", "write “# slow_wander_arcsec: …”"),
    ],
)
def test_a_header_line_that_cannot_be_used_is_reported(lines, words) -> None:
    log = read(lines + "\n" + log_of(*GOOD))
    assert len(log.rejected) == 1
    assert words in log.rejected[0].reason
    assert len(log.legs) == 1
