"""A person at the keyboard of the real program."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from app.compose import Program
from app.ui.form import Key

PATIENCE_MS = 20_000
MOST_TABS = 200
PLAIN = Qt.KeyboardModifier.NoModifier
ALT = Qt.KeyboardModifier.AltModifier


class Person:
    """Has a keyboard and nothing else."""

    def __init__(self, program: Program, qtbot) -> None:
        self.program, self.window, self._qtbot = program, program.window, qtbot

    def wait(self, until: Callable[[], bool]) -> None:
        self._qtbot.waitUntil(until, timeout=PATIENCE_MS)

    def strike(self, key: Qt.Key, modifier: Qt.KeyboardModifier = PLAIN) -> None:
        where = QApplication.focusWidget() or self.window
        QTest.keyClick(where, key, modifier)
        QApplication.processEvents()

    def go(self, digit: Qt.Key, name: str) -> QWidget:
        """To a page by its number."""
        self.strike(digit, ALT)
        self.wait(lambda: self.window.page(name) is not None and self.window.page(name).isVisible())
        return self.window.page(name)

    def tab_to(self, wanted: QWidget) -> None:
        """By Tab alone; a part no Tab reaches fails the test."""
        target = wanted.focusProxy() or wanted
        passed = []
        for _ in range(MOST_TABS):
            if target.hasFocus():
                return
            self.strike(Qt.Key.Key_Tab)
            passed.append(type(QApplication.focusWidget()).__name__)
        raise AssertionError(
            f"Tab never reached {wanted.accessibleName() or wanted}: {passed[-30:]}"
        )

    def press(self, key: Key) -> None:
        self.tab_to(key)
        self.strike(Qt.Key.Key_Space)

    def type(self, line: QWidget, text: str) -> None:
        self.tab_to(line)
        QTest.keyClicks(QApplication.focusWidget(), text)

    def choose(self, keys: QWidget, option: Key) -> None:
        """Tab goes to the key that is down, arrows to the others."""
        down = next(key for key in keys.findChildren(Key) if key.isChecked())
        self.tab_to(down)
        count = len(keys.findChildren(Key))
        for way in [Qt.Key.Key_Right] * count + [Qt.Key.Key_Left] * count:
            if option.isChecked():
                return
            self.strike(way)
        assert option.isChecked()
