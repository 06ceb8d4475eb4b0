"""When the pole star next stands above, below and beside the pole."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.pages.pole import words
from app.pages.pole.standing import Standing
from app.widgets.text import Panel, Text
from core.sky.pole import PoleStarTurns, pole_star_turns
from core.sky.site import Site


class Turns(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent=parent)
        self._title = Text("", "title")
        self._lines = [Text() for _ in range(4)]
        self._small = Text("", "small")
        self._turns: PoleStarTurns | None = None
        self._site: Site | None = None
        for part in (self._title, *self._lines, self._small):
            self.column.addWidget(part)

    def show_standing(self, standing: Standing) -> None:
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
