"""The two figures of the Pole page: the height to set, and where the pole star belongs."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.pole import parts as sights
from app.pages.pole import words
from app.pages.pole.field import FieldView, field_chart
from app.pages.pole.hidden import HiddenView
from app.pages.pole.parts import PolarScope, PolarScopeReading, PoleParts
from app.pages.pole.polarscope import Read, ScopePanel
from app.pages.pole.standing import AimedPole
from app.ui.fieldchart import RoundChart
from app.ui.form import Choice, Key
from app.ui.redraw import Ticking
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from core.alignment.goal import Aim
from core.alignment.polarscope.view import View, clock_text
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot


SIDE_BY_SIDE_PX = 560


class _PoleFigure(QWidget):
    def __init__(self, name: str) -> None:
        super().__init__()
        self._name, self._figure = Text(name, "quiet"), Text("", "figure")
        self._side, self._small = Text("", "side"), Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self._name, self._figure, self._side, self._small):
            column.addWidget(part)

    def show_figure(self, name: str, figure: str, side: str, small: str) -> None:
        self._name.say(name)
        self._figure.say(figure)
        self._side.say(side)
        self._small.say(small)
        self.setAccessibleName(name)
        self.setAccessibleDescription(f"{figure}, {side}. {small}")


class PoleBand(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent=parent)
        self.setAccessibleName(self.tr("The pole and its star"))
        self._height = _PoleFigure("")
        self._star = _PoleFigure("")
        self._cautions = Text()
        self.column.addWidget(Reflow((self._height, self._star), SIDE_BY_SIDE_PX, at_top=True))
        self.column.addWidget(self._cautions)

    def show_standing(self, standing: AimedPole, view: View, cautions: tuple[str, ...]) -> None:
        self._show_height(standing)
        self._show_star(standing, view)
        self._cautions.say(" ".join(cautions))

    def texts(self) -> str:
        figures = (self._height, self._star)
        said = [f"{part.accessibleName()}: {part.accessibleDescription()}" for part in figures]
        return " ".join([*said, self._cautions.text()])

    def _which(self, standing: AimedPole) -> str:
        poles = {
            Aim.TRUE_POLE: self.tr("true pole"),
            Aim.REFRACTED_POLE: self.tr("refracted pole"),
        }
        return poles.get(standing.aim, self.tr("between the poles"))

    def _show_height(self, standing: AimedPole) -> None:
        pole = standing.pole
        side = self.tr("{which}, due {way}").format(
            which=self._which(standing),
            way=self.tr("north") if standing.is_north else self.tr("south"),
        )
        small = self.tr(
            "True pole {true:.3f}° high, refracted {refracted:.3f}°: the air lifts it {lift:.0f}″."
        ).format(
            true=pole.true_altitude_deg,
            refracted=pole.refracted_altitude_deg,
            lift=pole.refraction_arcsec,
        )
        figure = f"{standing.aim_altitude_deg:.2f}°"
        self._height.show_figure(self.tr("Set the latitude scale to"), figure, side, small)

    def _show_star(self, standing: AimedPole, view: View) -> None:
        star = standing.star
        place = standing.star_in_sight(view)
        names = {
            View.ERECT: self.tr("{star} in an erect sight, on the clock at"),
            View.INVERTED: self.tr("{star} in an inverted sight, on the clock at"),
            View.MIRRORED: self.tr("{star} in a mirrored sight, on the clock at"),
        }
        name = names[view].format(star=star.star.name)
        side = self.tr("{distance} from the pole").format(
            distance=words.distance(star.polar_distance_arcmin)
        )
        small = self.tr(
            "Hour angle {hour_angle}; azimuth {azimuth:.2f}°, {altitude:.2f}° high; {middle} from "
            "the middle of a sight on the {which}."
        )
        self._star.show_figure(
            name,
            clock_text(float(place.clock_angle_deg)),
            side,
            small.format(
                hour_angle=words.hour_angle(star.hour_angle_deg),
                azimuth=star.azimuth_deg,
                altitude=star.altitude_deg,
                middle=words.distance(float(place.distance_arcmin)),
                which=self._which(standing),
            ),
        )


# What the Pole page says before there is a site.


class Empty(QWidget):
    """Beside the first step, the stars round the pole of an invented site."""

    site_wanted = Signal()
    practice_wanted = Signal()

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._chart = RoundChart(theme, self.tr("Example: the stars around the pole"))
        self._to_site = Key(self.tr("Enter your site"), "primary")
        self._practice = Key(self.tr("Look round at an invented site"))
        self._to_site.clicked.connect(self.site_wanted)
        self._practice.clicked.connect(self.practice_wanted)
        words = self.tr(
            "How high to set the axis, where the pole star stands in a polar-axis sight, and how "
            "to come near the pole when it is hidden: all that follows from where you are."
        )
        panel = Panel()
        panel.column.addWidget(Text(words))
        for key in (self._to_site, self._practice):
            panel.column.addWidget(key, 0, Qt.AlignmentFlag.AlignLeft)
        example = QWidget()
        column = QVBoxLayout(example)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self._chart)
        words = self.tr("Example: the stars round the pole at an invented site.")
        column.addWidget(Text(words, "small"))
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow((panel, example), 760, at_top=True))

    def show_example(self, standing: AimedPole) -> None:
        self._chart.show_chart(field_chart(standing, View.ERECT, 180.0, 0))

    def site_button(self) -> Key:
        return self._to_site

    def practice_button(self) -> Key:
        return self._practice


# The Pole page: where is the pole, and how does the axis get near it?

SIGHT, FIELD, HIDDEN = "sight", "field", "hidden"


class PolePage(QWidget):
    """`site_wanted`: the person wants to say where they are. Call `stop` before letting go."""

    site_wanted = Signal()

    def __init__(
        self, session: Session, theme: Theme, parts: PoleParts, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._session = session
        self._parts = parts
        self._shown_for: object = None
        session.follow(self._keep)
        self._practises = False
        self._sight = sights.kept(parts.settings)
        self._empty = Empty(theme)
        self._invented = Text("", "quiet")
        self._band = PoleBand()
        self._ways = Choice(
            self.tr("How you look for the pole"),
            [
                (SIGHT, self.tr("Through a polar-axis sight")),
                (FIELD, self.tr("By the star field")),
                (HIDDEN, self.tr("The pole is hidden")),
            ],
        )
        self._sight_view, self._field_view = ScopePanel(theme), FieldView(theme)
        self._hidden_view = HiddenView()
        self._ways.show_choice(SIGHT)
        self._connect()
        self._arrange()
        self._ticking = Ticking(self, parts.now, self._tick)
        self._show()
        self.setFocusProxy(self._ways.button(SIGHT))

    def _connect(self) -> None:
        self._session.changed.connect(self._session_changed)
        self._empty.site_wanted.connect(self.site_wanted)
        self._empty.practice_wanted.connect(self._practise)
        self._ways.chosen.connect(lambda _way: self._show())
        self._sight_view.sight_changed.connect(self._take_sight)
        self._sight_view.aim_chosen.connect(self._session.set_aim)
        self._sight_view.placed.connect(self._placed)
        self._sight_view.reading().read.connect(self._read)
        self._sight_view.reading().forgotten.connect(self._forget)
        self._field_view.view_chosen.connect(self._take_view)

    def _arrange(self) -> None:
        content = QWidget()
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addWidget(Text(self.tr("Where is the pole?"), "question"))
        for part in (self._empty, self._invented, self._band, self._ways):
            column.addWidget(part)
        for view in self._views().values():
            column.addWidget(view)
        column.addStretch()
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _views(self) -> dict[str, QWidget]:
        return {SIGHT: self._sight_view, FIELD: self._field_view, HIDDEN: self._hidden_view}

    def stop(self) -> None:
        """Nothing goes on any more."""
        self._hidden_view.stop()

    def ways(self) -> Choice:
        return self._ways

    def band(self) -> PoleBand:
        return self._band

    def empty(self) -> Empty:
        return self._empty

    def sight_view(self) -> ScopePanel:
        return self._sight_view

    def field_view(self) -> FieldView:
        return self._field_view

    def hidden_view(self) -> HiddenView:
        return self._hidden_view

    def take_way(self, way: str) -> None:
        """One of "sight", "field" and "hidden"."""
        self._ways.show_choice(way)
        self._show()

    def _where(self) -> tuple[Site, Air] | None:
        site, air = self._tonight.site, self._tonight.air
        if site is not None and air is not None:
            return site, air
        return self._parts.meadow if self._practises else None

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _session_changed(self, snapshot: Snapshot) -> None:
        if (snapshot.site, snapshot.air, snapshot.aim) != self._shown_for:
            self._show()

    def _practise(self) -> None:
        self._practises = True
        self._show()

    def _show(self) -> None:
        """After anything but the clock has changed."""
        self._shown_for = self._tonight.site, self._tonight.air, self._tonight.aim
        where = self._where()
        self._empty.setVisible(where is None)
        for part in (self._band, self._ways):
            part.setVisible(where is not None)
        for way, view in self._views().items():
            view.setVisible(where is not None and way == self._ways.choice())
        invented = self._tonight.site is None and where is not None
        self._invented.say(
            self.tr("At an invented site, {site}.").format(site=where[0].name)
            if invented and where is not None
            else ""
        )
        self._ticking.tick()

    def _tick(self, utc_s: float) -> None:
        where = self._where()
        if where is None:
            self._empty.show_example(AimedPole.at(*self._parts.meadow, self._tonight.aim, utc_s))
            return
        standing = AimedPole.at(*where, self._tonight.aim, utc_s)
        cautions = standing.cautions(self._parts.horizon_of(standing.site))
        self._band.show_standing(standing, self._sight.view, cautions)
        way = self._ways.choice()
        if way == SIGHT:
            self._sight_view.show_standing(standing, self._sight.at(standing.site, utc_s))
        elif way == FIELD:
            self._field_view.show_standing(standing, self._sight.finder)
        else:
            self._hidden_view.show_standing(standing)

    def _take_view(self, view: View) -> None:
        self._take_sight(replace(self._sight, finder=view))

    def _take_sight(self, sight: PolarScope) -> None:
        self._sight = sight
        sights.keep(self._parts.settings, sight)
        self._ticking.tick()

    def _placed(self, clock_angle_deg: float, distance_arcmin: float) -> None:
        self._sight_view.reading().show_place(clock_angle_deg, distance_arcmin)
        self._read(Read(clock_angle_deg, distance_arcmin))

    def _read(self, read: Read) -> None:
        where = self._where()
        if where is None:
            return
        place = read.clock_angle_deg, read.distance_arcmin
        seen = PolarScopeReading(
            self._parts.now(), *place, where[0].latitude_deg, where[0].longitude_deg
        )
        self._take_sight(replace(self._sight, sighting=seen))

    def _forget(self) -> None:
        self._sight_view.reading().clear()
        self._take_sight(self._sight.without_reading())
