"""Readings typed by hand: offsets of the watched star, one key press each, or one drift told."""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, datetime
from typing import TYPE_CHECKING

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.devices.typed import ManualSource, SingleDrift, Unit
from app.pages.drift.offset import NorthSetting, UnusableNumber, parse_size
from app.pages.drift.starchoice import ChosenStar, StarChoice
from app.ui.form import Choice, Field, Key, KeyRow
from app.ui.text import Text
from core.sky.clocks import parse_utc

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot


# Typing offsets of the watched star, one key press each.

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


# The shortest form: one drift, told in a sentence.

NOW, AT = "now", "at"


class SingleDriftForm(QWidget):
    """“It moved so many ″ north in so many minutes, ending now.” `given` carries a SingleDrift."""

    given = Signal(object)
    cancelled = Signal()

    def __init__(self, now: Callable[[], float], parent: QWidget | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self._now = now
        self._star = Text("", "title")
        self._moved = Field(self.tr("It moved, in ″"), "12")
        self._side = Choice(
            self.tr("To the"), [(NORTH, self.tr("North")), (SOUTH, self.tr("South"))]
        )
        self._minutes = Field(self.tr("In so many minutes"), "5")
        self._when = Choice(
            self.tr("Ending"), [(NOW, self.tr("Ending now")), (AT, self.tr("At a UTC time"))]
        )
        self._utc = Field(self.tr("Date and time, UTC"), "2026-09-21 21:14:00")
        self._error = Field(self.tr("Reading error, in ″ (one standard deviation)"))
        self._wrong = Text("", "alarm")
        self._add = Key(self.tr("Work it out"))
        self._back = Key(self.tr("Another star"))
        self._arrange()

    def _arrange(self) -> None:
        self._error.show_text("1")
        self._side.show_choice(NORTH)
        self._when.show_choice(NOW)
        self._add.setProperty("kind", "primary")
        self._add.clicked.connect(self.submit)
        self._back.clicked.connect(self.cancelled)
        self._when.chosen.connect(lambda when: self._utc.setVisible(when == AT))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        asked = (self._moved, self._side, self._minutes, self._when, self._utc, self._error)
        for part in (self._star, *asked, self._wrong, self._add, self._back):
            column.addWidget(part)
        for hidden in (self._utc, self._wrong):
            hidden.hide()
        for field in (self._moved, self._minutes, self._utc, self._error):
            field.submitted.connect(self.submit)

    def begin(self, star: str) -> None:
        self._star.setText(star)
        self._moved.setFocus()

    def submit(self) -> None:
        try:
            drift = self._drift()
        except ValueError as problem:
            self._wrong.say(str(problem))
            return
        self._wrong.say("")
        self.given.emit(drift)

    def _drift(self) -> SingleDrift:
        size = parse_size(self._moved.text(), self.tr("movement"))
        minutes = parse_size(self._minutes.text(), self.tr("number of minutes"))
        error = parse_size(self._error.text(), self.tr("reading error"))
        ending = self._now() if self._when.choice() == NOW else parse_utc(self._utc.text())
        return SingleDrift(size if self._side.choice() == NORTH else -size, minutes, ending, error)

    def fields(self) -> dict[str, Field]:
        return {
            "moved": self._moved,
            "minutes": self._minutes,
            "utc": self._utc,
            "error": self._error,
        }

    def star(self) -> str:
        return self._star.text()

    def side(self) -> Choice:
        return self._side

    def when(self) -> Choice:
        return self._when

    def wrong(self) -> str:
        return self._wrong.text()


# Readings typed by hand: choose a star, then read it again and again, or tell one drift.

AGAIN, ONCE = "again", "once"


class ByHand(QWidget):
    """Begins and ends legs of the session; the source's readings are connected by the page."""

    def __init__(
        self,
        session: Session,
        source: ManualSource,
        stars: StarChoice,
        now: Callable[[], float],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._source = source
        self._stars = stars
        self._star: ChosenStar | None = None
        self._form = Choice(
            self.tr("How you measure"),
            [(AGAIN, self.tr("Read several times")), (ONCE, self.tr("One drift"))],
        )
        self._form.show_choice(AGAIN)
        self._own = Key(self.tr("Another star, or one by its coordinates"))
        self._pad = ReadingPad(source)
        self._single = SingleDriftForm(now)
        self._north = NorthSetting(session)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for part in self._parts():
            column.addWidget(part)
        self._own.clicked.connect(lambda: self._show(self._form, self._stars))
        self._form.chosen.connect(self._choose)
        stars.chosen.connect(self._watch)
        self._pad.undo_wanted.connect(self._undo)
        session.reading_added.connect(lambda _snapshot: self._pad.confirm())
        self._pad.done.connect(self._done)
        self._single.given.connect(self._take)
        self._single.cancelled.connect(self._choose)
        session.follow(self._keep, readings=True)
        session.changed.connect(self._follow)
        self._choose()
        self._take_up()

    def watch(self, star: ChosenStar) -> None:
        """Read a star again and again from now on."""
        self._form.show_choice(AGAIN)
        self._watch(star)

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _follow(self, snapshot: Snapshot) -> None:
        """The leg may have been ended elsewhere: then there is nothing to read."""
        if snapshot.watching is None and self._pad.isVisibleTo(self):
            self._source.stop()
            self._choose()

    def _take_up(self) -> None:
        """Goes on with the star that was watched when the program was ended."""
        snapshot = self._tonight
        for leg in snapshot.legs:
            if leg.label == snapshot.watching:
                self._star = ChosenStar(leg.label, leg.ra_deg, leg.dec_deg)
                self._source.start()
                self._show(self._pad)
                self._pad.go_on(leg.label)

    def pad(self) -> ReadingPad:
        return self._pad

    def single(self) -> SingleDriftForm:
        return self._single

    def stars(self) -> StarChoice:
        return self._stars

    def north(self) -> NorthSetting:
        return self._north

    def own_button(self) -> Key:
        return self._own

    def form(self) -> Choice:
        return self._form

    def _choose(self) -> None:
        """The guide proposes stars to watch; for a single drift or without a site, choose here."""
        is_led = self._tonight.site is not None and self._form.choice() == AGAIN
        self._show(self._form, self._own if is_led else self._stars)
        self._stars.refresh()

    def _watch(self, star: ChosenStar) -> None:
        self._star = star
        if self._form.choice() == ONCE:
            self._show(self._single)
            self._single.begin(star.name)
            return
        self._session.begin_leg(star.name, star.ra_deg, star.dec_deg)
        self._source.start()
        self._show(self._pad)
        self._pad.begin(star.name)

    def _undo(self) -> None:
        self._pad.show_undone(self._session.remove_last_reading())

    def _done(self) -> None:
        self._source.stop()
        self._end_leg()
        self._choose()

    def _end_leg(self) -> None:
        """A star that was chosen but never read leaves no trace."""
        watched = self._tonight.watching
        empty = [leg.label for leg in self._tonight.legs if not len(leg.utc_s)]
        self._session.end_leg()
        if watched in empty:
            self._session.discard_leg(str(watched))

    def _take(self, drift: SingleDrift) -> None:
        if self._star is not None:
            self._session.take_leg(
                self._star.name, drift.leg(self._star.ra_deg, self._star.dec_deg)
            )
        self._choose()

    def _show(self, *parts: QWidget) -> None:
        """North counts wherever readings are typed."""
        for part in self._parts():
            part.setVisible(part in parts)
        self._north.setVisible(self._pad in parts or self._single in parts)

    def _parts(self) -> tuple[QWidget, ...]:
        return self._form, self._own, self._stars, self._pad, self._single, self._north
