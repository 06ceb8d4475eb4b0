"""What each plot of the Tracking page shows of a study."""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QCoreApplication

from app.pages.tracking.figures import Given, Tap
from app.ui.curveplot import Curve, CurvePicture, Ink
from app.ui.text import span_words
from core.language import say
from core.practice.simulation import Worm

if TYPE_CHECKING:
    from core.alignment.driftlog.records import Leg
    from core.tracking.exposure import ChanceCurve
    from core.tracking.periodic import PeriodicError
    from core.tracking.pointing import Pointing

Floats = NDArray[np.float64]

MOST_TURNS = 12  # single turns drawn; more hide each other
TICKS_S = (2.0, 5.0, 15.0, 60.0, 180.0, 600.0, 1800.0)
PERIOD_TICKS_S = (15.0, 30.0, 60.0, 120.0, 300.0, 600.0, 1200.0, 3600.0)
EXAMPLE = Worm(480.0, (7.5, 2.2, 0.8), (0.4, 1.9, 4.0))
DRIVES = {"unguided": Ink.DASHED, "trained": Ink.DOTTED, "guided": Ink.FULL}


def tr(text: str) -> str:
    return QCoreApplication.translate("TrackingPictures", text)


def _arcsec(value: float) -> str:
    return f"{value:.2f}″"


def one_turn(found: PeriodicError) -> CurvePicture:
    """The turns over each other, and their mean."""
    folded = found.folded
    turns = _turns(found, folded.table_arcsec, tr("single turns"))
    curve = found.curve_arcsec(found.epoch_utc_s + folded.place_s)
    wave = Curve(tr("fitted curve"), folded.place_s, curve)
    mean = Curve(tr("mean of all turns"), folded.place_s, folded.mean_arcsec, Ink.DASHED)
    return _of_a_turn(tr("One turn of the worm"), tr("Drive ahead (″)"), (*turns, mean, wave))


def example_turn() -> CurvePicture:
    """What an invented drive would show, before there is a run."""
    place = np.linspace(0.0, EXAMPLE.period_s, 200)
    curve = Curve(tr("an invented drive"), place, EXAMPLE.lead_arcsec(place))
    return _of_a_turn(tr("Example: one turn of a worm"), tr("Drive ahead (″)"), (curve,))


def after_training(found: PeriodicError) -> CurvePicture:
    """What no training can take out, beside what it can."""
    folded = found.folded
    left = folded.table_arcsec - folded.mean_arcsec
    turns = _turns(found, left, tr("what is left of single turns"))
    mean = Curve(tr("what training takes out"), folded.place_s, folded.mean_arcsec)
    return _of_a_turn(tr("Before and after training"), tr("Drive ahead (″)"), (*turns, mean))


def _of_a_turn(title: str, y_name: str, curves: tuple[Curve, ...]) -> CurvePicture:
    return CurvePicture(
        title,
        tr("Place in the turn (seconds)"),
        y_name,
        curves,
        x_words=lambda x: say("{seconds:.0f} s", seconds=x),
        y_words=_arcsec,
    )


def _turns(found: PeriodicError, table: Floats, name: str) -> list[Curve]:
    return [Curve(name, found.folded.place_s, row, Ink.THIN) for row in table[:MOST_TURNS]]


def whole_run(found: PeriodicError) -> CurvePicture:
    minutes = (found.utc_s - found.utc_s[0]) / 60.0
    fitted = found.lead_arcsec - found.residual_arcsec
    pieces = [found.piece == number for number in range(int(found.piece[-1]) + 1)]
    lines = ((tr("readings"), found.lead_arcsec, Ink.THIN), (tr("fitted curve"), fitted, Ink.FULL))
    return CurvePicture(
        tr("The whole run, the drift of the axis taken out"),
        tr("Time (minutes)"),
        tr("Drive ahead (″)"),
        tuple(
            Curve(name, minutes[inside], values[inside], ink)
            for name, values, ink in lines
            for inside in pieces  # no line across a gap
        ),
        x_words=lambda x: say("{minutes:.1f} min", minutes=x),
        y_words=_arcsec,
    )


def live_run(leg: Leg) -> CurvePicture:
    """What is being recorded, as it is measured."""
    minutes = (leg.utc_s - leg.utc_s[0]) / 60.0 if leg.utc_s.size else leg.utc_s
    east = np.full(minutes.size, np.nan) if leg.east_arcsec is None else leg.east_arcsec
    return CurvePicture(
        tr("The run so far, as it is measured"),
        tr("Time (minutes)"),
        tr("Star to the east (″)"),
        (Curve(tr("readings"), minutes, east - (east[0] if east.size else 0.0)),),
        x_words=lambda x: say("{minutes:.1f} min", minutes=x),
        y_words=_arcsec,
    )


def periods(found: PeriodicError) -> CurvePicture:
    spectrum = found.spectrum
    place = np.log10(spectrum.period_s[::-1])
    low, high = float(spectrum.period_s.min()), float(spectrum.period_s.max())
    return CurvePicture(
        tr("Which periods the run holds"),
        tr("Period (seconds)"),
        tr("Amplitude (″)"),
        (Curve(tr("amplitude"), place, spectrum.amplitude_arcsec[::-1]),),
        x_words=lambda x: say("{seconds:.1f} s", seconds=10.0**x),
        y_words=_arcsec,
        x_ticks=[(math.log10(s), f"{s:.0f}") for s in PERIOD_TICKS_S if low <= s <= high],
        x_values=lambda x: 10.0**x,
        levels=(),
    )


def chances(curves: tuple[ChanceCurve, ...]) -> CurvePicture:
    from core.tracking.exposure import SURE

    names = {
        "unguided": tr("unguided"),
        "trained": tr("trained"),
        "guided": tr("guided"),
    }
    drawn = tuple(
        Curve(
            names[one.drive.value],
            np.log10(one.exposure_s),
            100.0 * one.chance,
            DRIVES[one.drive.value],
            100.0 * one.low,
            100.0 * one.high,
        )
        for one in curves
    )
    return CurvePicture(
        tr("Chance of a sharp exposure"),
        tr("Exposure"),
        tr("Sharp ones (%)"),
        drawn,
        x_words=lambda x: span_words(10.0**x),
        y_words=lambda y: f"{y:.0f} %",
        x_ticks=[(math.log10(s), span_words(s)) for s in TICKS_S],
        x_values=lambda x: 10.0**x,
        levels=((100.0 * SURE, tr("nine in ten")),),
        y_range=(0.0, 104.0),
    )


def guided_offsets(given: Given) -> tuple[CurvePicture, CurvePicture]:
    """Right ascension and declination, to one measure."""
    leg = given.leg
    minutes = (leg.utc_s - leg.utc_s[0]) / 60.0
    east = np.full(minutes.size, np.nan) if leg.east_arcsec is None else leg.east_arcsec
    reach = 1.05 * max(
        float(np.nanmax(np.abs(values), initial=0.1)) for values in (east, leg.north_arcsec)
    )
    named = (
        (tr("Right ascension under guiding"), tr("East (″)"), tr("east"), east),
        (tr("Declination under guiding"), tr("North (″)"), tr("north"), leg.north_arcsec),
    )
    first, second = (
        CurvePicture(
            title,
            tr("Time (minutes)"),
            axis,
            (Curve(name, minutes, values),),
            x_words=lambda x: say("{minutes:.1f} min", minutes=x),
            y_words=_arcsec,
            y_range=(-reach, reach),
        )
        for title, axis, name, values in named
    )
    return first, second


def stars_left(found: Pointing) -> CurvePicture:
    """Where the stars stand once all parts are taken out."""
    west, north = found.residual_arcmin[found.used].T
    order = np.argsort(west)
    reach = 1.15 * max(float(np.abs(found.residual_arcmin[found.used]).max()), 0.5)
    return CurvePicture(
        tr("What is left at each star"),
        tr("West (′)"),
        tr("North (′)"),
        (Curve(tr("star, all parts taken out"), west[order], north[order], Ink.DOTS),),
        x_words=lambda x: say("{arcmin:+.1f}′ west", arcmin=x),
        y_words=lambda y: say("{arcmin:+.1f}′ north", arcmin=y),
        levels=((0.0, ""),),
        y_range=(-reach, reach),
        is_square=True,
    )


def taps(before: Tap | None, after: Tap | None) -> CurvePicture:
    curves = []
    named = ((before, tr("before"), Ink.DOTTED), (after, tr("after a change"), Ink.FULL))
    for tap, name, ink in named:
        if tap is not None:
            rest = float(np.median(tap.offset_arcsec[-max(tap.time_s.size // 4, 1) :]))
            curves.append(Curve(name, tap.time_s, tap.offset_arcsec - rest, ink))
    return CurvePicture(
        tr("After a touch"),
        tr("Time (seconds)"),
        tr("Offset (″)"),
        tuple(curves),
        x_words=lambda x: say("{seconds:.2f} s", seconds=x),
        y_words=_arcsec,
    )
