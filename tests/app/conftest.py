"""A test that leaves a Qt thread, timer, window or warning behind fails."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QEvent, QObject, QSettings, QThread, QTimer
from PySide6.QtWidgets import QApplication
from shiboken6 import isValid

from app.ui.help import SEEN
from app.ui.style import Theme, sheet


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """pytest-qt gathers Qt's own messages; here any warning among them fails the test."""
    for item in items:
        if "app" in item.path.parts:
            item.add_marker(pytest.mark.qt_log_level_fail("WARNING"))
            # Said by the screenless platform, whatever the program does.
            item.add_marker(pytest.mark.qt_log_ignore("This plugin does not support"))


@pytest.fixture(autouse=True)
def nothing_left_running(qapp: QApplication) -> Iterator[None]:
    before = {id(widget) for widget in qapp.topLevelWidgets()}
    yield
    qapp.sendPostedEvents()
    qapp.processEvents()
    timers = [timer for timer in _alive(QTimer) if timer.isActive()]
    threads = [thread for thread in _alive(QThread) if thread.isRunning()]
    shown = [
        widget
        for widget in qapp.topLevelWidgets()
        if id(widget) not in before and widget.isVisible()
    ]
    _delete_hidden(qapp, before)
    assert not timers, f"timers left ticking: {[timer.parent() for timer in timers]}"
    assert not threads, f"threads left running: {threads}"
    assert not shown, f"windows left open: {shown}"


def _delete_hidden(qapp: QApplication, before: set[int]) -> None:
    """Closed windows would be styled again by every later test."""
    for widget in qapp.topLevelWidgets():
        ours = type(widget).__module__.startswith("app.")
        if ours and id(widget) not in before and not widget.isVisible():
            widget.deleteLater()
    qapp.sendPostedEvents(None, QEvent.Type.DeferredDelete)


def _alive(kind: type[QObject]) -> list:
    found = [thing for thing in gc.get_objects() if isinstance(thing, kind)]
    return [thing for thing in found if isValid(thing)]


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    """Of somebody who has read the guide for the first start."""
    made = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made.setValue(SEEN, True)
    return made


@pytest.fixture
def theme(qapp: QApplication, settings: QSettings) -> Iterator[Theme]:
    """Dresses what a test shows by itself too, as the window does with its parts."""
    made = Theme(qapp, settings)

    def dress() -> None:
        qapp.setStyleSheet(sheet(made.look, made.scale))

    made.changed.connect(dress)
    dress()
    yield made
    qapp.setStyleSheet("")
