"""Whether a run has pixels that a scale could turn into arcseconds."""

from __future__ import annotations

from pathlib import Path

from core.alignment.driftlog import read_file
from core.alignment.driftlog.forms import RUN


class NoPixels(ValueError):
    """A scale was given for offsets in arcseconds; the text is a sentence for the person."""


def check_scale(log: str, scale_arcsec_per_px: float | None) -> None:
    """Raises NoPixels when the run in the file `log`, known to be readable, needs no scale."""
    if scale_arcsec_per_px is None or read_file(log, None, RUN).in_pixels:
        return
    raise NoPixels(
        f"{Path(log).name} gives its offsets in arcseconds, so that --scale would change "
        "nothing: leave it out, or call the columns east_px and north_px if they hold pixels."
    )
