"""What time it is, in the times an observer needs, and how to tell whether that is right."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.ui.form import Field, Key
from app.ui.redraw import Ticking
from app.ui.text import Panel, Reflow, Text
from core.language import say
from core.sky import clocks
from core.sky.almanac import losses
from core.sky.clocks import UnusableZone, Zone
from core.sky.site import Air, Site
from core.sky.words import SUN_CAUTION, sun_check

TIMES_PX = 420


class _Time(QWidget):
    """A time with its name above."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._shown = Text("", "time")
        self._shown.setWordWrap(False)
        self._below = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (Text(name, "small"), self._shown, self._below):
            column.addWidget(part)
        column.addStretch()

    def show_time(self, time: str, below: str) -> None:
        self._shown.setText(time)
        self._below.setText(below)
        self.setAccessibleDescription(f"{time} {below}".strip())


class ClockPanel(Panel):
    """Ticks while it is shown. `zone_chosen` carries the name of a zone, empty for the own one.

    `checked`: the person compared the clock and found it right.
    """

    zone_chosen = Signal(str)
    checked = Signal()

    def __init__(
        self, now: Callable[[], float], own_zone: str, parent: QWidget | None = None
    ) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Clock"))
        self._now = now
        self._own = _own(own_zone)
        self._zone = self._own
        self._site: Site | None = None
        self._air: Air | None = None
        self._utc = _Time(self.tr("UTC"))
        self._civil = _Time(self.tr("Local time"))
        self._sidereal = _Time(self.tr("Sidereal time"))
        self._field = Field(self.tr("Time zone"), self.tr("empty: the computer's own"))
        self._check, self._caution = Text(), Text(say(SUN_CAUTION), "caution")
        self._doubt, self._earth = Text("", "alarm"), Text("", "small")
        self._is_right = Key(self.tr("The clock is right"))
        self._is_right.clicked.connect(self._checked)
        self._said = Text("", "small")
        self._said.hide()
        self._field.submitted.connect(self._choose)
        self._field.left.connect(self._choose)
        self._arrange()
        self._ticking = Ticking(self, now, self._tick)
        self._tick(now())

    def _arrange(self) -> None:
        self.column.addWidget(Text(self.tr("Is the clock right?"), "title"))
        self.column.addWidget(Reflow((self._utc, self._civil, self._sidereal), TIMES_PX))
        for part in (self._check, self._caution, self._field, self._doubt, self._earth):
            self.column.addWidget(part)
        self.column.addWidget(self._is_right, 0, Qt.AlignmentFlag.AlignLeft)
        self.column.addWidget(self._said)

    def show_site(self, site: Site | None, air: Air | None, zone: str) -> None:
        """The site in use and the zone kept with it."""
        self._site, self._air = site, air
        self._field.show_text(zone)
        self._read()
        self._ticking.tick()

    def right_button(self) -> Key:
        return self._is_right

    def zone_field(self) -> Field:
        return self._field

    def texts(self) -> str:
        """All that is said here."""
        parts = (self._check, self._caution, self._doubt, self._earth)
        times = (self._utc, self._civil, self._sidereal)
        said = [time.accessibleDescription() for time in times]
        return " ".join(said + [part.text() for part in parts if not part.isHidden()])

    def _checked(self) -> None:
        self._said.say(self.tr("Noted on tonight's checklist."))
        self.checked.emit()

    def _choose(self) -> None:
        before = self._zone
        if self._read() and self._zone != before:
            self.zone_chosen.emit("" if not self._field.text() else self._zone.name)
        self._ticking.tick()

    def _read(self) -> bool:
        """Takes the zone that is typed; whether there is one."""
        text = self._field.text()
        try:
            self._zone = clocks.find(text) if text else self._own
        except UnusableZone as problem:
            self._field.complain(str(problem))
            return False
        self._field.note(
            self.tr("{zone}: {offset} now.").format(
                zone=self._zone.name, offset=self._zone.offset_words(self._now())
            )
        )
        return True

    def _tick(self, utc_s: float) -> None:
        utc, civil = clocks.UTC_ZONE.civil(utc_s), self._zone.civil(utc_s)
        self._utc.show_time(f"{utc:%H:%M:%S}", f"{utc:%Y-%m-%d}")
        below = f"{civil:%Y-%m-%d}, {self._zone.offset_words(utc_s)}"
        self._civil.show_time(f"{civil:%H:%M:%S}", below)
        self._earth.say(" ".join(map(str, losses(utc_s) or (clocks.bundled().age(utc_s),))))
        if self._site is None or self._air is None:
            self._sidereal.show_time("–", self.tr("needs the site"))
            self._check.say(self.tr("With the site known, the Sun's place will check the clock."))
            self._doubt.say("")
            return
        hours = float(clocks.local_sidereal_time_hours(utc_s, self._site))
        self._sidereal.show_time(_clock_words(hours), self.tr("at this longitude"))
        self._check.say(sun_check(self._site, self._air, utc_s))
        self._doubt.say(str(self._zone.doubt(self._site.longitude_deg, utc_s) or ""))


def _own(name: str) -> Zone:
    """The computer's zone, UTC when its name is not known here."""
    try:
        return clocks.find(name)
    except UnusableZone:
        return clocks.UTC_ZONE


def _clock_words(hours: float) -> str:
    seconds = int(hours * 3600.0)
    return f"{seconds // 3600:02d}:{seconds // 60 % 60:02d}:{seconds % 60:02d}"
