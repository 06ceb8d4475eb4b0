"""The pictures of the sky on the Field rotation page: maps with the way of the target."""

from __future__ import annotations

import numpy as np

from app.pages.rotation.skymaps import SkyMap
from app.pages.rotation.study import STEP_S, Study, Way
from app.widgets.domepicture import DomePicture, Sign, SkyMark, SkyPath, SkyZone
from app.widgets.nightpicture import clock_words, steps
from app.widgets.skyview import FROM_ZENITH_DEG
from core.language import say
from core.sky.clocks import Zone

MOST_MARKS = 7
CLOSE_DEG, SPARSE = 10.0, 4
RATE, EXPOSURE, ZENITH = "rate", "exposure", "zenith"


def dome(kind: str, study: Study, zone: Zone) -> DomePicture:
    """`kind`: RATE, EXPOSURE or ZENITH, the same as RATE enlarged."""
    shown: dict[str, SkyMap] = {RATE: study.rates, EXPOSURE: study.exposures}
    sky = shown.get(kind, study.zenith_rates)
    rim = study.zenith_rim_deg if kind == ZENITH else FROM_ZENITH_DEG
    outline = SkyZone(*study.zone_outline_deg, say("too fast for the drive"))
    return DomePicture(
        rim_deg=rim,
        rings_deg=(0.0, 30.0, 60.0) if kind != ZENITH else _rings(rim),
        contours=sky.contours,
        bands=sky.bands,
        horizon=study.question.around.horizon,
        path=_path(study.way),
        marks=_marks(study, zone, kind == ZENITH),
        zone=outline,
    )


def _rings(rim_deg: float) -> tuple[float, ...]:
    return tuple(90.0 - step for step in steps(0.0, rim_deg, 4) if step > 0.0)


def _path(way: Way | None) -> SkyPath | None:
    if way is None:
        return None
    # Sparse where it is slow, every minute near the zenith, where it is seen enlarged.
    high = way.track.altitude_deg > 90.0 - CLOSE_DEG
    kept = high | (np.arange(len(high)) % SPARSE == 0)
    kept &= way.track.altitude_deg > -1.0
    return SkyPath(way.track.azimuth_deg[kept], way.track.altitude_deg[kept])


def _marks(study: Study, zone: Zone, is_near: bool) -> tuple[SkyMark, ...]:
    way = study.way
    if way is None:
        return ()
    times = way.track.utc_s
    step = _minutes(study, way) * 60.0 if is_near else 3600.0
    marks = []
    for utc_s in np.arange(np.ceil(times[0] / step) * step, times[-1], step).tolist():
        civil = zone.civil(utc_s)
        words = f"{civil:%H:%M}" if is_near else f"{civil.hour}"
        marks.append(_mark(way, utc_s, words if is_near or civil.minute == 0 else f"{civil:%H:%M}"))
    at = study.moment_utc_s
    moment = _mark(way, at, clock_words(zone, at), Sign.DIAMOND, True)
    return (*(mark for mark in marks if mark.altitude_deg > 0.0), moment)


def _minutes(study: Study, way: Way) -> float:
    """Between marks of the way where it is enlarged: no more than a handful of them."""
    near = float(np.sum(90.0 - way.track.altitude_deg <= study.zenith_rim_deg)) * STEP_S / 60.0
    return next((step for step in (1.0, 2.0, 5.0, 10.0, 30.0) if near / step <= MOST_MARKS), 60.0)


def _mark(
    way: Way, utc_s: float, words: str, sign: Sign = Sign.DOT, is_loud: bool = False
) -> SkyMark:
    unwrapped = np.unwrap(np.radians(way.track.azimuth_deg))
    azimuth = float(np.degrees(np.interp(utc_s, way.track.utc_s, unwrapped))) % 360.0
    return SkyMark(azimuth, way.at(way.track.altitude_deg, utc_s), words, sign, is_loud)
