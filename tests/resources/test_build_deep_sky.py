"""The bundled table of clusters, nebulae and galaxies is what its script makes."""

from __future__ import annotations

import importlib.util
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import pytest

RESOURCES = Path(__file__).parents[2] / "resources"


@pytest.fixture(scope="module")
def script() -> Iterator[ModuleType]:
    spec = importlib.util.spec_from_file_location("build_deep_sky", RESOURCES / "build_deep_sky.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["build_deep_sky"] = module  # its records look their module up
    spec.loader.exec_module(module)
    yield module
    del sys.modules["build_deep_sky"]


def test_table_is_what_the_script_makes(script: ModuleType, tmp_path: Path) -> None:
    if importlib.util.find_spec("pyongc") is None:
        pytest.skip("pyongc is not installed")
    script.build(tmp_path / "deep_sky.csv")
    built = (tmp_path / "deep_sky.csv").read_bytes()
    assert built == (RESOURCES / "deep_sky.csv").read_bytes()


@pytest.mark.parametrize(
    ("designation", "shown"),
    [("NGC0224", "NGC 224"), ("IC0080 NED01", "IC 80 NED01"), ("M040", "M 40"), ("B033", "B 33")],
)
def test_designations_as_people_write_them(
    script: ModuleType, designation: str, shown: str
) -> None:
    assert script.shown(designation) == shown


def test_a_name_given_twice_stops_the_build(script: ModuleType) -> None:
    script.check_names([["A 1", "Eagle Nebula"], ["A 2", "Eagle Nebula"]])
    with pytest.raises(SystemExit, match="Wreath is given to A 1 and to A 2"):
        script.check_names([["A 1", "Wreath"], ["A 2", "Wreath"]])


def test_constellations_at_odds_with_the_places_stop_the_build(script: ModuleType) -> None:
    row = script.Source("X 1", "G", 0.0, 0.0, "And", None, None, None, "", "", "", "", "")
    with pytest.raises(SystemExit, match="disagree with the places"):
        script.check_constellations([row], ["Psc"])
