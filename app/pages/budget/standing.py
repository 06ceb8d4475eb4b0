"""The alignment as solved now: whether it is good enough, and what does the smearing."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QGridLayout, QWidget

from app.widgets.text import Panel, Text
from core.imaging.verdict import Grade, Share, Smear
from core.language import say


class Standing(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("The axis as it stands"), parent)
        self.grade = Text("", "turn")
        self.sentence = Text()
        self._table = QWidget()
        self._cells: list[tuple[Text, Text]] = []
        self.column.addWidget(self.grade)
        self.column.addWidget(self.sentence)
        self._build_table()
        self.column.addWidget(self._table)
        self.column.addStretch()

    def _build_table(self) -> None:
        grid = QGridLayout(self._table)
        grid.setContentsMargins(0, 4, 0, 4)
        grid.setHorizontalSpacing(16)
        heads = (self.tr("Smear, in pixels"), self.tr("Centre"), self.tr("Corner"))
        for column, words in enumerate(heads):
            grid.addWidget(_aligned(Text(words, "quiet"), column), 0, column)
        names = (
            self.tr("All together"),
            self.tr("Between (95 %)"),
            self.tr("Azimuth error alone"),
            self.tr("Altitude error alone"),
            self.tr("The air alone"),
        )
        for row, name in enumerate(names, start=1):
            cells = Text(), Text()
            grid.addWidget(Text(name), row, 0)
            for column, cell in enumerate(cells, start=1):
                grid.addWidget(_aligned(cell, column), row, column)
            self._cells.append(cells)
        grid.setColumnStretch(0, 2)
        for column in (1, 2):
            grid.setColumnStretch(column, 1)

    def show_smear(self, smear: Smear) -> None:
        self.grade.say(self._grade_words(smear.grade))
        self.sentence.say(smear.sentence)
        known = smear.centre is not None and smear.corner is not None
        self._table.setVisible(known)
        for column, share in enumerate((smear.centre, smear.corner)):
            if share is not None:
                for row, words in enumerate(_words(share)):
                    self._cells[row][column].setText(words)

    def _grade_words(self, grade: Grade) -> str:
        return {
            Grade.GOOD_ENOUGH: self.tr("Good enough"),
            Grade.NOT_GOOD_ENOUGH: self.tr("Not good enough"),
            Grade.NOT_CLEAR_YET: self.tr("Not clear yet"),
            Grade.UNKNOWN: self.tr("Not known yet"),
        }[grade]

    def cells(self) -> list[tuple[str, str]]:
        """Centre and corner of each row, as shown."""
        return [(centre.text(), corner.text()) for centre, corner in self._cells]


def _aligned(text: Text, column: int) -> Text:
    if column:
        text.setAlignment(Qt.AlignmentFlag.AlignRight)
    return text


def _words(share: Share) -> tuple[str, ...]:
    between = say("{low:.2f} to {high:.2f}", low=share.low_px, high=share.high_px)
    alone = (share.azimuth_px, share.altitude_px, share.air_px)
    return (f"{share.total_px:.2f}", between, *(f"{size:.2f}" for size in alone))
