"""A figure over the whole sky as a picture in the colours of a look."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QColor, QImage

from app.theme.look import Colour, Look

Floats = NDArray[np.float64]

STEPS = 6  # shades up to twice the limit; steps can be told apart, a smooth ramp cannot
HATCH_PX = 9
TONES = 256
LINE, CLEAR = STEPS, STEPS + 1


def picture(values: Floats, limit: float, look: Look) -> QImage:
    """Rows of `values` (n, n) run from south to north; the picture has north on top.

    The darker half of the shades is within `limit`. Beyond it the sky is hatched, and a line goes
    along the limit, so that the shades need not be told apart. NaN stays clear.
    """
    rows = np.flipud(values)
    known = np.isfinite(rows)
    with np.errstate(invalid="ignore"):  # comparing NaN
        beyond = known & (rows > limit)
        steps = np.where(known, np.minimum(rows * (STEPS / 2.0 / limit), STEPS - 1), CLEAR)
    shades = steps.astype(np.uint8)
    shades[_hatched(beyond) | _border(beyond, known)] = LINE
    return _image(_table(look)[shades])


def tinted(shares: Floats, look: Look) -> QImage:
    """Shares 0 to 1 as tones from the well to what is chosen; NaN is the well. Rows run down."""
    low, high = _rgb(look.well), _rgb(look.chosen)
    parts = np.linspace(0.0, 1.0, TONES)[:, np.newaxis]
    table = np.full((TONES, 4), 255, dtype=np.uint8)
    table[:, :3] = np.round(low + parts * (high - low))
    tones = np.clip(np.nan_to_num(shares) * (TONES - 1), 0, TONES - 1).astype(np.uint8)
    return _image(table[tones])


def _table(look: Look) -> NDArray[np.uint8]:
    """Colours (STEPS + 2, 4): the shades, the lines, and nothing."""
    low, high, bright = _rgb(look.well), _rgb(look.chosen), _rgb(look.edge)
    table = np.zeros((STEPS + 2, 4), np.uint8)
    for step, part in enumerate(np.linspace(0.0, 1.0, STEPS)):
        to_high = low + (high - low) * min(2.0 * part, 1.0)
        colour = to_high + (bright - high) * max(1.2 * part - 0.6, 0.0)
        table[step] = [*np.round(colour), 255]
    table[LINE] = [*_rgb(look.text), 255]
    return table


def _rgb(colour: Colour) -> Floats:
    named = QColor(colour)
    return np.array([named.red(), named.green(), named.blue()], dtype=np.float64)


def _hatched(beyond: NDArray[np.bool]) -> NDArray[np.bool]:
    row, column = np.indices(beyond.shape)
    return np.asarray(beyond & ((row + column) % HATCH_PX == 0))


def _border(beyond: NDArray[np.bool], known: NDArray[np.bool]) -> NDArray[np.bool]:
    """Three pixels wide, inside the disc alone."""
    edge = np.zeros_like(beyond)
    for axis in (0, 1):
        for way in (-1, 1):
            other, there = np.roll(beyond, way, axis), np.roll(known, way, axis)
            edge |= known & there & (other != beyond)
    return edge


def _image(pixels: NDArray[np.uint8]) -> QImage:
    height, width, _ = pixels.shape
    image = QImage(pixels.data, width, height, 4 * width, QImage.Format.Format_RGBA8888)
    return image.copy()  # the array's memory goes away
