"""What belongs to a night besides what was done in it: the equipment in use and the plan."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any

from app.night.plan import BEGIN_NAME
from core.night.record import Kind

if TYPE_CHECKING:
    from app.night.equipment import Equipment
    from app.night.plan import Plans


Surroundings = Callable[[], Mapping[Kind, Mapping[str, Any]]]


def surroundings_of(equipment: Equipment, plans: Plans) -> Surroundings:
    """As they are whenever it is called; kinds of which nothing is known are left out."""

    def found() -> Mapping[Kind, Mapping[str, Any]]:
        said = {Kind.EQUIPMENT: _equipment(equipment), Kind.PLAN: _plan(plans)}
        return {kind: content for kind, content in said.items() if content}

    return found


def _equipment(equipment: Equipment) -> dict[str, Any]:
    chosen = equipment.set_in_use()
    if chosen is None:
        return {}
    inventory = equipment.inventory
    mount = inventory.mount_of(chosen)
    things = [
        *([] if mount is None else [mount]),
        *inventory.parts_of(chosen, with_planned=False),
        *inventory.counterweights_of(chosen, with_planned=False),
    ]
    listed = [{"what": type(one).__name__.lower(), "name": one.name} for one in things]
    return {"name": chosen.name, "equipment": listed}


def _plan(plans: Plans) -> dict[str, Any]:
    target = plans.target()
    if target is None:
        return {}
    begin_utc_s = plans.number(BEGIN_NAME, math.nan)
    begin = {} if math.isnan(begin_utc_s) else {"begin_utc_s": begin_utc_s}
    return {"target": target.name, **begin}
