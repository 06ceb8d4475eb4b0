"""The stars round the pole and the charts of the Pole page, and when the pole star stands where."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.pole import words
from app.pages.pole.parts import PolarScope
from app.pages.pole.standing import AimedPole
from app.ui.fieldchart import Chart, RoundChart, Shape, Spot, rings, star_size
from app.ui.form import Choice, Named
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text
from core.alignment.polarscope.view import ScopeView, View, clock_text, dial_angle_deg, scope_view
from core.language import say
from core.sky.pole import PoleStarTurns, pole_star_turns
from core.sky.site import Site

# Which way round a sight or finder shows the sky.


class ViewChoice(Named):
    """`view_chosen` carries a View."""

    view_chosen = Signal(object)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        self._choice = Choice(name, [(view.name, _begun(str(view))) for view in View])
        super().__init__(name, self._choice, parent=parent)
        self._choice.chosen.connect(lambda chosen: self.view_chosen.emit(View[chosen]))

    def show_view(self, view: View) -> None:
        self._choice.show_choice(view.name)

    def choice(self) -> Choice:
        return self._choice


def _begun(words: str) -> str:
    return words[:1].upper() + words[1:]


# The charts of the Pole page: the star field round the pole, and the view through a sight.

DEGREES_AN_HOUR = 15.041
PATH_STEPS_H = (0.15, 0.3, 0.45, 0.6, 0.75, 0.9, 1.0)


def field_chart(standing: AimedPole, view: View, radius_arcmin: float, chosen_hip: int) -> Chart:
    """The stars about the true pole, both poles to scale; one star may be pointed out."""
    about = standing.pole.azimuth_deg, standing.pole.true_altitude_deg
    stars = scope_view(standing.field.azimuth_deg, standing.field.altitude_deg, *about, view)
    lifted = scope_view(about[0], standing.pole.refracted_altitude_deg, *about, view)
    spots = _stars(standing, stars, radius_arcmin, chosen_hip)
    refracted = _spot(lifted, Shape.SALTIRE, 6.0, say("refracted pole"))
    true = Spot(0.0, 0.0, Shape.CROSS, 8.0, say("true pole"), say("The true pole."), is_main=True)
    if lifted.distance_arcmin * 25.0 < radius_arcmin:  # too close together to name both
        true = Spot(0.0, 0.0, Shape.CROSS, 8.0, say("pole"), say("Both poles."), is_main=True)
        refracted = _spot(lifted, Shape.SALTIRE, 6.0, "")
    return Chart(
        radius_arcmin, rings(radius_arcmin), (true, refracted, *spots), rim=_rim(standing, view)
    )


def sight_chart(standing: AimedPole, sight: PolarScope) -> Chart:
    """The view through the sight of an axis that is on the pole aimed at.

    A hollow circle shows where the pole star belongs, a dotted line its way in the next hour, a
    diamond where the person has seen it.
    """
    radius = 30.0 * sight.field_deg
    seen = standing.in_sight(standing.field.azimuth_deg, standing.field.altitude_deg, sight.view)
    others = _stars(standing, seen, radius, 0, left_out_hip=standing.star.star.hip)
    place = standing.star_in_sight(sight.view)
    told = say(
        "{star} belongs at {place}.",
        star=standing.star.star.name,
        place=words.on_clock(*_plain(place)),
    )
    belongs = Spot(*_plain(place), Shape.HOLLOW, 9.0, standing.star.star.name, told, is_main=True)
    axis = Spot(0.0, 0.0, Shape.CROSS, 6.0, say("axis"), say("The middle of the sight: the axis."))
    spots = [belongs, axis, *others]
    if sight.sighting is not None:
        mine = sight.sighting.clock_angle_deg, sight.sighting.distance_arcmin
        told = say("You saw it at {place}.", place=words.on_clock(*mine))
        spots.append(Spot(*mine, Shape.DIAMOND, 9.0, say("seen"), told, is_main=True))
    path = _path(standing, sight.view, place)
    return Chart(radius, rings(radius), tuple(spots), path, _rim(standing, sight.view))


def _plain(place: ScopeView) -> tuple[float, float]:
    return float(place.clock_angle_deg), float(place.distance_arcmin)


def _spot(place: ScopeView, shape: Shape, size: float, name: str) -> Spot:
    return Spot(*_plain(place), shape, size, name, say("The refracted pole."))


def _stars(
    standing: AimedPole,
    seen: ScopeView,
    radius: float,
    chosen_hip: int,
    left_out_hip: int | None = None,
) -> list[Spot]:
    field = standing.field
    spots = []
    for index, star in enumerate(field.stars):
        place = float(seen.clock_angle_deg[index]), float(seen.distance_arcmin[index])
        if place[1] > radius or star.hip == left_out_hip:
            continue
        is_pole_star = star.hip == standing.star.star.hip
        is_main = is_pole_star or star.hip == chosen_hip
        name = star.name if is_main else f"{star.magnitude:.1f}"
        told = say(
            "{star}, magnitude {magnitude:.1f}: {place}.",
            star=star.name,
            magnitude=star.magnitude,
            place=words.on_clock(*place),
        )
        size = star_size(star.magnitude) + (2.0 if star.hip == chosen_hip else 0.0)
        spots.append(Spot(*place, Shape.STAR, size, name, told, is_main))
    return spots


def _path(standing: AimedPole, view: View, place: ScopeView) -> tuple[tuple[float, float], ...]:
    """The star's way through the next hour: it only turns about the pole."""
    angle, distance = _plain(place)
    now_deg, latitude_deg = standing.star.hour_angle_deg, standing.site.latitude_deg
    turned = [now_deg + DEGREES_AN_HOUR * step for step in (0.0, *PATH_STEPS_H)]
    dial = dial_angle_deg(turned, latitude_deg, view)
    return tuple((float(angle + step - dial[0]) % 360.0, distance) for step in dial)


def _rim(standing: AimedPole, view: View) -> tuple[tuple[float, str], ...]:
    """Which way is up and which is east: from three directions about a level axis."""
    about = scope_view([0.0, 1.0, -1.0], [46.0, 45.0, 45.0], 0.0, 45.0, view).clock_angle_deg
    east, west = say("east"), say("west")
    greater, smaller = (east, west) if standing.is_north else (west, east)
    angles = [float(round(angle / 90.0) * 90 % 360) for angle in about]
    return ((angles[0], say("up")), (angles[1], greater), (angles[2], smaller))


# When the pole star next stands above, below and beside the pole.


class PoleStarTimes(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent=parent)
        self._title = Text("", "title")
        self._lines = [Text() for _ in range(4)]
        self._small = Text("", "small")
        self._turns: PoleStarTurns | None = None
        self._site: Site | None = None
        for part in (self._title, *self._lines, self._small):
            self.column.addWidget(part)

    def show_standing(self, standing: AimedPole) -> None:
        """Looked up once for each site and turn; between, only the waiting gets shorter."""
        self._title.say(self.tr("{star} next stands").format(star=standing.star.star.name))
        self.setAccessibleName(self._title.text())
        if self._turns is None or standing.site != self._site or self._is_over(standing.utc_s):
            self._turns, self._site = pole_star_turns(standing.site, standing.utc_s), standing.site
        for line, text in zip(self._lines, self._texts(self._turns, standing.utc_s), strict=True):
            line.say(text)
        self._small.say(self._beside(self._turns))

    def texts(self) -> str:
        return " ".join([*(line.text() for line in self._lines), self._small.text()])

    def _is_over(self, utc_s: float) -> bool:
        return self._turns is None or any(time < utc_s for _, time in _times(self._turns))

    def _texts(self, turns: PoleStarTurns, utc_s: float) -> list[str]:
        said = {
            "above": self.tr("above the pole (upper culmination)"),
            "below": self.tr("below the pole (lower culmination)"),
            "east": self.tr("farthest east (elongation)"),
            "west": self.tr("farthest west (elongation)"),
        }
        lines = [
            self.tr("{where} in {span}, {time}").format(
                where=said[where], span=words.span(time - utc_s), time=words.utc(time)
            )
            for where, time in sorted(_times(turns), key=lambda turn: turn[1])
        ]
        return lines + [""] * (4 - len(lines))

    def _beside(self, turns: PoleStarTurns) -> str:
        if turns.widest_deg is None:
            return self.tr(
                "So near the Earth's pole the star goes round the zenith and is never farthest "
                "east or west."
            )
        return self.tr(
            "Farthest east and west it is {widest:.2f}° of azimuth from the pole."
        ).format(widest=turns.widest_deg)


def _times(turns: PoleStarTurns) -> list[tuple[str, float]]:
    found = {
        "above": turns.upper_culmination_utc_s,
        "below": turns.lower_culmination_utc_s,
        "east": turns.eastern_elongation_utc_s,
        "west": turns.western_elongation_utc_s,
    }
    return [(where, time) for where, time in found.items() if time is not None]


# The stars round the pole, to be recognised by eye, in binoculars or in a finder.

REACHES_ARCMIN = {"180": "3°", "60": "1°", "10": "10′"}
MOST_STARS = 15
HIP = Qt.ItemDataRole.UserRole
LIST_EVERY_S = 10  # the places in it change by half a minute of the clock face in a minute


class FieldView(QWidget):
    """`view_chosen` carries a View."""

    view_chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._standing: AimedPole | None = None
        self._view = View.ERECT
        self._listed: tuple[object, ...] = ()
        self._chart = RoundChart(theme, self.tr("Stars around the pole"))
        self._pointed = Text("", "small")
        self._views = ViewChoice(self.tr("You look"))
        self._reach = Choice(self.tr("Shown around the pole"), list(REACHES_ARCMIN.items()))
        self._reach.show_choice("180")
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Brightest stars around the pole"))
        self._list.setMinimumHeight(220)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._turns = PoleStarTimes()
        self._connect()
        self._arrange()

    def _connect(self) -> None:
        self._views.view_chosen.connect(self.view_chosen)
        self._reach.chosen.connect(lambda _reach: self._draw())
        self._list.currentRowChanged.connect(lambda _row: self._draw())
        self._chart.pointed.connect(self._pointed.setText)

    def _arrange(self) -> None:
        drawing, side = QWidget(), QWidget()
        left, right = QVBoxLayout(drawing), QVBoxLayout(side)
        for column in (left, right):
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(12)
        left.addWidget(self._chart, 1)
        left.addWidget(self._pointed)
        left.addStretch()
        panel = Panel(self.tr("The field"))
        panel.column.addWidget(Named(self.tr("Shown around the pole"), self._reach))
        panel.column.addWidget(self._views)
        panel.column.addWidget(self._list)
        right.addWidget(panel)
        right.addWidget(self._turns)
        right.addStretch()
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow((drawing, side), 760, (1, 1)))

    def show_standing(self, standing: AimedPole, view: View) -> None:
        self._standing, self._view = standing, view
        self._views.show_view(view)
        self._turns.show_standing(standing)
        self._show_list(standing)
        self._draw()

    def chart(self) -> RoundChart:
        return self._chart

    def reach(self) -> Choice:
        return self._reach

    def views(self) -> Choice:
        return self._views.choice()

    def star_list(self) -> QListWidget:
        return self._list

    def turns(self) -> PoleStarTimes:
        return self._turns

    def _show_list(self, standing: AimedPole) -> None:
        """The rows stay the same while the clock ticks; only their words are renewed."""
        stars = standing.field.stars[:MOST_STARS]
        state = (standing.site, self._view, int(standing.utc_s) // LIST_EVERY_S)
        if state == self._listed:
            return
        self._listed = state
        if self._list.count() != len(stars) or self._hips() != [star.hip for star in stars]:
            self._list.clear()
            for star in stars:
                item = QListWidgetItem()
                item.setData(HIP, star.hip)
                self._list.addItem(item)
        about = standing.pole.azimuth_deg, standing.pole.true_altitude_deg
        seen = scope_view(
            standing.field.azimuth_deg, standing.field.altitude_deg, *about, self._view
        )
        for row, star in enumerate(stars):
            clock = clock_text(float(seen.clock_angle_deg[row]))
            away = words.distance(float(standing.field.polar_distance_arcmin[row]))
            title = self.tr("{star}   magnitude {magnitude:.1f}").format(
                star=star.name, magnitude=star.magnitude
            )
            place = self.tr("{clock}, {away} from the true pole").format(clock=clock, away=away)
            self._list.item(row).setText(f"{title}\n{place}")

    def _hips(self) -> list[int]:
        return [self._list.item(row).data(HIP) for row in range(self._list.count())]

    def _draw(self) -> None:
        if self._standing is None:
            return
        item = self._list.currentItem()
        hip = 0 if item is None else int(item.data(HIP))
        radius = float(self._reach.choice())
        self._chart.show_chart(field_chart(self._standing, self._view, radius, hip))
