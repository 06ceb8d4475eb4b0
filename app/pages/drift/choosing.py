"""Choosing the next star: a chart of the sky beside the stars in the order of their worth."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.drift.starwords import line
from app.theme.theme import Theme
from app.widgets.dome import Dome
from app.widgets.domepicture import DomePicture, Sign, SkyMark
from app.widgets.reflow import Reflow
from app.widgets.text import Text

if TYPE_CHECKING:
    from app.session.guide.stars import Proposal, Proposals

MOST_LISTED = 60
MOST_DRAWN = 12


class Choosing(QWidget):
    """`marked`: another star is marked in the list. `taken`: it is to be watched."""

    marked = Signal()
    taken = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._proposals: Proposals | None = None
        self._title = Text(self.tr("The sky now, and the stars that tell most"), "title")
        self._chart = Dome(self.tr("Chart of the sky"), theme)
        self._list = QListWidget()
        self._list.setUniformItemSizes(True)
        self._list.setAccessibleName(self.tr("Stars to watch, the best first"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setSpacing(3)
        self._list.setMinimumHeight(200)
        self._list.currentRowChanged.connect(self._row_changed)
        self._list.itemActivated.connect(lambda _item: self.taken.emit())
        self._nothing = Text("", "quiet")
        self._nothing.setAlignment(Qt.AlignmentFlag.AlignTop)
        self._nothing.hide()
        beside = QWidget()
        stars = QVBoxLayout(beside)
        stars.setContentsMargins(0, 0, 0, 0)
        stars.addWidget(self._nothing)
        stars.addWidget(self._list, 1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._title)
        column.addWidget(Reflow((self._chart, beside), 560), 1)

    def show_proposals(self, proposals: Proposals) -> None:
        """The star that was marked stays marked while it is still among them."""
        marked = self.star()
        keeps = "" if marked is None or self._list.currentRow() == 0 else marked.name
        self._proposals = proposals
        self._list.blockSignals(True)
        self._list.clear()
        for star in proposals.stars[:MOST_LISTED]:
            self._list.addItem(QListWidgetItem(line(star, proposals)))
        names = [star.name for star in proposals.stars[:MOST_LISTED]]
        self._list.setCurrentRow(names.index(keeps) if keeps in names else 0)
        self._list.blockSignals(False)
        self._say_why_none(proposals.nothing)
        self._draw()
        self.marked.emit()

    def forget(self) -> None:
        """These stars were another night's."""
        self._proposals = None
        self._list.clear()
        self._say_why_none("")

    def _say_why_none(self, why: str) -> None:
        """In place of the list; empty where there are stars."""
        self._nothing.say(why)
        self._list.setVisible(not why)

    def proposals(self) -> Proposals | None:
        return self._proposals

    def star(self) -> Proposal | None:
        """The one marked in the list; the best until the person marks another."""
        row = self._list.currentRow()
        if self._proposals is None or not 0 <= row < len(self._proposals.stars):
            return None
        return self._proposals.stars[row]

    def star_list(self) -> QListWidget:
        return self._list

    def chart(self) -> Dome:
        return self._chart

    def _row_changed(self) -> None:
        self._draw()
        self.marked.emit()

    def _draw(self) -> None:
        proposals, chosen = self._proposals, self.star()
        if proposals is None:
            return
        marks = [
            _mark(star, star is chosen)
            for star in proposals.stars[:MOST_DRAWN]
            if star is not chosen
        ]
        if proposals.moon is not None:
            moon = proposals.moon
            marks.append(SkyMark(moon.azimuth_deg, moon.altitude_deg, self.tr("Moon"), Sign.RING))
        if chosen is not None:
            marks.append(_mark(chosen, True))
        self._chart.show_picture(DomePicture(horizon=proposals.horizon, marks=tuple(marks)))


def _mark(star: Proposal, is_chosen: bool) -> SkyMark:
    now = star.choice.now
    words = star.name if is_chosen else ""
    sign = Sign.STAR if is_chosen else Sign.DOT
    return SkyMark(now.azimuth_deg, now.altitude_deg, words, sign, is_chosen)
