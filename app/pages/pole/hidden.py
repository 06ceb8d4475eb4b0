"""Near the pole without seeing it: by compass, by a body one knows, by the Sun's shadow."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.pole import words
from app.pages.pole.standing import AimedPole
from app.ui.compass import CompassPanel
from app.ui.text import Panel, Reflow, Text
from app.workers.latest import LatestOnly
from core.alignment.polarscope.roughmarks import RoughMark, rough_marks
from core.language import say
from core.sky.compass import NoonShadow, NoShadow, noon_shadow
from core.sky.site import Air, Site
from core.sky.words import SHADOW_CAUTION, SUN_CAUTION, shadow_words

EVERY_S = 20.0  # in which the sky turns by 5′
NO_AXIS_DEG = 89.5
MARK = Qt.ItemDataRole.UserRole


@dataclass(frozen=True)
class HiddenPoleMarks:
    """Marks now, and the coming noon or why it gives no shadow."""

    marks: list[RoughMark]
    shadow: NoonShadow | None
    no_shadow: str


class HiddenView(QWidget):
    """What is slow to find out is found by an errand; call `stop` before letting go."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._standing: AimedPole | None = None
        self._asked: tuple[Site, Air, float] | None = None
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)
        self._compass = CompassPanel()
        self._raise = Text()
        self._compass.column.insertWidget(2, self._raise)
        self._marks = QListWidget()
        self._marks.setAccessibleName(self.tr("The Moon, planets and bright stars up now"))
        self._marks.setMinimumHeight(200)
        self._marks.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._marks.currentRowChanged.connect(lambda _row: self._show_mark())
        self._mark = Text()
        self._shadow = Text()
        self._arrange()

    def _arrange(self) -> None:
        bodies = Panel(self.tr("By a star, a planet or the Moon"))
        bodies.column.addWidget(Text(self._how(), "small"))
        bodies.column.addWidget(self._marks)
        bodies.column.addWidget(self._mark)
        bodies.column.addWidget(Text(say(SUN_CAUTION), "caution"))
        shadow = Panel(self.tr("By the Sun's shadow at noon"))
        shadow.column.addWidget(self._shadow)
        shadow.column.addWidget(Text(say(SHADOW_CAUTION), "alarm"))
        by_day = QWidget()
        column = QVBoxLayout(by_day)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for part in (self._compass, shadow):
            column.addWidget(part)
        column.addStretch()
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow((by_day, bodies), 760))
        whole.addStretch()

    def _how(self) -> str:
        return self.tr(
            "Level the tripod and set the latitude scale. Choose what you can see, set both "
            "circles as told below, and turn the whole mount on its foot until it stands in the "
            "finder: the axis then points within a degree or so of the pole."
        )

    def stop(self) -> None:
        self._errand.close()

    def show_standing(self, standing: AimedPole) -> None:
        self._standing = standing
        self._compass.show_site(standing.site, standing.utc_s)
        self._raise.say(self._height_words(standing))
        asked = standing.site, standing.air, standing.utc_s // EVERY_S
        if asked != self._asked:
            self._asked = asked
            self._errand.send(_question(standing))

    def marks(self) -> QListWidget:
        return self._marks

    def texts(self) -> str:
        return " ".join(
            (self._compass.texts(), self._raise.text(), self._mark.text(), self._shadow.text())
        )

    def _height_words(self, standing: AimedPole) -> str:
        if standing.pole.true_altitude_deg > NO_AXIS_DEG:
            return self.tr(
                "Here the axis points to the zenith and has no bearing: set it upright with a "
                "spirit level."
            )
        return self.tr(
            "Turn the mount so that its axis points there, and raise it to {height:.1f}° with an "
            "inclinometer on the axis: within a degree or two of the pole."
        ).format(height=standing.aim_altitude_deg)

    def _take(self, found: HiddenPoleMarks | None) -> None:
        if found is None:
            self._mark.say(self.tr("What is up now could not be worked out: see the fault file."))
            return
        self._show_marks(found.marks)
        self._shadow.say(self._shadow_words(found))

    def _shadow_words(self, found: HiddenPoleMarks) -> str:
        if found.shadow is None:
            return found.no_shadow
        now_s = 0.0 if self._standing is None else self._standing.utc_s
        wait = words.span(found.shadow.utc_s - now_s)
        when = self.tr("In {span}, at {time}. ")
        return when.format(span=wait, time=words.utc(found.shadow.utc_s)) + shadow_words(
            found.shadow
        )

    def _show_marks(self, marks: list[RoughMark]) -> None:
        """The one chosen stays chosen while it is up."""
        chosen = self._chosen()
        self._marks.blockSignals(True)
        self._marks.clear()
        for mark in marks:
            kind = "" if mark.magnitude is None else self._magnitude(mark.magnitude)
            place = words.direction(mark.azimuth_deg, mark.altitude_deg)
            item = QListWidgetItem(f"{mark.name}{kind}\n{place}")
            item.setData(MARK, mark)
            self._marks.addItem(item)
        names = [mark.name for mark in marks]
        row = names.index(chosen.name) if chosen is not None and chosen.name in names else 0
        self._marks.setCurrentRow(row if marks else -1)
        self._marks.blockSignals(False)
        self._marks.setVisible(bool(marks))
        self._show_mark()

    def _magnitude(self, magnitude: float) -> str:
        return self.tr("   magnitude {magnitude:.1f}").format(magnitude=magnitude)

    def _chosen(self) -> RoughMark | None:
        item = self._marks.currentItem()
        mark = None if item is None else item.data(MARK)
        return mark if isinstance(mark, RoughMark) else None

    def _show_mark(self) -> None:
        mark = self._chosen()
        if mark is None:
            self._mark.say(
                self.tr(
                    "Nothing fit to align by stands in the sky now: wait until it is darker, or "
                    "use the compass."
                )
            )
            return
        self._mark.say(
            self.tr(
                "{name}: set declination {declination} and hour angle {hour_angle}. It stands at "
                "azimuth {azimuth:.1f}°, {altitude:.1f}° high."
            ).format(
                name=mark.name,
                declination=words.signed(mark.declination_deg),
                hour_angle=words.hour_angle(mark.hour_angle_deg),
                azimuth=mark.azimuth_deg,
                altitude=mark.altitude_deg,
            )
        )


def _question(standing: AimedPole) -> Callable[[], HiddenPoleMarks]:
    site, air, utc_s = standing.site, standing.air, standing.utc_s

    def find() -> HiddenPoleMarks:
        marks = rough_marks(site, air, utc_s)
        try:
            return HiddenPoleMarks(marks, noon_shadow(site, air, utc_s), "")
        except NoShadow as reason:
            return HiddenPoleMarks(marks, None, str(reason))

    return find
