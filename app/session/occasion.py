"""What tonight is for, as the evening's plans have it: read in one place, whoever asks."""

from __future__ import annotations

import math

from app.session.plans import Plans
from core.mount.equipment import MountKind, Purpose
from core.night.checklist import Power

BEGIN_NAME = "target_begin_utc_s"
COOL_DOWN_NAME, GUIDED_NAME = "cool_down_min", "is_guided"
USUAL_COOL_DOWN_MIN = 60.0  # common practice, no source


def purpose(plans: Plans) -> Purpose:
    """The person's choice, else that of the set in use."""
    named = plans.word("purpose", Purpose.DEEP_SKY.name)
    return Purpose.__members__.get(named, Purpose.DEEP_SKY)


def mount_kind(plans: Plans) -> MountKind:
    """Likewise."""
    named = plans.word("mount_kind", MountKind.GERMAN_EQUATORIAL.name)
    return MountKind.__members__.get(named, MountKind.GERMAN_EQUATORIAL)


def power(plans: Plans) -> Power:
    """What the mount runs on."""
    return Power.__members__.get(plans.word("power", Power.BATTERY.name), Power.BATTERY)


def is_guided(plans: Plans) -> bool:
    """Whether a guide star is followed."""
    return plans.word(GUIDED_NAME, "yes") == "yes"


def cool_down_min(plans: Plans) -> float:
    """How long the telescope cools before it is used."""
    return plans.number(COOL_DOWN_NAME, USUAL_COOL_DOWN_MIN)


def begin_utc_s(plans: Plans) -> float | None:
    """When the target is to begin; None for as soon as can be."""
    wanted = plans.number(BEGIN_NAME, math.nan)
    return None if math.isnan(wanted) else wanted
