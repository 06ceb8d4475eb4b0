"""The whole start, in a process of its own, with an environment that is already whole."""

import os
import shutil
import subprocess
import sys
import time
from pathlib import Path

import pytest

from firstrun import environment

PROGRAM = """import os, sys
print(sys.argv[1:], os.getcwd(), os.environ["PYTHONPATH"])
sys.exit(7)
"""
ALLOWED_S = 1.0


@pytest.fixture
def checkout(tmp_path) -> Path:
    """A copy of the start beside a small program, with every record of a whole environment."""
    place = tmp_path / "two words"
    shutil.copytree(
        environment.CHECKOUT / "packaging",
        place / "packaging",
        ignore=shutil.ignore_patterns("__pycache__"),
    )
    (place / "app").mkdir()
    (place / "app" / "__init__.py").touch()
    (place / "app" / "__main__.py").write_text(PROGRAM, "utf-8")
    folder = place / ".venv"
    environment.python_of(folder).parent.mkdir(parents=True)
    environment.python_of(folder).symlink_to(sys.executable)
    for record in environment.records(environment.RUN):
        (environment.site_packages(folder) / record).mkdir(parents=True)
    environment.stamp_path(folder, environment.RUN).write_text(
        environment.stamp_text(environment.RUN), "utf-8"
    )
    return place


@pytest.mark.skipif(os.name != "posix", reason="the stand-in interpreter is a symbolic link")
def test_it_hands_over_within_a_second_without_a_network(checkout, tmp_path):
    around = {**os.environ, "QT_QPA_PLATFORM": "offscreen", "PIP_INDEX_URL": "file:///nowhere"}
    begun = time.monotonic()
    ran = subprocess.run(
        [sys.executable, checkout / "packaging" / "start.py", "night one.csv"],
        cwd=tmp_path,
        env=around,
        capture_output=True,
        text=True,
        check=False,
    )
    assert time.monotonic() - begun < ALLOWED_S
    assert ran.stderr == ""
    assert ran.stdout == f"['night one.csv'] {tmp_path} {checkout}\n"
    assert ran.returncode == 7


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="elsewhere there is a screen")
def test_the_check_asks_for_no_screen(checkout, tmp_path):
    screens = ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")
    around = {name: value for name, value in os.environ.items() if name not in screens}
    ran = subprocess.run(
        [sys.executable, checkout / "packaging" / "start.py", "--check"],
        cwd=tmp_path,
        env=around,
        capture_output=True,
        text=True,
        check=False,
    )
    assert ran.stderr == ""
    assert ran.stdout.startswith("['--check']")
