"""Readings typed by hand: choose a star, then read it again and again, or tell one drift."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.drift.northset import NorthSetting
from app.pages.drift.readingpad import ReadingPad
from app.pages.drift.singledrift import SingleDriftForm
from app.pages.drift.starchoice import ChosenStar, StarChoice
from app.sources.manual import ManualSource
from app.sources.shortest import SingleDrift
from app.widgets.choice import Choice
from app.widgets.key import Key

if TYPE_CHECKING:
    from app.session.session import Session
    from app.session.snapshot import Snapshot

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
        session.reading_added.connect(self._pad.confirm)
        self._pad.done.connect(self._done)
        self._single.given.connect(self._take)
        self._single.cancelled.connect(self._choose)
        session.changed.connect(self._follow)
        self._choose()
        self._take_up()

    def watch(self, star: ChosenStar) -> None:
        """Read a star again and again from now on."""
        self._form.show_choice(AGAIN)
        self._watch(star)

    def _follow(self, snapshot: Snapshot) -> None:
        """The leg may have been ended elsewhere: then there is nothing to read."""
        if snapshot.watching is None and self._pad.isVisibleTo(self):
            self._source.stop()
            self._choose()

    def _take_up(self) -> None:
        """Goes on with the star that was watched when the program was ended."""
        snapshot = self._session.snapshot()
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
        is_led = self._session.snapshot().site is not None and self._form.choice() == AGAIN
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
        snapshot = self._session.snapshot()
        empty = [leg.label for leg in snapshot.legs if not len(leg.utc_s)]
        self._session.end_leg()
        if snapshot.watching in empty:
            self._session.discard_leg(str(snapshot.watching))

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
