"""Where the answer goes: a full disk, a closed output, a reader that leaves; never a traceback."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[3]
POLE = "-m core pole --latitude 48 --longitude 11 --utc 2026-11-24T20:00Z"


def asked(words: str, where: str) -> tuple[int, str, str]:
    """Exit code and what came out at both ends, of a shell's line."""
    finished = subprocess.run(
        ["/bin/sh", "-c", f'"{sys.executable}" {words} {where}'],
        cwd=ROOT,
        capture_output=True,
        text=True,
        encoding="utf-8",
        timeout=60,
    )
    return finished.returncode, finished.stdout, finished.stderr


needs_shell = pytest.mark.skipif(not Path("/dev/full").exists(), reason="no such device here")


@needs_shell
@pytest.mark.parametrize("words", [POLE, f"{POLE} --json", "-m core pole --help"])
def test_a_full_disk_is_said(words: str) -> None:
    code, _, complaint = asked(words, "> /dev/full")
    assert code == 1
    assert complaint.startswith("The result could not be written (No space left on device)")
    assert len(complaint.splitlines()) == 1


@needs_shell
def test_a_closed_output_is_said() -> None:
    code, _, complaint = asked(POLE, ">&-")
    assert code == 1
    assert complaint.startswith("The result could not be shown")
    assert len(complaint.splitlines()) == 1


@needs_shell
def test_a_complaint_nobody_can_read_leaves_the_exit_code() -> None:
    assert asked("-m core pole", "2> /dev/full") == (2, "", "")
    assert asked("-m core pole", "2>&-") == (2, "", "")


@needs_shell
def test_a_reader_that_leaves_early_hears_nothing() -> None:
    assert asked(POLE, "| true") == (0, "", "")
