"""Text on a page: in the voices of the look, in rows, side by side where there is room."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import (
    QBoxLayout,
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QSizePolicy,
    QVBoxLayout,
    QWidget,
)

from core.language import say

# Lines of text in one of the voices the style sheet knows.


class Text(QLabel):
    """`voice` is how loud: figure, turn, time, title, question, quiet, small, caution, alarm; or
    plain.
    """

    def __init__(self, text: str = "", voice: str = "", parent: QWidget | None = None) -> None:
        super().__init__(text, parent)
        self.setProperty("voice", voice)
        self.setWordWrap(True)
        self.setTextFormat(Qt.TextFormat.PlainText)
        self.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)

    def say(self, text: str) -> None:
        """Shows the text, or nothing at all when there is none."""
        if text != self.text():
            self.setText(text)
        self.setVisible(bool(text))


class Panel(QFrame):
    """A raised area with its own column of widgets."""

    def __init__(self, title: str = "", parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(16, 12, 16, 12)
        self.column.setSpacing(8)
        if title:
            self.column.addWidget(Text(title, "title"))
            self.setAccessibleName(title)


# Lengths of time in short words.

MINUTE_S, HOUR_S = 60.0, 3600.0


def span_words(seconds: float) -> str:
    """Like "8.5 s", "40 s", "2.5 min", "1 h 05 min"; rounded, so never for a limit."""
    if seconds < 9.95:
        return say("{seconds:.2g} s", seconds=seconds)
    if seconds < 99.5:
        return say("{seconds:.0f} s", seconds=seconds)
    if seconds < 9.95 * MINUTE_S:
        return say("{minutes:.2g} min", minutes=seconds / MINUTE_S)
    minutes = round(seconds / MINUTE_S)
    if minutes < 60:
        return say("{minutes} min", minutes=minutes)
    hours, minutes = divmod(minutes, 60)
    if not minutes:
        return say("{hours} h", hours=hours)
    return say("{hours} h {minutes:02d} min", hours=hours, minutes=minutes)


def limit_words(seconds: float) -> str:
    """The same rounded down to two figures: a limit must not be stretched."""
    if seconds >= HOUR_S:
        return span_words(seconds // MINUTE_S * MINUTE_S)
    unit = MINUTE_S if seconds >= 2.0 * MINUTE_S else 1.0
    size = seconds / unit
    step = 1.0 if size >= 10.0 else 0.1 if size >= 1.0 else 0.01
    figure = int(size / step + 1e-9) * step
    if unit > 1.0:
        return say("{minutes:.4g} min", minutes=figure)
    return say("{seconds:.4g} s", seconds=figure)


# A few rows of short texts under quiet heads, to read and to copy, not to press.


class Rows(QWidget):
    """The first column reads from the left, figures stand to the right of theirs."""

    def __init__(self, name: str, heads: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._cells: list[Text] = []
        self._rows: list[tuple[str, ...]] = []
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setHorizontalSpacing(18)
        self._grid.setVerticalSpacing(2)
        for column, head in enumerate(heads):
            self._put(0, column, head, "small")
            self._grid.setColumnStretch(column, 1)
        self._heads = len(heads)

    def show_rows(self, rows: Sequence[tuple[str, ...]]) -> None:
        """Each as many texts as there are heads."""
        if list(rows) == self._rows:
            return
        self._rows = list(rows)
        for cell in self._cells:
            cell.hide()
            cell.deleteLater()
        self._cells = [
            self._put(number, column, text, "")
            for number, row in enumerate(rows, start=1)
            for column, text in enumerate(row)
        ]
        self.setAccessibleDescription("; ".join(", ".join(row) for row in rows))
        self.setVisible(bool(rows))

    def rows(self) -> list[tuple[str, ...]]:
        return list(self._rows)

    def _put(self, row: int, column: int, text: str, voice: str) -> Text:
        cell = Text(text, voice)
        side = Qt.AlignmentFlag.AlignRight if column else Qt.AlignmentFlag.AlignLeft
        cell.setAlignment(side | Qt.AlignmentFlag.AlignTop)
        self._grid.addWidget(cell, row, column)
        return cell


# Parts side by side where there is room, one above the other where there is not.

Direction = QBoxLayout.Direction
USUAL_TEXT_PX = 15


class Reflow(QWidget):
    """`room_px` is the width from which all fit side by side, at the usual text size.

    `shares`: how the width is divided then; equally when empty. `at_top`: parts of unlike height
    begin at one height. `reflowed` tells whether they now stand side by side.
    """

    reflowed = Signal(bool)

    def __init__(
        self,
        parts: Sequence[QWidget],
        room_px: int,
        shares: Sequence[int] = (),
        at_top: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._room_px = room_px
        self._box = QBoxLayout(Direction.LeftToRight, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(12)
        for part, share in zip(parts, shares or [1] * len(parts), strict=True):
            where = Qt.AlignmentFlag.AlignTop if at_top else Qt.AlignmentFlag(0)
            self._box.addWidget(part, share, where)

    def is_side_by_side(self) -> bool:
        return self._box.direction() is Direction.LeftToRight

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        # The text size is the measure: twice the text needs twice the room.
        enough = self.width() >= self._room_px * self.fontInfo().pixelSize() / USUAL_TEXT_PX
        wanted = Direction.LeftToRight if enough else Direction.TopToBottom
        if self._box.direction() is not wanted:
            self._box.setDirection(wanted)
            self.reflowed.emit(enough)


# Parts in as many columns as the width has room for, each column filled from the top.

GAP_PX = 12


class Columns(QWidget):
    """`least_px`: width of a column at the usual text size. `are_rows`: parts of a row line up
    (they are dealt out from left to right), else the columns are kept about equally long.
    """

    def __init__(
        self,
        parts: Sequence[QWidget],
        least_px: int,
        most: int = 4,
        are_rows: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._parts: list[QWidget] = []
        self._least_px = least_px
        self._most = most
        self._are_rows = are_rows
        self._columns: list[QVBoxLayout] = []
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(GAP_PX)
        for _ in range(most):
            column = QVBoxLayout()
            column.setSpacing(GAP_PX)
            row.addLayout(column)
            self._columns.append(column)
        self.show_parts(parts)

    def show_parts(self, parts: Sequence[QWidget]) -> None:
        """Other parts; those left out are deleted."""
        for gone in [part for part in self._parts if part not in parts]:
            gone.hide()
            gone.deleteLater()
        self._parts = list(parts)
        self._deal(self._fitting())

    def parts(self) -> list[QWidget]:
        """In order."""
        return list(self._parts)

    def count(self) -> int:
        """How many columns there are now."""
        return sum(column.count() > 1 for column in self._columns)

    def minimumSizeHint(self) -> QSize:
        """One column has to fit, however many stand side by side now."""
        width = max((part.minimumSizeHint().width() for part in self._parts), default=0)
        return QSize(width, super().minimumSizeHint().height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if self._fitting() != self.count():
            self._deal(self._fitting())

    def _fitting(self) -> int:
        least = self._least_px * self.fontInfo().pixelSize() / USUAL_TEXT_PX
        room = int((self.width() + GAP_PX) // (least + GAP_PX))
        return max(1, min(room, self._most, len(self._parts)))

    def _deal(self, count: int) -> None:
        for column in self._columns:
            while (item := column.itemAt(0)) is not None:
                held = item.widget()
                if held is None:
                    column.removeItem(item)
                else:  # deletes the item, whose memory of heights would outlive it otherwise
                    column.removeWidget(held)
        row = self.layout()
        assert isinstance(row, QHBoxLayout)
        heights = [0] * count
        for number, part in enumerate(self._parts):
            place = number % count if self._are_rows else heights.index(min(heights))
            heights[place] += part.sizeHint().height()
            self._columns[place].addWidget(part)
        for number, column in enumerate(self._columns):
            if column.count():
                column.addStretch()
            row.setStretch(number, 1 if number < count else 0)


# A page that scrolls up and down when the window is too low for it, and never sideways.


class Scrolled(QScrollArea):
    """The content is never squeezed below what its words need at the width there is: Qt asks only
    for the height they need at the width they would like, so that lines would overlap.
    """

    def __init__(self, content: QWidget, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        content.setObjectName("page")
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(content)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._give_room()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        handled = super().eventFilter(watched, event)
        if watched is self.widget() and event.type() == QEvent.Type.LayoutRequest:
            self._give_room()
        return handled

    def bring_into_view(self, part: QWidget) -> None:
        """Scrolls to a part that has just been shown, as soon as it has its place."""
        QTimer.singleShot(0, part, lambda: self.ensureWidgetVisible(part))

    def _give_room(self) -> None:
        content = self.widget()
        layout = content.layout() if content is not None else None
        if content is None or layout is None or not layout.hasHeightForWidth():
            return
        least = layout.totalMinimumHeightForWidth(self.viewport().width())
        if least != content.minimumHeight():
            content.setMinimumHeight(least)


# A column that scrolls by itself, or shows its whole length where the page scrolls instead.

PANE_LEAST_PX = 200


class Pane(Scrolled):
    def __init__(self, content: QWidget, parent: QWidget | None = None) -> None:
        self._is_whole = False
        super().__init__(content, parent)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Ignored)

    def show_whole(self, whole: bool) -> None:
        self._is_whole = whole
        self._fit()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        handled = super().eventFilter(watched, event)
        if watched is self.widget() and event.type() == QEvent.Type.LayoutRequest:
            self._fit()
        return handled

    def _fit(self) -> None:
        least = PANE_LEAST_PX
        content = self.widget()
        layout = content.layout() if content is not None else None
        if self._is_whole and layout is not None:
            least = max(layout.totalHeightForWidth(self.viewport().width()), PANE_LEAST_PX)
        if least != self.minimumHeight():
            self.setMinimumHeight(least)


# The few figures that answer a page's question, large, side by side where there is room.

FACT_LEAST_PX = 210


@dataclass(frozen=True)
class Fact:
    """`figure` large, `words` below it."""

    figure: str
    words: str = ""


class _One(QWidget):
    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._figure = Text("", "figure")
        self._words = Text("", "side")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (Text(name, "quiet"), self._figure, self._words):
            column.addWidget(part)

    def show_fact(self, fact: Fact) -> None:
        self._figure.say(fact.figure)
        self._words.say(fact.words)
        self.setAccessibleDescription(f"{fact.figure} {fact.words}".strip())


class Facts(Panel):
    """`names`: what each figure tells; a sentence about all of them may stand below."""

    def __init__(self, name: str, names: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(name)
        self._ones = [_One(one) for one in names]
        self._below = Text("", "quiet")
        self.column.addWidget(Columns(self._ones, FACT_LEAST_PX, most=len(names), are_rows=True))
        self.column.addWidget(self._below)
        self._below.hide()

    def show_facts(self, facts: Sequence[Fact], below: str = "") -> None:
        for one, fact in zip(self._ones, facts, strict=True):
            one.show_fact(fact)
        self._below.say(below)

    def told(self) -> list[str]:
        """What each figure says, for those who cannot see it and for tests."""
        return [one.accessibleDescription() for one in self._ones]

    def below(self) -> str:
        return self._below.text()


# The answer in large letters: where the axis points and what to turn.


@dataclass(frozen=True)
class AxisVerdict:
    """One direction. `figure` and `turn` are empty when the legs cannot tell; `side` says so."""

    figure: str
    side: str
    turn: str


@dataclass(frozen=True)
class Verdict:
    """`quiet`: sentences below. `finding`: what is known instead when the figures are not.
    `is_stale`: a newer answer is being worked out."""

    azimuth: AxisVerdict
    altitude: AxisVerdict
    quiet: tuple[str, ...] = ()
    finding: str = ""
    is_stale: bool = False


class _Half(QWidget):
    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._figure = Text("", "figure")
        self._side = Text("", "side")
        self._turn = Text("", "turn")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(Text(name, "quiet"))
        for part in (self._figure, self._side, self._turn):
            column.addWidget(part)
        column.addStretch()  # of two halves the shorter one keeps its lines together

    def show_axis(self, axis: AxisVerdict) -> None:
        self._figure.say(axis.figure)
        self._side.say(axis.side)
        self._turn.say(axis.turn)
        self.setAccessibleDescription(" ".join((axis.figure, axis.side, axis.turn)).strip())


class VerdictBand(Panel):
    """Azimuth and altitude, side by side where there is room."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Where the axis points"))
        self._azimuth = _Half(self.tr("Azimuth"))
        self._altitude = _Half(self.tr("Altitude"))
        self._finding = Text()
        self._quiet = Text("", "quiet")
        self.column.addWidget(Reflow((self._azimuth, self._altitude), 480))
        self.column.addWidget(self._finding)
        self.column.addWidget(self._quiet)

    def halves(self) -> tuple[QWidget, QWidget]:
        """Azimuth and altitude; each says in its description what it shows."""
        return self._azimuth, self._altitude

    def finding(self) -> str:
        return self._finding.text()

    def show_verdict(self, verdict: Verdict) -> None:
        self._azimuth.show_axis(verdict.azimuth)
        self._altitude.show_axis(verdict.altitude)
        self._finding.say(verdict.finding)
        # At the end of a line that is there anyway: nothing may jump at every answer.
        stale = [self.tr("A newer answer is being worked out …")] if verdict.is_stale else []
        self._quiet.say(" ".join((*verdict.quiet, *stale)))
