"""An offset as it is typed: its size, its unit, and which side is north."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.snapshot import NorthSet
from app.ui.form import Choice
from app.ui.text import Text
from core.language import say

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot


# Numbers as a person types them at the telescope.


class UnusableNumber(ValueError):
    """The message is a sentence for the person who typed."""


def parse_size(text: str, what: str) -> float:
    """A plain number with a decimal point or comma; `what` names it in the sentence."""
    plain = text.strip().rstrip("″′\"'").strip().replace(",", ".").replace("−", "-")
    if not plain:
        raise UnusableNumber(say("The {what} is empty.", what=what))
    if not re.fullmatch(r"[+-]?\d{1,7}(\.\d*)?", plain):
        raise UnusableNumber(
            say("“{typed}” is not a number; the {what} needs one.", typed=text.strip(), what=what)
        )
    return float(plain)


# How well north of the eyepiece or camera was set: one quiet line with three answers.


class NorthSetting(QWidget):
    """Shows and sets what the session has; a turned reticle leaks the drive's error into north."""

    def __init__(self, session: Session, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._session = session
        self._means = Text("", "small")
        self._choice = Choice(
            self.tr("How well north of the eyepiece or camera was set"),
            [
                (NorthSet.MEASURED.name, self.tr("Measured")),
                (NorthSet.NUDGED.name, self.tr("Star nudged")),
                (NorthSet.BY_EYE.name, self.tr("By eye")),
            ],
        )
        self._choice.chosen.connect(lambda name: session.set_north_set(NorthSet[name]))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(self._means)
        column.addWidget(self._choice)
        session.follow(self._show)

    def choice(self) -> Choice:
        return self._choice

    def said(self) -> str:
        """What the answer in force means."""
        return self._means.text()

    def _show(self, snapshot: Snapshot) -> None:
        north_set = snapshot.north_set
        self._choice.show_choice(north_set.name)
        self._means.say(self._meanings()[north_set].format(angle=north_set.value))

    def _meanings(self) -> dict[NorthSet, str]:
        return {
            NorthSet.MEASURED: self.tr(
                "North of the eyepiece or camera was measured; good to {angle:g}°."
            ),
            NorthSet.NUDGED: self.tr(
                "North of the eyepiece or camera: the star, moved with the hand control or pushed, "
                "ran along the line; good to {angle:g}°."
            ),
            NorthSet.BY_EYE: self.tr(
                "North of the eyepiece or camera was set by eye; good to {angle:g}°."
            ),
        }
