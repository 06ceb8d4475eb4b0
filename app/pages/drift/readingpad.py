"""Typing offsets of the watched star, one key press each."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.drift.offset import UnusableNumber, parse_size
from app.sources.manual import ManualSource, Unit
from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.key import Key
from app.widgets.keyrow import KeyRow
from app.widgets.text import Text

NORTH, SOUTH = "north", "south"
ARCSEC, DIVISIONS = "arcsec", "divisions"
DEFAULT_ERROR = "1"


class ReadingPad(QWidget):
    """Space with an empty field remembers the moment; Space or Enter with a number takes it.

    N and S change the side without leaving the field; other letters go out by `letter_pressed`.
    """

    undo_wanted = Signal()
    done = Signal()
    letter_pressed = Signal(str)

    def __init__(self, source: ManualSource, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._source = source
        self._pending = ""
        self._offset = Field(self.tr("Offset of the star from where it was"))
        self._side = Choice(
            self.tr("Side"), [(NORTH, self.tr("North (N)")), (SOUTH, self.tr("South (S)"))]
        )
        self._side.show_choice(NORTH)
        self._read = Key(self.tr("Read now (Space)"))
        self._read.setProperty("kind", "primary")
        self._said = Text("", "quiet")
        self._units = Choice(
            self.tr("Unit"),
            [(ARCSEC, self.tr("Arcsec ″")), (DIVISIONS, self.tr("Divisions or pixels"))],
        )
        self._units.show_choice(ARCSEC)
        self._scale = Field(self.tr("Arcsec in one division or pixel"))
        self._error = Field(self.tr("Reading error, in ″ (one standard deviation)"))
        self._error.show_text(DEFAULT_ERROR)
        self._undo = Key(self.tr("Undo last reading"))
        self._done = Key(self.tr("Done with this star"))
        self._arrange()
        self._connect()

    def _arrange(self) -> None:
        last = KeyRow((self._undo, self._done))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        reading = (self._offset, self._side, self._read, self._said, last)
        for part in (*reading, self._units, self._scale, self._error):
            column.addWidget(part)
        self._scale.hide()

    def _connect(self) -> None:
        self._read.clicked.connect(self.press)
        self._offset.submitted.connect(self.press)
        self._offset.line().installEventFilter(self)
        self._units.chosen.connect(lambda unit: self._scale.setVisible(unit == DIVISIONS))
        self._undo.clicked.connect(self.undo_wanted)
        self._done.clicked.connect(self.done)

    def begin(self, star: str) -> None:
        """A new star: nothing read yet."""
        self._say(
            self.tr("Watching {star}. Put it on a mark of the reticle and read 0 first.").format(
                star=star
            )
        )
        self._offset.show_text("")
        self._offset.setFocus()

    def go_on(self, star: str) -> None:
        """A star that was read before the program was ended."""
        self._say(
            self.tr(
                "{star} was being watched. If it still stands by the same mark, read on; "
                "otherwise choose it again."
            ).format(star=star)
        )

    def press(self) -> None:
        """The one key: remembers the moment, or takes the number that was typed."""
        if not self._offset.text():
            marked = datetime.fromtimestamp(self._source.mark(), UTC)
            self._say(self.tr("Moment kept: {t} UTC. Now type the offset.").format(t=_hms(marked)))
            self._offset.setFocus()
            return
        if self._prepared():
            self._take()

    def _prepared(self) -> bool:
        """Unit and reading error are set as shown."""
        try:
            scale = 1.0
            if self._units.choice() == DIVISIONS:
                scale = self._checked(self._scale, self.tr("scale"))
            self._source.unit = Unit(self.tr("divisions"), scale)
            error = self._checked(self._error, self.tr("reading error"))
        except ValueError as problem:
            self._say(str(problem))
            return False
        if error <= 0:
            self._error.complain(self.tr("The reading error must be more than 0."))
            return False
        self._source.sigma_arcsec = error
        return True

    def _checked(self, field: Field, what: str) -> float:
        try:
            value = parse_size(field.text(), what)
        except UnusableNumber as problem:
            field.complain(str(problem))
            raise
        field.note("")
        return value

    def _take(self) -> None:
        try:
            size = self._checked(self._offset, self.tr("offset"))
        except UnusableNumber:
            return
        is_north = self._side.choice() == NORTH
        side = self.tr("north") if is_north else self.tr("south")
        self._pending = self.tr("Taken: {size:g} {side}.").format(size=size, side=side)
        self._say(self.tr("Not taken; the reason stands above."))
        self._source.take(size, is_north)
        self._offset.show_text("")
        self._offset.setFocus()

    def confirm(self) -> None:
        """The reading has arrived where it is kept."""
        self._say(self._pending)

    def show_undone(self, undone: bool) -> None:
        """Whether there was a reading to take back."""
        if undone:
            self._say(self.tr("The last reading is taken back."))
        else:
            self._say(self.tr("There is no reading to take back."))
        self._offset.setFocus()

    def _say(self, sentence: str) -> None:
        self._said.say(sentence)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Keys that mean something in the offset field beyond typing."""
        if isinstance(event, QKeyEvent) and event.type() == QEvent.Type.KeyPress:
            action = self._key_actions().get(event.key())
            if action is not None and not event.isAutoRepeat():
                action()
                return True
            if action is None and event.text().isalpha() and not event.isAutoRepeat():
                self.letter_pressed.emit(event.text())  # no number has letters in it
                return True
        return super().eventFilter(watched, event)

    def _key_actions(self) -> dict[int, Callable[[], None]]:
        return {
            Qt.Key.Key_Space: self.press,
            Qt.Key.Key_N: lambda: self._side.show_choice(NORTH),
            Qt.Key.Key_S: lambda: self._side.show_choice(SOUTH),
        }

    def offset(self) -> Field:
        return self._offset

    def error(self) -> Field:
        return self._error

    def scale(self) -> Field:
        return self._scale

    def units(self) -> Choice:
        return self._units

    def side(self) -> Choice:
        return self._side

    def said(self) -> str:
        return self._said.text()


def _hms(moment: datetime) -> str:
    return moment.strftime("%H:%M:%S")
