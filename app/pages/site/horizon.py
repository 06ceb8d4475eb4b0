"""What stands in the way: the skyline, drawn or as pairs of azimuth and altitude."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.ui.form import Key, Lines
from app.ui.panorama import Panorama
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text
from core.sky.horizon import Horizon, UnusableHorizon, parse
from core.sky.site import Site

MOST_STEPS_BACK = 50


class HorizonPanel(Panel):
    """`changed` carries the new Horizon after each stroke, key or pair."""

    changed = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent=parent)
        self.setAccessibleName(self.tr("Horizon"))
        self._before: list[Horizon] = []
        self._panorama = Panorama(theme)
        self._pointed = Text("", "small")
        self._pairs = Lines(self.tr("Horizon as pairs: azimuth and altitude in degrees"))
        self._wrong = Text("", "alarm")
        self._undo, self._clear = Key(self.tr("Undo")), Key(self.tr("All clear"))
        self._undo.setAccessibleName(self.tr("Undo the last change of the horizon"))
        self._clear.setAccessibleName(self.tr("Nothing in the way all round"))
        self._connect()
        self._arrange()
        self.show_horizon(Horizon.flat())

    def _connect(self) -> None:
        self._panorama.drawn.connect(self._take)
        self._panorama.pointed.connect(self._pointed.setText)
        self._pairs.left.connect(self._read_pairs)
        self._undo.clicked.connect(self._step_back)
        self._clear.clicked.connect(lambda: self._take(Horizon.flat()))

    def _arrange(self) -> None:
        self.column.addWidget(Text(self.tr("What stands in the way?"), "title"))
        self.column.addWidget(
            Text(
                self.tr(
                    "Draw the skyline over trees and roofs with the mouse; or step along it with "
                    "the arrow keys left and right and raise or lower it with up and down (Shift: "
                    "finer)."
                ),
                "small",
            )
        )
        drawing, typing = QWidget(), QWidget()
        left, right = QVBoxLayout(drawing), QVBoxLayout(typing)
        for column in (left, right):
            column.setContentsMargins(0, 0, 0, 0)
        left.addWidget(self._panorama)
        row = QHBoxLayout()
        row.addWidget(self._pointed, 1)
        for key in (self._undo, self._clear):
            row.addWidget(key)
        left.addLayout(row)
        left.addStretch()
        right.addWidget(Text(self.tr("Or azimuth and altitude, a pair a line"), "small"))
        right.addWidget(self._pairs, 1)
        self.column.addWidget(Reflow((drawing, typing), 760, (3, 1)))
        self.column.addWidget(self._wrong)

    def show_horizon(self, horizon: Horizon) -> None:
        """That of the place in use; steps before it are forgotten."""
        self._before = []
        self._show(horizon)

    def show_pole(self, site: Site | None) -> None:
        """Marks the elevated pole of a site."""
        if site is None:
            self._panorama.show_pole(None)
        else:
            azimuth_deg = 0.0 if site.latitude_deg >= 0.0 else 180.0
            self._panorama.show_pole(azimuth_deg, abs(site.latitude_deg))

    def panorama(self) -> Panorama:
        return self._panorama

    def pairs(self) -> Lines:
        return self._pairs

    def wrong(self) -> str:
        return self._wrong.text()

    def undo_button(self) -> Key:
        return self._undo

    def clear_button(self) -> Key:
        return self._clear

    def _read_pairs(self) -> None:
        """When the pairs are left: what cannot be read stays there to be mended."""
        if self._pairs.text().strip() == self._panorama.horizon().as_text().strip():
            self._wrong.say("")
            return
        try:
            horizon = parse(self._pairs.text())
        except UnusableHorizon as problem:
            self._wrong.say(self.tr("Not taken. {why}").format(why=_capital(str(problem))))
            return
        self._take(horizon)

    def _take(self, horizon: Horizon) -> None:
        self._before = [*self._before[-MOST_STEPS_BACK:], self._panorama.horizon()]
        self._show(horizon)
        self.changed.emit(horizon)

    def _step_back(self) -> None:
        if self._before:
            horizon = self._before.pop()
            self._show(horizon)
            self.changed.emit(horizon)

    def _show(self, horizon: Horizon) -> None:
        self._panorama.show_horizon(horizon)
        self._pairs.show_text(horizon.as_text())
        self._wrong.say("")
        self._undo.setEnabled(bool(self._before))
        self._clear.setEnabled(horizon.azimuth_deg.size > 0)


def _capital(sentence: str) -> str:
    return sentence[:1].upper() + sentence[1:]
