"""The state of the procedure as JSON, and back, strict about what it takes for granted."""

from __future__ import annotations

from dataclasses import astuple
from typing import Any

import numpy as np

from app.session.guide.state import Guide, North
from app.session.guide.turn import How, TurnMade
from core.alignment.axis.estimate import AxisKnowledge
from core.alignment.guide.bolts import Base, SeenTurn, Turn
from core.alignment.guide.procedure import Stage

VERSION = 1


def as_json(guide: Guide) -> dict[str, Any]:
    """What JSON can hold of it."""
    return {
        "version": VERSION,
        "stage": guide.stage.name,
        "north": guide.north.name,
        "axis_state": guide.axis_state,
        "base": [guide.base.tilt_deg, guide.base.azimuth_deg],
        "exchanged": sorted(guide.exchanged),
        "turns_made": guide.turns_made,
        "last_turn": None if guide.last_turn is None else _turn_made(guide.last_turn),
    }


def from_json(kept: Any) -> Guide:
    """A guide at its beginning where nothing usable was kept."""
    guide = Guide()
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return guide
    try:
        guide.stage = Stage[kept["stage"]]
        guide.north = North[kept["north"]]
        guide.axis_state = int(kept["axis_state"])
        guide.base = Base(*(float(angle) for angle in kept["base"]))
        guide.exchanged = {str(label) for label in kept["exchanged"]}
        guide.turns_made = int(kept["turns_made"])
        guide.last_turn = None if kept["last_turn"] is None else _made_turn(kept["last_turn"])
    except (KeyError, TypeError, ValueError, IndexError):
        return Guide()
    return guide


def _turn_made(made: TurnMade) -> dict[str, Any]:
    turn, was = made.turn, made.was
    return {
        "utc_s": made.utc_s,
        "how": made.how.name,
        "turn": None if turn is None else [turn.azimuth_arcmin, turn.altitude_arcmin],
        "azimuth_turns": made.azimuth_turns,
        "altitude_turns": made.altitude_turns,
        "was": None
        if was is None
        else [was.sky_arcmin.tolist(), was.covariance_arcmin2.tolist(), was.freedom],
        "base": [made.base.tilt_deg, made.base.azimuth_deg],
        "mount": made.mount,
        "seen": None if made.seen is None else list(astuple(made.seen)),
    }


def _made_turn(kept: dict[str, Any]) -> TurnMade:
    return TurnMade(
        float(kept["utc_s"]),
        How[kept["how"]],
        None if kept["turn"] is None else Turn(*(float(part) for part in kept["turn"])),
        _number(kept["azimuth_turns"]),
        _number(kept["altitude_turns"]),
        None if kept["was"] is None else _knowledge(*kept["was"]),
        Base(*(float(angle) for angle in kept["base"])),
        None if kept.get("mount") is None else str(kept["mount"]),
        None if kept.get("seen") is None else SeenTurn(*(float(part) for part in kept["seen"])),
    )


def _number(kept: Any) -> float | None:
    return None if kept is None else float(kept)


def _knowledge(sky: Any, covariance: Any, freedom: Any = 1e6) -> AxisKnowledge:
    return AxisKnowledge(
        np.asarray(sky, dtype=np.float64).reshape(2),
        np.asarray(covariance, dtype=np.float64).reshape(2, 2),
        float(freedom),
    )
