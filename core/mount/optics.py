"""Telescope and camera together: what the smear budget and the sampling start from."""

from __future__ import annotations

from core.alignment.budget.task import Optics, UnusableTask
from core.mount.equipment import Camera, Telescope
from core.mount.quantities import ImpossibleValue


def optics_of(
    telescope: Telescope, camera: Camera, binning: int = 1, focal_factor: float = 1.0
) -> Optics:
    """The optics of a set. `focal_factor`: of a reducer (below 1) or a Barlow lens (above).

    Raises `ImpossibleValue` with a sentence that names the missing or impossible figure.
    """
    focal_length = _known(telescope.focal_length_mm, "focal length", telescope.name)
    pixel = _known(camera.pixel_um, "pixel size", camera.name)
    width = _known(camera.width_px, "number of pixels across", camera.name)
    height = _known(camera.height_px, "number of pixels down", camera.name)
    if binning < 1:
        raise ImpossibleValue(f"The binning is given as {binning}; it is 1 or more.")
    if not 0.05 <= focal_factor <= 20.0:
        raise ImpossibleValue(
            f"The reducer or Barlow factor is given as {focal_factor:g}; it lies between 0.05 and "
            "20, and is 1 without either."
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


def _known(value: float | None, what: str, name: str) -> float:
    if value is None:
        raise ImpossibleValue(f"The {what} of “{name}” is not entered; see its data sheet.")
    return value
