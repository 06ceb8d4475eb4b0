"""The two figures of the Pole page: the height to set, and where the pole star belongs."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.pole import words
from app.pages.pole.standing import Standing
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.alignment.aim import Aim
from core.alignment.polarscope.view import View, clock_text

SIDE_BY_SIDE_PX = 560


class _Figure(QWidget):
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
        self._height = _Figure("")
        self._star = _Figure("")
        self._cautions = Text()
        self.column.addWidget(Reflow((self._height, self._star), SIDE_BY_SIDE_PX, at_top=True))
        self.column.addWidget(self._cautions)

    def show_standing(self, standing: Standing, view: View, cautions: tuple[str, ...]) -> None:
        self._show_height(standing)
        self._show_star(standing, view)
        self._cautions.say(" ".join(cautions))

    def texts(self) -> str:
        figures = (self._height, self._star)
        said = [f"{part.accessibleName()}: {part.accessibleDescription()}" for part in figures]
        return " ".join([*said, self._cautions.text()])

    def _which(self, standing: Standing) -> str:
        poles = {
            Aim.TRUE_POLE: self.tr("true pole"),
            Aim.REFRACTED_POLE: self.tr("refracted pole"),
        }
        return poles.get(standing.aim, self.tr("between the poles"))

    def _show_height(self, standing: Standing) -> None:
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

    def _show_star(self, standing: Standing, view: View) -> None:
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
