"""The guide for developers names every folder and draws the procedure as they are."""

import ast
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
MODULES = sorted(path for top in ("core", "app") for path in (ROOT / top).rglob("*.py"))
OWN_LINES = 250  # more is not read


def test_the_guide_is_up_to_date():
    script = ROOT / "packaging" / "guide.py"
    done = subprocess.run(
        [sys.executable, str(script), "--check"], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr


def test_the_guide_is_short_enough_to_be_read():
    guide = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    assert len(guide.splitlines()) <= OWN_LINES


@pytest.mark.parametrize("folder", sorted({path.parent for path in MODULES}, key=str))
def test_every_module_says_in_a_sentence_what_it_is_for(folder: Path):
    for path in folder.glob("*.py"):
        said = ast.get_docstring(ast.parse(path.read_text(encoding="utf-8"))) or ""
        assert len(said.split("\n")[0].split()) >= 3, path
