"""A figure over the whole sky as a picture in the colours of a look."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from PySide6.QtGui import QColor, QImage

from app.theme.look import Colour, Look

Floats = NDArray[np.float64]

STEPS = 6  # shades up to twice the limit; steps can be told apart, a smooth ramp cannot
HATCH_PX = 9


def picture(values: Floats, limit: float, look: Look) -> QImage:
    """Rows of `values` (n, n) run from south to north; the picture has north on top.

    The darker half of the shades is within `limit`. Beyond it the sky is hatched, and a line goes
    along the limit, so that the shades need not be told apart. NaN stays clear.
    """
    rows = np.flipud(values)
    known = np.isfinite(rows)
    share = np.clip(np.where(known, rows, 0.0) / (2.0 * limit), 0.0, 0.999)
    ramp = np.floor(share * STEPS) / (STEPS - 1)
    low, high, bright = _rgb(look.well), _rgb(look.chosen), _rgb(look.edge)
    colours: Floats = np.where(
        (ramp < 0.5)[..., np.newaxis],
        low + (high - low) * (2.0 * ramp)[..., np.newaxis],
        high + (bright - high) * (1.2 * ramp - 0.6)[..., np.newaxis],
    )
    beyond = known & (rows > limit)
    colours[_hatched(beyond) | _border(beyond, known)] = _rgb(look.text)
    return _image(colours, known)


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


def _image(colours: Floats, known: NDArray[np.bool]) -> QImage:
    height, width = known.shape
    pixels = np.zeros((height, width, 4), np.uint8)
    pixels[..., :3] = np.round(colours)
    pixels[..., 3] = np.where(known, 255, 0)
    pixels[~known] = 0
    image = QImage(pixels.data, width, height, 4 * width, QImage.Format.Format_RGBA8888)
    return image.copy()  # the array's memory goes away
