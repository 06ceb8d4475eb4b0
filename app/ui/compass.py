"""What a compass shows here, as an instruction for setting the tripod by daylight."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.ui.text import Panel, Text
from core.language import say
from core.sky.compass import NoDeclination, declination
from core.sky.site import Site
from core.sky.words import IRON, compass_words


class CompassPanel(Panel):
    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent=parent)
        self.setAccessibleName(self.tr("Compass"))
        self._bearing, self._caution, self._iron = (
            Text("", "side"),
            Text("", "alarm"),
            Text(say(IRON), "small"),
        )
        self.column.addWidget(Text(self.tr("Compass"), "title"))
        for part in (self._bearing, self._caution, self._iron):
            self.column.addWidget(part)

    def show_site(self, site: Site | None, utc_s: float) -> None:
        """For this site at that time; without a site, what is missing."""
        bearing, caution = _words(site, utc_s)
        self._bearing.say(
            bearing or self.tr("Enter the site: where true north is by compass depends on it.")
        )
        self._caution.say(caution)
        self._iron.setVisible(bool(bearing))

    def texts(self) -> str:
        return f"{self._bearing.text()} {self._caution.text()}".strip()


def _words(site: Site | None, utc_s: float) -> tuple[str, str]:
    """The bearing with its ±, empty when there is none; a caution or the reason, or nothing."""
    if site is None:
        return "", ""
    try:
        here = declination(site, utc_s)
    except NoDeclination as reason:
        return "", str(reason)
    said = compass_words(here).replace(" ± ", "\u00a0±\u00a0")
    return said, str(here.caution or "")
