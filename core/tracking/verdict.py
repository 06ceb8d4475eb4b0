"""One paragraph: is it the mount, the alignment, the balance, the air or the guiding."""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.finding import Code, Finding
from core.tracking.exposure import Limit, SteadyDrift
from core.tracking.guiding import GuidingCheck
from core.tracking.pointing import Pointing
from core.tracking.run import UnusableRun
from core.tracking.training import Training
from core.tracking.vibration import Vibration


class VerdictTold(Code):
    """What is told of it."""

    PARAGRAPH = "paragraph"


class Remedy(Code):
    """What to do first."""

    NOTHING_MEASURED = "nothing measured"
    TRAIN = "train"
    BALANCE = "balance"
    ALIGN = "align"
    WAIT = "wait"
    GUIDE_SLOWER = "guide slower"
    NOTHING = "nothing"


_WORTH = 0.5  # of the limit: a smaller smear is nobody's concern
_ROOT_12 = math.sqrt(12.0)
LONG_SETTLING_S = 5.0  # common practice, no source


class Cause(Code):
    """Where most of the smear comes from."""

    WORM = "the mount's periodic error"
    UNEVEN = "what the drive does once and not again (balance, cables, wind, dirt)"
    ALIGNMENT = "the polar alignment"
    AIR = "the air"
    GUIDING = "the guiding"
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
    first_thing: Finding
    paragraph: Finding


def judge_tracking(evidence: TrackingEvidence) -> TrackingVerdict:
    """Weighs what is known. Raises UnusableRun when nothing has been measured."""
    shares = _shares(evidence)
    if not shares:
        raise UnusableRun(Remedy.NOTHING_MEASURED)
    shares.sort(key=lambda share: share.smear_arcsec, reverse=True)
    worst = shares[0]
    small = worst.smear_arcsec < _WORTH * evidence.limit.arcsec
    cause = Cause.NONE if small else worst.cause
    first = _first_thing(cause, evidence)
    return TrackingVerdict(
        cause,
        tuple(shares),
        first,
        Finding.of(
            VerdictTold.PARAGRAPH, cause=cause, shares=shares, first=first, evidence=evidence
        ),
    )


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


def _first_thing(cause: Cause, evidence: TrackingEvidence) -> Finding:
    if cause is Cause.GUIDING and evidence.guiding is not None and evidence.guiding.findings:
        return evidence.guiding.findings[0]
    return {
        Cause.WORM: Finding.of(Remedy.TRAIN),
        Cause.UNEVEN: (Finding.of(Remedy.BALANCE)),
        Cause.ALIGNMENT: Finding.of(Remedy.ALIGN),
        Cause.AIR: Finding.of(Remedy.WAIT),
        Cause.GUIDING: Finding.of(Remedy.GUIDE_SLOWER),
        Cause.NONE: Finding.of(Remedy.NOTHING),
    }[cause]
