"""Lists of stars pointed at, as people write them."""

import re

import pytest

from core.sky.clocks import parse_utc
from core.sky.site import Site
from core.tracking.pointing import UnusablePointing, sighting_of
from core.tracking.pointinglog import read_sightings

SITE = Site(48.0, 11.0, 500.0)

LIST = """# mount_coordinates: ICRS
utc,mount_ra_deg,mount_dec_deg,star_ra_deg,star_dec_deg,side,star
2026-11-24T20:00:00Z,100.5,20.1,100.0,20.0,east,a
2026-11-24T20:05:00Z,30.5,40.1,30.0,40.0,west,b
2026-11-24T20:05:00Z,30.5,140.1,30.0,40.0,west,c
2026-11-24T20:05:00Z,30.5,40.1,30.0,40.0,up,d
nonsense
"""


def test_a_list_of_stars_is_read_and_bad_lines_are_told():
    log = read_sightings(LIST.splitlines(), SITE)
    assert [star.label for star in log.sightings] == ["a", "b"]
    assert [star.side for star in log.sightings] == [1, -1]
    assert [line.line_number for line in log.rejected] == [5, 6, 7]
    first = log.sightings[0]
    # The mount reads half a degree further east in right ascension: a smaller hour angle.
    assert first.mount_hour_angle_deg - first.star_hour_angle_deg == pytest.approx(-0.5, abs=0.01)
    with pytest.raises(UnusablePointing, match="name the columns"):
        read_sightings(["a,b,c", "1,2,3"], SITE)
    with pytest.raises(UnusablePointing, match="No line"):
        read_sightings([], SITE)


ROW = "2026-11-24T20:00:00Z,100.5,20.1,100.0,20.0"


@pytest.mark.parametrize(
    ("row", "words"),
    [
        ("2026-11-24T20:00:00Z,30,5,10,2,30,6,10,1", "9 fields for 7 .*decimal comma"),
        (f'{ROW},east,"Vega', "quotation marks do not match"),
        (f"{ROW},east,a,b", "8 fields for 7"),
    ],
    ids=["decimal commas", "open quote", "one too many"],
)
def test_a_row_that_does_not_fit_its_columns_is_told_and_not_read(row: str, words: str):
    text = [*LIST.splitlines()[:2], ROW, row, f"{ROW},,,,"]
    log = read_sightings(text, SITE)
    assert len(log.sightings) == 2
    assert [line.line_number for line in log.rejected] == [4]
    assert re.search(words, log.rejected[0].reason)


def test_a_column_named_twice_is_refused():
    names, *rows = LIST.splitlines()[1:]
    with pytest.raises(UnusablePointing, match="names the column star twice"):
        read_sightings([f"{names},star", *rows], SITE)


@pytest.mark.parametrize(
    ("remark", "is_of_date"),
    [
        ("# mount_coordinates: of date", True),
        ("# mount_coordinates: of_date", True),
        ("# mount_coordinates = of date", True),
        ("# mount_coordinates = Of-Date", True),
        ("#mount coordinates: JNow", True),
        ('"# mount_coordinates: JNow",,,', True),
        ("# Mount_Coordinates: epoch of date,,,", True),
        ("# mount_coordinates jnow", True),
        ("# mount_coordinates: icrs", False),
        ("# mount_coordinates = J2000.0", False),
        ("# seen from the garden; the mount was warm", False),
    ],
)
def test_what_the_mount_shows_is_read_in_every_usual_spelling(remark: str, is_of_date: bool):
    (star,) = read_sightings([remark, LIST.splitlines()[1], ROW], SITE).sightings
    expected = sighting_of(
        (100.0, 20.0), (100.5, 20.1), parse_utc(ROW[:20]), SITE, mount_is_of_date=is_of_date
    )
    assert star.mount_hour_angle_deg == pytest.approx(expected.mount_hour_angle_deg, abs=1e-9)


@pytest.mark.parametrize("word", ["B1950", "galactic", "", "date of birth"])
def test_coordinates_that_are_neither_are_refused_with_the_two_that_are_known(word: str):
    with pytest.raises(UnusablePointing, match=r"Line 2: .*of date.*ICRS"):
        read_sightings(["# mine", f"# mount_coordinates: {word}", *LIST.splitlines()[1:]], SITE)
