"""PySide6 6.12.0 drops one reference to None at every call that returns nothing.

Before Python 3.12 None is counted like any object: when its count reaches zero the interpreter
aborts. Measured here rather than trusted to version numbers.
"""

import sys
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from PySide6.QtWidgets import QLabel

ROOT = Path(__file__).resolve().parents[2]
FAULTY = "6.12.0"
CALLS = 2000
ALLOWED = 50  # what the interpreter itself may let go or take meanwhile


@pytest.mark.skipif(
    sys.version_info >= (3, 12),
    reason="None is immortal since Python 3.12 (PEP 683): its count is fixed, the fault harmless",
)
def test_calls_that_return_nothing_leave_the_count_of_none_alone(qtbot):
    label = QLabel()
    qtbot.addWidget(label)
    label.setText("first")
    before = sys.getrefcount(None)
    for _ in range(CALLS):
        label.setText("again")
    assert abs(sys.getrefcount(None) - before) < ALLOWED


def test_the_project_excludes_the_faulty_version():
    project = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]
    wanted = [Requirement(text) for text in project["dependencies"]]
    toolkit = next(each for each in wanted if each.name == "PySide6-Essentials")
    assert not toolkit.specifier.contains(FAULTY)
    assert toolkit.specifier.contains("6.11.3")


def test_the_pins_exclude_the_faulty_version():
    lines = (ROOT / "packaging" / "requirements.txt").read_text("utf-8").splitlines()
    pinned = [Requirement(line) for line in lines if line.startswith(("PySide6", "shiboken6"))]
    assert len(pinned) == 2
    assert not any(each.specifier.contains(FAULTY) for each in pinned)
