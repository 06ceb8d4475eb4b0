"""The lines above the readings of a drift log, and what only seems one of them."""

from __future__ import annotations

import pytest

from core.alignment.driftlog import Header, read

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
    ],
)
def test_a_key_that_seems_to_state_a_quantity_is_not_ignored(line: str) -> None:
    log = read(f"# {line}\n" + log_of(*GOOD))
    assert list(reasons(log)) == [1]
    assert "Known are latitude_deg, longitude_deg, elevation_m, pressure_hpa" in reasons(log)[1]
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
        "drift = slow, seeing = 2",
        "a = 5",
        "=",
        ":",
    ],
)
def test_plain_comments_stay_silent(line: str) -> None:
    assert read(f"# {line}\n" + log_of(*GOOD)).rejected == ()


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
    ],
)
def test_a_header_line_that_cannot_be_used_is_reported(lines, words) -> None:
    log = read(lines + "\n" + log_of(*GOOD))
    assert len(log.rejected) == 1
    assert words in log.rejected[0].reason
    assert len(log.legs) == 1
