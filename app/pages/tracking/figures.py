"""A part of the answer: what was found, or the sentence that says why nothing was."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import asdict, dataclass, fields, replace
from typing import TYPE_CHECKING, Any, Generic, TypeVar

import numpy as np
from numpy.typing import NDArray

from core.alignment.driftlog.records import Leg
from core.alignment.driftlog.table import number
from core.language import marked, say
from core.mount.equipment import Quantity
from core.sky.site import Air, Site

if TYPE_CHECKING:
    from core.alignment.axis.solution import Solution
    from core.imaging.task import Optics
    from core.imaging.tolerance import Alignment
    from core.tracking.pointing import PointedStar


T = TypeVar("T")


@dataclass(frozen=True, eq=False)
class StudyPart(Generic[T]):
    """`value` None and `problem` empty: nothing was asked. `key`: what it was made from."""

    value: T | None = None
    problem: str = ""
    key: tuple[object, ...] = ()

    def words(self, said: Callable[[T], str]) -> str:
        """What is said of the value, else the problem."""
        return self.problem if self.value is None else said(self.value)


def part_of(
    old: StudyPart[T] | None, key: tuple[object, ...], make: Callable[[], T | None]
) -> StudyPart[T]:
    """`old` again when it was made from the same; a ValueError of `make` becomes the problem."""
    if old is not None and old.key == key:
        return old
    try:
        return StudyPart(make(), "", key)
    except ValueError as reason:
        return StudyPart(None, str(reason), key)


# The figures the Tracking page asks for, kept at every change.

FIGURES_KEY = "tracking figures"
VERSION = 1

SCALE = Quantity(marked("The image scale"), marked(" ″/px"), 0.01, 1000.0)
ALLOWED = Quantity(marked("Smear allowed"), marked(" px"), 0.01, 100.0)
GUIDED_ALLOWED = Quantity(marked("Smear allowed when guided"), marked(" px"), 0.01, 100.0)
EXPOSURE = Quantity(marked("The exposure"), marked(" s"), 0.1, 21_600.0)
DECLINATION = Quantity(marked("The target's declination"), "°", -89.0, 89.0)
SEEING = Quantity(marked("The seeing"), " ″", 0.1, 60.0)
WORM = Quantity(marked("One turn of the worm"), marked(" s"), 0.5, 7200.0)
SHEET = Quantity(marked("Periodic error, peak to peak"), " ″", 0.1, 1000.0)
INTERVAL = Quantity(marked("A guide correction every"), marked(" s"), 0.05, 600.0)
DELAY = Quantity(marked("Delay of the correction"), marked(" s"), 0.0, 600.0)
SHARE = Quantity(marked("Share corrected each time"), " %", 1.0, 199.0)
NOISE = Quantity(marked("Error of one guide measurement"), " ″", 0.0, 20.0)
RATE = Quantity(marked("The guide rate"), marked(" ″/s"), 0.01, 200.0)
DITHER = Quantity(marked("Dither, after the first reading"), marked(" s"), 0.0, 86_400.0)
SETTLED = Quantity(marked("Settled within"), " ″", 0.01, 100.0)
CENTRING = Quantity(marked("A star is centred within"), " ′", 0.01, 30.0)
PAYLOAD = Quantity(marked("Payload"), marked(" kg"), 0.0, 500.0)
CAPACITY = Quantity(marked("The capacity"), marked(" kg"), 0.1, 1000.0)


@dataclass(frozen=True)
class Figures:
    """None where nothing is typed. `sheet_is_plus_minus`: the data sheet gives half the size."""

    scale_arcsec_per_px: float | None = None
    allowed_px: float | None = None
    guided_allowed_px: float | None = None
    exposure_s: float | None = None
    declination_deg: float | None = None
    seeing_arcsec: float | None = None
    worm_period_s: float | None = None
    sheet_arcsec: float | None = None
    sheet_is_plus_minus: bool = False
    guide_interval_s: float | None = None
    guide_delay_s: float | None = None
    guide_share_percent: float | None = None
    guide_noise_arcsec: float | None = None
    guide_rate_arcsec_per_s: float | None = None
    dither_s: float | None = None
    settled_arcsec: float | None = None
    centring_arcmin: float | None = None
    payload_kg: float | None = None
    capacity_kg: float | None = None

    def over(self, usual: Figures) -> Figures:
        """What is typed here, and the usual where nothing is."""
        taken = {name: value for name, value in asdict(self).items() if value is not None}
        return replace(usual, **taken)

    def of_curves(self) -> tuple[float | None, ...]:
        """Those on which the chances of exposures depend."""
        return (
            *(self.scale_arcsec_per_px, self.allowed_px, self.guided_allowed_px),
            *(self.declination_deg, self.guide_interval_s, self.guide_delay_s),
            *(self.guide_share_percent, self.guide_noise_arcsec),
        )


# Common practice, no source, for what is not known better.
USUAL = Figures(
    allowed_px=0.5,
    guided_allowed_px=1.5,  # the air alone moves a guide star as far
    exposure_s=120.0,
    declination_deg=0.0,
    guide_interval_s=3.0,
    guide_delay_s=1.0,
    guide_share_percent=60.0,
    guide_noise_arcsec=0.3,
    guide_rate_arcsec_per_s=7.5,
    settled_arcsec=1.5,
    centring_arcmin=1.0,
)


def to_keep(figures: Figures) -> dict[str, Any]:
    """As a setting."""
    return {"version": VERSION, **asdict(figures)}


def from_kept(kept: Any) -> Figures:
    """Empty where what was kept cannot be used."""
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return Figures()
    taken: dict[str, Any] = {}
    for one in fields(Figures):
        value = kept.get(one.name)
        if one.name == "sheet_is_plus_minus":
            taken[one.name] = value is True
        elif isinstance(value, int | float) and not isinstance(value, bool):
            taken[one.name] = float(value)
    return Figures(**taken)


# Two figures a line, as a person types them.


class UnusablePairs(ValueError):
    """The text is a sentence for the person."""


def pairs(text: str) -> tuple[list[float], list[float]]:
    """First and second figures; empty lines are passed over. Comma or point, a space between."""
    firsts, seconds = [], []
    for line_number, line in enumerate(text.splitlines(), start=1):
        words = line.replace(";", " ").split()
        if not words:
            continue
        if len(words) != 2:
            raise UnusablePairs(
                say("Line {line} needs two figures with a space between them.", line=line_number)
            )
        try:
            first, second = (number(word, decimal_comma=True) for word in words)
        except ValueError as reason:
            raise UnusablePairs(
                say("Line {number}: {text}", number=line_number, text=reason)
            ) from None
        firsts.append(first)
        seconds.append(second)
    return firsts, seconds


# What the Tracking page knows, as it is handed to the thread that works it out.

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class TrackingPlace:
    """`alignment`: None while the axis is not known there."""

    site: Site
    air: Air
    alignment: Alignment | None = None

    def without_axis(self) -> TrackingPlace:
        """For what was recorded when the axis stood nobody knows how."""
        return TrackingPlace(self.site, self.air)


@dataclass(frozen=True, eq=False)
class Given:
    """Readings to look at. `origin`: where they come from, in words for the person. `place`: where
    they were taken, None when nobody knows. `is_practice`: invented, and in no report. `is_kept`:
    the log of nights has it already, `kept_as` under this key. `is_tonight`: the axis stood as it
    does now, as long as nobody has turned the bolts. `account`: which lines were left out, and why.
    """

    leg: Leg
    origin: str
    place: TrackingPlace | None = None
    is_practice: bool = False
    is_kept: bool = False
    is_tonight: bool = False
    kept_as: int | None = None
    account: str = ""

    def placed(self, here: TrackingPlace) -> Given:
        """With what is known of the place, and of the axis if it is the same; else as it is."""
        mine = self.place
        if self.is_practice:
            return self
        if mine is None:
            return replace(self, place=here if self.is_tonight else here.without_axis())
        if not self.is_tonight or mine.site != here.site or here.alignment is None:
            return self
        return replace(self, place=TrackingPlace(mine.site, mine.air, here.alignment))


@dataclass(frozen=True, eq=False)
class Tap:
    """A record after a tap: seconds and offset (n,), any origin."""

    time_s: Floats
    offset_arcsec: Floats
    origin: str
    is_practice: bool = False


@dataclass(frozen=True, eq=False)
class Reversal:
    """Motion asked for since the reversal and motion seen (n,), arcsec."""

    asked_arcsec: Floats
    seen_arcsec: Floats


@dataclass(frozen=True, eq=False)
class TrackingQuestion:
    """`here`: tonight's place; `pointed_from`: where the stars were pointed at."""

    figures: Figures
    here: TrackingPlace | None = None
    optics: Optics | None = None
    solution: Solution | None = None
    run: Given | None = None
    guided: Given | None = None
    reversal: Reversal | None = None
    sightings: tuple[PointedStar, ...] = ()
    pointed_from: TrackingPlace | None = None
    before: Tap | None = None
    after: Tap | None = None
