"""The look in use: applied to everything there is and remembered."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication, QToolTip, QWidget

from app.theme.dressing import Dressing
from app.theme.look import DARK, LOOKS, Look
from app.theme.palette import palette
from app.theme.sheet import sheet

SCALES = (1.0, 1.25, 1.5, 2.0)


class Theme(QObject):
    """Owns look and text size; `changed` tells whoever paints by hand to paint again."""

    changed = Signal()

    def __init__(self, app: QApplication, settings: QSettings) -> None:
        super().__init__()
        self._app = app
        self._settings = settings
        self._look = LOOKS.get(str(settings.value("look", DARK.name)), DARK)
        self._scale = _nearest_scale(settings.value("text_scale", 1.0))
        self._dressing = Dressing(self)
        app.setStyle("Fusion")
        self._apply()

    @property
    def look(self) -> Look:
        return self._look

    @property
    def scale(self) -> float:
        """1.0 is the usual text size, 2.0 twice that."""
        return self._scale

    def choose(self, name: str) -> None:
        self._look = LOOKS[name]
        self._settings.setValue("look", name)
        self._apply()

    def enlarge(self, scale: float) -> None:
        self._scale = _nearest_scale(scale)
        self._settings.setValue("text_scale", self._scale)
        self._apply()

    def dress(self, part: QWidget) -> None:
        """Gives a part of the window, or a window of its own, the style sheet from now on."""
        self._dressing.add(part)

    def dress_page(self, page: QWidget) -> Iterator[None]:
        """As `dress`, piece by piece, so that a change of the look is not waited for.

        In slices, all of which must be taken before the page is shown.
        """
        return self._dressing.add_page(page)

    def dress_once(self, window: QWidget) -> None:
        """For a window that opens for a while and goes."""
        window.setStyleSheet(self._dressing.sheet())

    def is_settled(self) -> bool:
        """Whether all that is seen is in the look chosen last."""
        return self._dressing.is_settled()

    def close(self) -> None:
        """Nothing is dressed any more."""
        self._dressing.close()

    def _apply(self) -> None:
        self._app.setFont(_font(self._scale))
        made = palette(self._look)
        self._app.setPalette(made)
        QToolTip.setPalette(made)
        self._dressing.change(sheet(self._look, self._scale))
        self.changed.emit()


def _font(scale: float) -> QFont:
    font = QFont()
    font.setPixelSize(round(15 * scale))
    # Sub-pixel smoothing tints the edges of letters green and blue.
    font.setStyleStrategy(QFont.StyleStrategy.NoSubpixelAntialias)
    return font


def _nearest_scale(value: object) -> float:
    """A settings file edited by hand may hold anything."""
    try:
        wanted = float(str(value))
    except ValueError:
        return SCALES[0]
    return min(SCALES, key=lambda scale: abs(scale - wanted))
