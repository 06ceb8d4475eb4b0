"""One paragraph: is it the mount, the alignment, the balance, the air or the guiding."""

from __future__ import annotations

import math
from dataclasses import dataclass
from enum import Enum

from core.language import marked, say
from core.tracking.exposure import Limit, SteadyDrift
from core.tracking.guiding import GuidingCheck
from core.tracking.pointing import Pointing
from core.tracking.run import UnusableRun
from core.tracking.training import Training
from core.tracking.vibration import Vibration

_WORTH = 0.5  # of the limit: a smaller smear is nobody's concern
_ROOT_12 = math.sqrt(12.0)
_LONG_SETTLING_S = 5.0  # common practice, no source


class Cause(Enum):
    """Where most of the smear comes from."""

    WORM = marked("the mount's periodic error")
    UNEVEN = marked("what the drive does once and not again (balance, cables, wind, dirt)")
    ALIGNMENT = marked("the polar alignment")
    AIR = marked("the air")
    GUIDING = marked("the guiding")
    NONE = "nothing"


@dataclass(frozen=True)
class TrackingEvidence:
    """What has been measured; None where it has not. `drift`: from `polarpart.polar_part`;
    `cos_declination` of the target; `seeing_fwhm_arcsec` entered or measured."""

    limit: Limit
    exposure_s: float
    cos_declination: float = 1.0
    training: Training | None = None
    drift: SteadyDrift | None = None
    guiding: GuidingCheck | None = None
    pointing: Pointing | None = None
    vibration: Vibration | None = None
    seeing_fwhm_arcsec: float | None = None


@dataclass(frozen=True)
class CauseShare:
    """What one cause alone smears in one exposure, arcsec."""

    cause: Cause
    smear_arcsec: float


@dataclass(frozen=True)
class TrackingVerdict:
    """`shares` largest first; `cause` is the largest above half the limit."""

    cause: Cause
    shares: tuple[CauseShare, ...]
    first_thing: str
    paragraph: str


def judge_tracking(evidence: TrackingEvidence) -> TrackingVerdict:
    """Weighs what is known. Raises UnusableRun when nothing has been measured."""
    shares = _shares(evidence)
    if not shares:
        raise UnusableRun(
            say(
                "Nothing has been measured yet: record an unguided run, or some minutes of guiding."
            )
        )
    shares.sort(key=lambda share: share.smear_arcsec, reverse=True)
    worst = shares[0]
    small = worst.smear_arcsec < _WORTH * evidence.limit.arcsec
    cause = Cause.NONE if small else worst.cause
    first = _first_thing(cause, evidence)
    return TrackingVerdict(cause, tuple(shares), first, _paragraph(cause, shares, first, evidence))


def _shares(evidence: TrackingEvidence) -> list[CauseShare]:
    """A wander that fills an exposure smears √12 of its rms; the air widens the star alike."""
    shares = []
    minutes = evidence.exposure_s / 60.0
    guided = evidence.guiding
    if guided is not None:
        one_axis = max(guided.east.rms_arcsec, guided.north.rms_arcsec)
        shares.append(CauseShare(Cause.GUIDING, _ROOT_12 * one_axis))
    elif evidence.training is not None:
        scale = _ROOT_12 * evidence.cos_declination
        shares.append(CauseShare(Cause.WORM, scale * evidence.training.repeating_rms_arcsec))
        shares.append(CauseShare(Cause.UNEVEN, scale * evidence.training.changing_rms_arcsec))
    if evidence.drift is not None:
        drift = evidence.drift
        rate = math.hypot(drift.east_arcsec_per_min, drift.north_arcsec_per_min)
        part = drift.corner_arcsec_per_min if guided is not None else rate
        shares.append(CauseShare(Cause.ALIGNMENT, part * minutes))
    if evidence.seeing_fwhm_arcsec is not None and guided is not None:
        growth = guided.growth
        if growth is not None and growth < 0.1 and not guided.findings:
            shares.append(CauseShare(Cause.AIR, _ROOT_12 * evidence.seeing_fwhm_arcsec / 2.3548))
    return shares


def _first_thing(cause: Cause, evidence: TrackingEvidence) -> str:
    if cause is Cause.GUIDING and evidence.guiding is not None and evidence.guiding.findings:
        return evidence.guiding.findings[0].text
    return {
        Cause.WORM: say("First thing to try: train the periodic error, or guide."),
        Cause.UNEVEN: (
            say(
                "First thing to try: balance anew, slightly heavy towards the east, lead the "
                "cables free and keep the wind off; then record again."
            )
        ),
        Cause.ALIGNMENT: say("First thing to try: improve the polar alignment by drift."),
        Cause.AIR: say("First thing to try: wait for steadier air, or take a higher target."),
        Cause.GUIDING: say(
            "First thing to try: a longer guide exposure, then a smaller correction."
        ),
        Cause.NONE: say("Nothing needs doing for such exposures."),
    }[cause]


def _paragraph(
    cause: Cause, shares: list[CauseShare], first: str, evidence: TrackingEvidence
) -> str:
    scale, limit = evidence.limit.scale_arcsec_per_px, evidence.limit
    length = f"{evidence.exposure_s:.0f} s"
    worst = shares[0]
    if cause is Cause.NONE:
        words = say(
            "In exposures of {length} nothing measured comes near the {allowed:g} pixels "
            "allowed; the largest part is {cause} with {pixels:.2f} pixels.",
            length=length,
            allowed=limit.part_px,
            cause=say(worst.cause.value),
            pixels=worst.smear_arcsec / scale,
        )
    else:
        words = say(
            "In exposures of {length} most of the smear comes from {cause}: {smear:.1f}″ "
            "or {pixels:.1f} pixels, where {allowed:g} are allowed.",
            length=length,
            cause=say(cause.value),
            smear=worst.smear_arcsec,
            pixels=worst.smear_arcsec / scale,
            allowed=limit.part_px,
        )
    others = [
        f"{say(share.cause.value)} {share.smear_arcsec:.1f}″"
        for share in shares[1:]
        if share.smear_arcsec > 0.2 * worst.smear_arcsec
    ]
    if others:
        words += " " + say("Beside it: {others}.", others="; ".join(others))
    return " ".join([words, first, *_asides(evidence)])


def _asides(evidence: TrackingEvidence) -> list[str]:
    asides = []
    shaking = evidence.vibration
    if shaking is not None and shaking.settling_s > _LONG_SETTLING_S:
        asides.append(
            say(
                "The mount shakes for {seconds:.0f} s after a touch: lighten the load or "
                "stiffen the legs, and wait before exposing.",
                seconds=shaking.settling_s,
            )
        )
    found = evidence.pointing
    if found is not None and found.rms_without_zeros_arcmin > 10.0:
        asides.append(
            say(
                "It points only within {size:.0f}′, which does not smear but costs time at "
                "every target.",
                size=found.rms_without_zeros_arcmin,
            )
        )
    return asides
