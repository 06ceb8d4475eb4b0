"""Disks to keep a log of nights on."""

from __future__ import annotations

import os
import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest


@pytest.fixture
def tiny_disk(tmp_path: Path) -> Iterator[Path]:
    """A disk of 400 kB, where the system lets us make one."""
    folder = tmp_path / "tiny"
    folder.mkdir()
    mount = shutil.which("mount")
    if mount is None or not hasattr(os, "geteuid") or os.geteuid() != 0:
        pytest.skip("making a small disk needs the rights of the administrator")
    made = subprocess.run(
        [mount, "-t", "tmpfs", "-o", "size=400k", "tmpfs", str(folder)], capture_output=True
    )
    if made.returncode:
        pytest.skip("this system makes no small disk")
    yield folder
    subprocess.run(["umount", str(folder)], check=True)
