"""What the load and image sections say, from what the computation works out."""

from __future__ import annotations

from dataclasses import dataclass

from app.ui.bars import Load
from app.ui.beam import Beam, BeamMass
from core.imaging.sampling import (
    field_of_view_deg,
    guide_scale,
    image_motion_arcsec,
    optics_of,
    sampling,
)
from core.language import say
from core.mount.balance import Lever, PolarBalance, TubeBalance
from core.mount.equipment import Camera, Guider, ImpossibleValue, Mount, Part, Telescope
from core.mount.payload import LoadVerdict
from core.units import ARCSEC_MM_PER_UM

# What the load section says, from what `core.mount` works out.


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


def _block(lever: Lever) -> BeamMass:
    return BeamMass(lever.name, lever.mass_kg, lever.arm_mm, lever.is_counterweight)


# What a telescope and a camera see together, in words.


@dataclass(frozen=True)
class ImageResult:
    """`across`: pixels across the seeing, None if not known. `missing`: what could not be told."""

    scale: str
    field: str
    sampling: str
    across: float | None
    guiding: str
    motion: str
    missing: tuple[str, ...]


def image_result(
    telescope: Telescope,
    camera: Camera,
    guiders: list[Guider],
    binning: int,
    factor: float,
    seeing_arcsec: float | None,
) -> ImageResult:
    """Raises `ImpossibleValue` with a sentence when the optics are not known."""
    optics = optics_of(telescope, camera, binning, factor)
    scale = optics.scale_arcsec_per_px
    sides = field_of_view_deg(
        optics.width_px, optics.height_px, optics.pixel_um, optics.focal_length_mm
    )
    missing = []
    told, across, motion = "", None, ""
    if seeing_arcsec is None:
        missing.append(say("The sampling: the seeing is not entered."))
    else:
        judged = sampling(scale, seeing_arcsec)
        told, across = judged.sentence, judged.px_per_seeing
        motion = _motion(telescope, seeing_arcsec, missing)
    return ImageResult(
        scale=f"{scale:.2f}″",
        field=f"{_angle(sides[0])} × {_angle(sides[1])}",
        sampling=told,
        across=across,
        guiding=_guiding(guiders, optics.focal_length_mm, scale, missing),
        motion=motion,
        missing=tuple(missing),
    )


def _angle(degrees: float) -> str:
    return f"{degrees:.2f}°" if degrees >= 1.0 else f"{60.0 * degrees:.1f}′"


def _motion(telescope: Telescope, seeing_arcsec: float, missing: list[str]) -> str:
    if telescope.aperture_mm is None:
        missing.append(
            say(
                "How much stars dance: the aperture of “{telescope}” is not entered.",
                telescope=telescope.name,
            )
        )
        return ""
    size = image_motion_arcsec(seeing_arcsec, telescope.aperture_mm)
    return say(
        "In short exposures a star dances by about {size:.2g}″ (one axis, rms); "
        "guiding cannot take that out and should not chase it: guide with "
        "exposures of seconds.",
        size=size,
    )


def _guiding(guiders: list[Guider], focal_mm: float, scale: float, missing: list[str]) -> str:
    if not guiders:
        missing.append(say("Guiding: the set has no guide camera."))
        return ""
    guider = guiders[0]
    if guider.pixel_um is None:
        missing.append(
            say("Guiding: the pixel size of “{camera}” is not entered.", camera=guider.name)
        )
        return ""
    own = guider.focal_length_mm
    try:
        judged = guide_scale(ARCSEC_MM_PER_UM * guider.pixel_um / (own or focal_mm), scale)
    except ImpossibleValue as reason:
        missing.append(str(reason))
        return ""
    if own:
        return judged.sentence
    beside = say("It has no focal length of its own and looks through the telescope.")
    return f"{judged.sentence} {beside}"
