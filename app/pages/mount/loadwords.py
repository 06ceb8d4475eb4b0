"""What the load section says, from what `core.mount` works out."""

from __future__ import annotations

from app.widgets.beam import Beam, Block
from app.widgets.loadbar import Load
from core.mount.balance import PolarBalance
from core.mount.equipment import Mount, Part, Telescope
from core.mount.leverage import Lever
from core.mount.payload import LoadVerdict
from core.mount.tubebalance import TubeBalance

COUNTERWEIGHT = "the counterweight"


def load_of(now: LoadVerdict, with_planned: LoadVerdict | None) -> Load:
    """The bar for both."""
    later = 0.0 if with_planned is None else with_planned.mass_kg - now.mass_kg
    sentences = now.sentence if with_planned is None else f"{now.sentence} {with_planned.sentence}"
    return Load(now.mass_kg, later, now.practice_kg, now.capacity_kg, sentences)


def figure_words(verdict: LoadVerdict) -> str:
    """``7.2 kg``, or at least that."""
    least = "≥ " if any("no mass is entered" in one for one in verdict.not_judged) else ""
    return f"{least}{verdict.mass_kg:.1f} kg"


def moment_words(verdict: LoadVerdict) -> str:
    """How far out the load sits and how long it is; empty when not known."""
    if verdict.moment_kg_m is None:
        return ""
    said = f"Moment about the polar axis: {verdict.moment_kg_m:.2f} kg m"
    if verdict.moment_capacity_kg_m is not None:
        share = 100.0 * verdict.moment_kg_m / verdict.moment_capacity_kg_m
        said += f", {share:.0f} % of the {verdict.moment_capacity_kg_m:.2f} kg m it is listed for"
    said += "."
    if verdict.stretch is not None and verdict.stretch > 1.05:
        said += (
            f" Spread out along the tube, the load is {verdict.stretch:.1f} times as hard to turn "
            "and to hold still as in one lump."
        )
    return said


def polar_beam(mount: Mount, balance: PolarBalance) -> Beam:
    """The drawing about the polar axis: the bar on the left, the load on the right."""
    rail = None
    if mount.bar_start_mm is not None and mount.bar_length_mm is not None:
        rail = (-mount.bar_start_mm - mount.bar_length_mm, -mount.bar_start_mm)
    return Beam(
        blocks=tuple(_block(lever) for lever in balance.levers if lever.name != "the bar"),
        pivot="polar axis",
        left="counterweight",
        right="telescope",
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
        pivot="declination axis",
        left="rear",
        right="sky",
        rail_mm=rail,
        slide_mm=balance.shift_mm,
        told=f"{balance.sentence} {'; '.join(lever_lines(balance.levers))}",
    )


def lever_lines(levers: tuple[Lever, ...]) -> list[str]:
    """The masses by the numbers of the drawing; the bar, which is drawn as such, without one."""
    numbered = [lever for lever in levers if lever.name != "the bar"]
    lines = [
        f"{number}  {_name(lever)}: {lever.mass_kg:.3g} kg at {abs(lever.arm_mm):.0f} mm"
        for number, lever in enumerate(numbered, start=1)
    ]
    bars = [lever for lever in levers if lever.name == "the bar"]
    return lines + [f"–  The bar: {bar.mass_kg:.3g} kg, with its middle at {-bar.arm_mm:.0f} mm"
                    for bar in bars]  # fmt: skip


def _name(lever: Lever) -> str:
    return lever.name[:1].upper() + lever.name[1:]


def _block(lever: Lever) -> Block:
    return Block(lever.name, lever.mass_kg, lever.arm_mm, lever.name == COUNTERWEIGHT)
