"""Telescope and camera together: what the smear budget and the sampling start from."""

from __future__ import annotations

from core.alignment.budget.task import Optics, UnusableTask
from core.language import marked, say
from core.mount.equipment import Camera, Telescope
from core.mount.quantities import ImpossibleValue

_FOCAL_LENGTH = marked("The focal length of “{name}” is not entered; see its data sheet.")
_PIXEL = marked("The pixel size of “{name}” is not entered; see its data sheet.")
_WIDTH = marked("The number of pixels across of “{name}” is not entered; see its data sheet.")
_HEIGHT = marked("The number of pixels down of “{name}” is not entered; see its data sheet.")


def optics_of(
    telescope: Telescope, camera: Camera, binning: int = 1, focal_factor: float = 1.0
) -> Optics:
    """The optics of a set. `focal_factor`: of a reducer (below 1) or a Barlow lens (above).

    Raises `ImpossibleValue` with a sentence that names the missing or impossible figure.
    """
    focal_length = _known(telescope.focal_length_mm, _FOCAL_LENGTH, telescope.name)
    pixel = _known(camera.pixel_um, _PIXEL, camera.name)
    width = _known(camera.width_px, _WIDTH, camera.name)
    height = _known(camera.height_px, _HEIGHT, camera.name)
    if binning < 1:
        raise ImpossibleValue(
            say("The binning is given as {binning}; it is 1 or more.", binning=binning)
        )
    if not 0.05 <= focal_factor <= 20.0:
        raise ImpossibleValue(
            say(
                "The reducer or Barlow factor is given as {factor:g}; it lies between 0.05 and "
                "20, and is 1 without either.",
                factor=focal_factor,
            )
        )
    try:
        return Optics(
            focal_length * focal_factor,
            pixel * binning,
            max(int(width) // binning, 1),
            max(int(height) // binning, 1),
        )
    except UnusableTask as sentence:
        raise ImpossibleValue(str(sentence)) from None


def _known(value: float | None, lack: str, name: str) -> float:
    if value is None:
        raise ImpossibleValue(say(lack, name=name))
    return value
