"""What knocks a mount out, why, and what would keep it in."""

from __future__ import annotations

from dataclasses import dataclass

from core.language import say
from core.mount.equipment import Mount
from core.mount.wishes import Must, Wishes


@dataclass(frozen=True)
class Finding:
    """`passes` is None when the data sheet does not tell. Then `remedy` says what to find out."""

    must: Must
    passes: bool | None
    reason: str
    remedy: str


def findings(mount: Mount, wishes: Wishes) -> tuple[Finding, ...]:
    """One for each must."""
    return tuple(_CHECKS[must](mount, wishes) for must in wishes.musts)


def _carries(mount: Mount, wishes: Wishes) -> Finding:
    capacity, load = mount.capacity_kg, wishes.load_kg
    if capacity is None:
        return Finding(
            Must.CARRIES,
            None,
            say("the listed capacity is not known"),
            say("find out the listed capacity"),
        )
    if load is None:
        return Finding(
            Must.CARRIES,
            None,
            say("the load it is to carry is not known"),
            say("find out the load it is to carry"),
        )
    return Finding(
        Must.CARRIES,
        load <= capacity,
        say(
            "{load:g} kg is more than the {capacity:g} kg it is listed to carry",
            load=load,
            capacity=capacity,
        ),
        say(
            "it were listed for {load:g} kg, or the load were {capacity:g} kg or less",
            load=load,
            capacity=capacity,
        ),
    )


def _driven(mount: Mount, _: Wishes) -> Finding:
    either = (mount.is_driven, mount.has_goto)
    if True not in either and None in either:
        reason = say("whether it is driven is not known")
        return Finding(Must.DRIVEN_OR_GOTO, None, reason, say("find out whether it is driven"))
    return Finding(
        Must.DRIVEN_OR_GOTO,
        True in either,
        say("it has neither drive nor goto"),
        say("it were driven"),
    )


def _autoguider(mount: Mount, _: Wishes) -> Finding:
    passes = mount.has_autoguider_port
    if passes is None:
        reason = say("whether it has an autoguider port is not known")
        return Finding(Must.AUTOGUIDER_PORT, None, reason, say("find out whether it has one"))
    return Finding(
        Must.AUTOGUIDER_PORT,
        passes,
        say("it has no autoguider port"),
        say("it had an autoguider port"),
    )


def _equatorial(mount: Mount, wishes: Wishes) -> Finding:
    return Finding(
        Must.EQUATORIAL,
        mount.kind.is_equatorial,
        say("it is {kind}, and the field turns during exposures", kind=say(mount.kind.value)),
        say(
            "it stood on a wedge, or {purpose} did not have to be equatorial",
            purpose=say(wishes.purpose.value),
        ),
    )


def _price(mount: Mount, wishes: Wishes) -> Finding:
    limit = wishes.price_limit or 0.0
    if mount.price is None:
        return Finding(Must.PRICE, None, say("its price is not entered"), say("enter its price"))
    return Finding(
        Must.PRICE,
        mount.price <= limit,
        say("its price of {price:g} is above {limit:g}", price=mount.price, limit=limit),
        say("it cost {limit:g} or less", limit=limit),
    )


_CHECKS = {
    Must.CARRIES: _carries,
    Must.DRIVEN_OR_GOTO: _driven,
    Must.AUTOGUIDER_PORT: _autoguider,
    Must.EQUATORIAL: _equatorial,
    Must.PRICE: _price,
}
