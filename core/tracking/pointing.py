"""How well the mount finds things, and the systematic parts a person can take out."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import stdtrit

from core.alignment.geometry import ARCMIN_PER_RAD
from core.alignment.usable import Note
from core.language import say
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.tracking.pointingmodel import TERMS, Sky, on_sky, readings, sensitivity
from core.tracking.pointingwords import Term, term, undetermined_sentence
from core.tracking.sighting import Sighting

Floats = NDArray[np.float64]
Flags = NDArray[np.bool_]

FEWEST_STARS = 3
COMFORTABLE_STARS = 8
LOWEST_DEG = 10.0
# What is taken for granted of the terms before the first star, one standard deviation, arcmin: the
# zeros and the axis almost nothing; the others what mounts have by common practice, no source.
PRIOR_ARCMIN = np.array([6000.0, 6000.0, 300.0, 300.0, 20.0, 10.0, 3.0])
_CENTRING_ARCMIN = 1.0
_CENTRING_WEIGHT = 2.0  # the stated centring counts as this many degrees of freedom
_ROUNDS = 6
_TOLD = 1.0  # a term is told when half its 95 % interval is below this part of the prior
_WRONG_STAR = 8.0


class UnusablePointing(ValueError):
    """Nothing can be said from these stars; the text is a sentence for the person."""


@dataclass(frozen=True, eq=False)
class Pointing:
    """Root mean squares on the sky, arcmin: as read, without the circles' zeros, and with all
    parts removed. `terms` are the parts; `used` (n,) flags the stars; `residual_arcmin` (n, 2):
    hour angle times cos declination (west) and declination (north). `covariance_arcmin2` (7, 7).
    """

    rms_arcmin: float
    rms_without_zeros_arcmin: float
    rms_left_arcmin: float
    terms: tuple[Term, ...]
    covariance_arcmin2: Floats
    residual_arcmin: Floats
    used: Flags
    latitude_deg: float
    notes: tuple[Note, ...]
    sentence: str


def pointing(
    sightings: Sequence[Sighting],
    site: Site,
    air: Air,
    centring_arcmin: float = _CENTRING_ARCMIN,
) -> Pointing:
    """Fit of all parts. `centring_arcmin`: how well a star is put in the middle, 1 sigma.

    `air`: without pressure when the mount itself allows for refraction. Raises UnusablePointing.
    """
    _check(sightings)
    stars = list(sightings)
    sky, read = _sky(stars, site, air), _read(stars)
    low = _low(sky)
    used = ~low
    if int(used.sum()) < FEWEST_STARS:
        raise UnusablePointing(
            say(
                "Only {count} stars stand higher than {lowest:.0f}°; at least {fewest} are "
                "needed, better {comfortable}, all over the sky.",
                count=int(used.sum()),
                lowest=LOWEST_DEG,
                fewest=FEWEST_STARS,
                comfortable=COMFORTABLE_STARS,
            )
        )
    fit = _fit(sky, read, used, centring_arcmin)
    wrong = used & _wrong_stars(fit, used)
    if wrong.any() and int((used & ~wrong).sum()) >= FEWEST_STARS + 1:
        used = used & ~wrong
        fit = _fit(sky, read, used, centring_arcmin)
    return _record(fit, sky, read, used, stars, site)


def _check(sightings: Sequence[Sighting]) -> None:
    if len(sightings) < FEWEST_STARS:
        raise UnusablePointing(
            say(
                "{count} stars are too few: {fewest} give zeros and the polar axis at best, "
                "{comfortable} or more on both sides of the pier all parts.",
                count=len(sightings),
                fewest=FEWEST_STARS,
                comfortable=COMFORTABLE_STARS,
            )
        )
    for one in sightings:
        numbers = (
            *(one.star_hour_angle_deg, one.star_declination_deg),
            *(one.mount_hour_angle_deg, one.mount_declination_deg),
        )
        if not np.isfinite(numbers).all() or max(abs(numbers[1]), abs(numbers[3])) > 90.0:
            raise UnusablePointing(
                say(
                    "Star “{star}” has a coordinate that is not a number, or a declination "
                    "beyond 90°; correct or remove it.",
                    star=one.label,
                )
            )


def _sky(stars: list[Sighting], site: Site, air: Air) -> Sky:
    return Sky(
        np.deg2rad([star.star_hour_angle_deg for star in stars]),
        np.deg2rad([star.star_declination_deg for star in stars]),
        np.array([float(star.side) for star in stars]),
        float(np.deg2rad(site.latitude_deg)),
        Refraction.of(air),
    )


def _read(stars: list[Sighting]) -> Floats:
    return np.deg2rad([(star.mount_hour_angle_deg, star.mount_declination_deg) for star in stars])


def _low(sky: Sky) -> Flags:
    return np.asarray(sky.seen()[:, 2] < np.sin(np.deg2rad(LOWEST_DEG)))


@dataclass(frozen=True, eq=False)
class _Fit:
    """Terms and their covariance (arcmin), residuals of all stars (n, 2), degrees of freedom."""

    terms: Floats
    covariance: Floats
    residual: Floats
    freedom: float


def _apart(sky: Sky, read: Floats, terms_rad: Floats) -> Floats:
    """Read less modelled (n, 2) on the sky, arcmin."""
    apart = read - readings(sky, terms_rad)
    wrapped = (apart + np.pi) % (2.0 * np.pi) - np.pi
    return on_sky(sky, wrapped) * ARCMIN_PER_RAD


def _fit(sky: Sky, read: Floats, used: Flags, centring_arcmin: float) -> _Fit:
    """Gauss–Newton with the prior; the scatter of the stars decides how far they are trusted."""
    prior = np.diag(PRIOR_ARCMIN**-2.0)
    terms = np.zeros(TERMS)
    variance, freedom = centring_arcmin**2, 1.0
    covariance = np.diag(PRIOR_ARCMIN**2)
    for _ in range(_ROUNDS):
        left = _apart(sky, read, terms / ARCMIN_PER_RAD)[used].ravel()
        slopes = on_sky(sky, sensitivity(sky, terms / ARCMIN_PER_RAD))[used].reshape(-1, TERMS)
        normal = slopes.T @ slopes / variance + prior
        covariance = np.linalg.inv(normal)
        terms = terms + covariance @ (slopes.T @ left / variance - prior @ terms)
        left = _apart(sky, read, terms / ARCMIN_PER_RAD)[used].ravel()
        taken = float(np.trace(covariance @ slopes.T @ slopes)) / variance
        freedom = left.size - taken + _CENTRING_WEIGHT
        variance = (float(left @ left) + _CENTRING_WEIGHT * centring_arcmin**2) / freedom
    return _Fit(terms, covariance, _apart(sky, read, terms / ARCMIN_PER_RAD), freedom)


def _wrong_stars(fit: _Fit, used: Flags) -> Flags:
    """Stars far off the fit of the others: probably other stars than thought."""
    distance = np.hypot(*fit.residual.T)
    scale = max(float(np.median(distance[used])), 0.3)
    return np.asarray(distance > _WRONG_STAR * scale)


def _record(
    fit: _Fit, sky: Sky, read: Floats, used: Flags, stars: list[Sighting], site: Site
) -> Pointing:
    factor = float(stdtrit(max(fit.freedom, 1.0), 0.975))
    sigma = np.sqrt(np.diag(fit.covariance))
    told = factor * sigma < _TOLD * PRIOR_ARCMIN
    terms = tuple(
        term(
            number, float(fit.terms[number]), float(sigma[number]), factor, bool(told[number]), site
        )
        for number in range(TERMS)
    )
    zeros = fit.terms.copy()
    zeros[2:] = 0.0
    rms = _rms(_apart(sky, read, np.zeros(TERMS))[used])
    without = _apart(sky, read, np.zeros(TERMS))[used]
    without = without - on_sky(sky, _zero_effect(sky, fit.terms))[used]
    left = _rms(fit.residual[used])
    return Pointing(
        rms,
        _rms(without),
        left,
        terms,
        fit.covariance,
        fit.residual,
        used,
        site.latitude_deg,
        _notes(sky, used, stars, told),
        _sentence(_rms(without), left, int(used.sum())),
    )


def _zero_effect(sky: Sky, terms_arcmin: Floats) -> Floats:
    """What the zeros of the circles do to the readings (n, 2), arcmin."""
    hour = np.full(sky.side.size, terms_arcmin[0])
    return np.stack([hour, terms_arcmin[1] * sky.side], axis=-1)


def _rms(apart: Floats) -> float:
    """Root mean square distance on the sky of (n, 2)."""
    return float(np.sqrt((apart**2).sum(axis=1).mean()))


def _notes(sky: Sky, used: Flags, stars: list[Sighting], told: Flags) -> tuple[Note, ...]:
    notes = []
    for index in np.flatnonzero(~used).tolist():
        name = stars[index].label or say("number {number}", number=index + 1)
        words = say("Star {name} is far off the others: another star?; it was left out.", name=name)
        if _low(sky)[index]:
            words = say("Star {name} stands too low; it was left out.", name=name)
        notes.append(Note("star left out", words))
    number = int(used.sum())
    if number < COMFORTABLE_STARS:
        notes.append(
            Note(
                "few stars",
                say(
                    "{number} stars tell little about the smaller parts; take {comfortable} or "
                    "more, high and low, east and west, near the pole and the equator.",
                    number=number,
                    comfortable=COMFORTABLE_STARS,
                ),
            )
        )
    missing = undetermined_sentence(told, both_sides=bool(np.ptp(sky.side[used]) > 0.0))
    if missing is not None:
        notes.append(Note("parts not told", missing))
    return tuple(notes)


def _sentence(rms: float, left: float, stars: int) -> str:
    return say(
        "Over {stars} stars the mount points within {rms:.1f}′ rms once its circles are "
        "set; with the parts below taken out {left:.1f}′ would be left on these stars.",
        stars=stars,
        rms=rms,
        left=left,
    )
