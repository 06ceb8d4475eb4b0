"""What the load section says, from what `core.mount` works out."""

from __future__ import annotations

from app.widgets.beam import Beam, Block
from app.widgets.loadbar import Load
from core.language import say
from core.mount.balance import Lever, PolarBalance, TubeBalance
from core.mount.equipment import Mount, Part, Telescope
from core.mount.payload import LoadVerdict


def load_of(now: LoadVerdict, with_planned: LoadVerdict | None) -> Load:
    """The bar for both."""
    later = 0.0 if with_planned is None else with_planned.mass_kg - now.mass_kg
    sentences = now.sentence if with_planned is None else f"{now.sentence} {with_planned.sentence}"
    return Load(now.mass_kg, later, now.practice_kg, now.capacity_kg, sentences)


def figure_words(verdict: LoadVerdict) -> str:
    """``7.2 kg``, or at least that."""
    least = "≥ " if verdict.unweighed else ""
    return say("{least}{mass:.1f} kg", least=least, mass=verdict.mass_kg)


def moment_words(verdict: LoadVerdict) -> str:
    """How far out the load sits and how long it is; empty when not known."""
    if verdict.moment_kg_m is None:
        return ""
    if verdict.moment_capacity_kg_m is None:
        said = say("Moment about the polar axis: {moment:.2f} kg m.", moment=verdict.moment_kg_m)
    else:
        said = say(
            "Moment about the polar axis: {moment:.2f} kg m, {share:.0f} % of the {capacity:.2f} "
            "kg m it is listed for.",
            moment=verdict.moment_kg_m,
            share=100.0 * verdict.moment_kg_m / verdict.moment_capacity_kg_m,
            capacity=verdict.moment_capacity_kg_m,
        )
    if verdict.stretch is None or verdict.stretch <= 1.05:
        return said
    spread = say(
        "Spread out along the tube, the load is {times:.1f} times as hard to turn and to hold "
        "still as in one lump.",
        times=verdict.stretch,
    )
    return f"{said} {spread}"


def polar_beam(mount: Mount, balance: PolarBalance) -> Beam:
    """The drawing about the polar axis: the bar on the left, the load on the right."""
    rail = None
    if mount.bar_start_mm is not None and mount.bar_length_mm is not None:
        rail = (-mount.bar_start_mm - mount.bar_length_mm, -mount.bar_start_mm)
    return Beam(
        blocks=tuple(_block(lever) for lever in balance.levers if not lever.is_bar),
        pivot=say("polar axis"),
        left=say("counterweight"),
        right=say("telescope"),
        rail_mm=rail,
        told=f"{balance.sentence} {'; '.join(lever_lines(balance.levers))}",
    )


def tube_beam(parts: tuple[Part, ...], balance: TubeBalance) -> Beam:
    """The drawing along the tube: the sky on the right."""
    lengths = [one.length_mm for one in parts if isinstance(one, Telescope) and one.length_mm]
    middles = [one.along_mm for one in parts if isinstance(one, Telescope) and one.length_mm]
    rail = None
    if lengths and middles[0] is not None:
        rail = (middles[0] - lengths[0] / 2.0, middles[0] + lengths[0] / 2.0)
    return Beam(
        blocks=tuple(_block(lever) for lever in balance.levers),
        pivot=say("declination axis"),
        left=say("rear"),
        right=say("sky"),
        rail_mm=rail,
        slide_mm=balance.shift_mm,
        told=f"{balance.sentence} {'; '.join(lever_lines(balance.levers))}",
    )


def lever_lines(levers: tuple[Lever, ...]) -> list[str]:
    """The masses by the numbers of the drawing; the bar, which is drawn as such, without one."""
    numbered = [lever for lever in levers if not lever.is_bar]
    lines = [
        say(
            "{number}  {name}: {mass:.3g} kg at {arm:.0f} mm",
            number=number,
            name=_name(lever),
            mass=lever.mass_kg,
            arm=abs(lever.arm_mm),
        )
        for number, lever in enumerate(numbered, start=1)
    ]
    bars = [
        say(
            "–  The bar: {mass:.3g} kg, with its middle at {arm:.0f} mm",
            mass=bar.mass_kg,
            arm=-bar.arm_mm,
        )
        for bar in levers
        if bar.is_bar
    ]
    return lines + bars


def _name(lever: Lever) -> str:
    return lever.name[:1].upper() + lever.name[1:]


def _block(lever: Lever) -> Block:
    return Block(lever.name, lever.mass_kg, lever.arm_mm, lever.is_counterweight)
