"""The whole program at a first start, at dusk, with the same hidden practice mount in every run."""

from __future__ import annotations

import itertools
from pathlib import Path
from types import SimpleNamespace

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication

from app.compose import Program

DUSK_S = 1_790_017_200.0  # 2026-09-21 19:00 UTC


def fresh_program(qapp: QApplication, folder: Path, monkeypatch: pytest.MonkeyPatch) -> Program:
    """Not yet started; even the guide for the first start has not been seen."""
    the_same = SimpleNamespace(randbits=lambda _bits: 2)
    monkeypatch.setattr("app.pagetable.secrets", the_same)
    settings = QSettings(str(folder / "fresh.ini"), QSettings.Format.IniFormat)
    seconds = itertools.count()
    return Program(qapp, settings, folder / "nights.sqlite", lambda: DUSK_S + 0.01 * next(seconds))
