"""Finding clusters, nebulae and galaxies, and the bundled table against other hands' facts."""

from __future__ import annotations

from pathlib import Path

import numpy as np
import pytest
from astropy import units
from astropy.coordinates import SkyCoord

from core.sky import catalogues


@pytest.mark.parametrize(
    ("typed", "title"),
    [
        ("m31", "M 31, Andromeda Galaxy"),
        ("Messier 031", "M 31, Andromeda Galaxy"),
        ("ngc0224", "M 31, Andromeda Galaxy"),
        ("ANDROMEDA GALAXY", "M 31, Andromeda Galaxy"),
        ("eagle nebula", "M 16, Eagle Nebula"),
        ("caldwell 14", "C 14, Double Cluster"),
        ("M102", "M 101"),
        ("Flame nebula", "NGC 2024, Flame Nebula"),
        ("ic 11", "NGC 281"),
    ],
)
def test_find(typed: str, title: str) -> None:
    found = catalogues.load_deep_sky().find(typed)
    assert found is not None
    assert found.title == title


@pytest.mark.parametrize("typed", ["", "  ", "nowhere", "m111", "m"])
def test_nothing_is_found(typed: str) -> None:
    assert catalogues.load_deep_sky().find(typed) is None


def test_offers_while_someone_types() -> None:
    table = catalogues.load_deep_sky()
    assert table.beginning_with("m3", 1)[0].messier == "M 3"
    assert table.beginning_with("orion")[0].messier == "M 42"
    assert table.beginning_with("horse")[0].name == "B 33"
    assert len(table.beginning_with("ngc", 7)) == 7
    assert table.beginning_with(" ") == []


def test_all_of_messiers_list_is_there() -> None:
    numbers = {one.messier for one in catalogues.load_deep_sky().objects if one.messier}
    assert numbers == {f"M {number}" for number in range(1, 111)} - {"M 102"}


# ICRS places as SIMBAD gives them, from memory to about an arcminute.
@pytest.mark.parametrize(
    ("name", "ra_hours", "dec_deg"),
    [
        ("M 13", "16h41m41s", "+36d27m36s"),
        ("M 57", "18h53m35s", "+33d01m45s"),
        ("M 104", "12h39m59s", "-11d37m23s"),
        ("NGC 5139", "13h26m47s", "-47d28m46s"),
        ("NGC 104", "00h24m05s", "-72d04m53s"),
        ("M 1", "05h34m32s", "+22d00m52s"),
    ],
)
def test_places(name: str, ra_hours: str, dec_deg: str) -> None:
    found = catalogues.load_deep_sky().find(name)
    assert found is not None
    expected = SkyCoord(ra_hours, dec_deg)
    there = SkyCoord(found.ra_deg * units.deg, found.dec_deg * units.deg)
    assert there.separation(expected).arcmin < 1.5


def test_arrays_follow_the_objects() -> None:
    table = catalogues.load_deep_sky()
    assert table.ra_deg[1] == table.objects[1].ra_deg
    known = table.magnitude[np.isfinite(table.magnitude)]
    assert np.all(np.diff(known) >= 0.0)
    for index in np.flatnonzero(~np.isfinite(table.magnitude))[:5]:
        assert table.objects[index].magnitude is None


def test_a_broken_table_is_a_sentence(tmp_path: Path) -> None:
    for text in ("", "name,wrong\n", "\0"):
        (tmp_path / "table.csv").write_text(text, encoding="utf-8")
        with pytest.raises(RuntimeError, match="cannot be read"):
            catalogues.read_deep_sky(tmp_path / "table.csv")
