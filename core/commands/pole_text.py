"""The result of the pole sub-command for a person."""

from __future__ import annotations

from collections.abc import Iterator

from core.alignment.sight import View, clock_text, dial_angle_deg
from core.commands.pole_result import PoleResult
from core.sky.clock import format_utc

_TURNS = {
    "upper culmination": "upper_culmination_utc_s",
    "western elongation": "western_elongation_utc_s",
    "lower culmination": "lower_culmination_utc_s",
    "eastern elongation": "eastern_elongation_utc_s",
}


def as_text(result: PoleResult) -> str:
    """Several paragraphs without a line end behind the last."""
    paragraphs = [
        [*_pole(result)],
        [*_star(result)],
        [*_times(result)],
        [result.declination.sentence] if result.declination else [],
        [result.sun_sentence],
        [*result.notes],
    ]
    return "\n\n".join("\n".join(lines) for lines in paragraphs if lines)


def _pole(result: PoleResult) -> Iterator[str]:
    pole, air = result.pole, result.air
    way = "north" if pole.azimuth_deg == 0.0 else "south"
    yield f"At {format_utc(round(result.utc_s))}, sidereal time {_hours(result.sidereal_hours)}:"
    yield (
        f"The {way} pole is {pole.true_altitude_deg:.4f}° high; refraction shows it at "
        f"{pole.refracted_altitude_deg:.4f}°, {pole.refraction_arcsec:.1f}″ higher."
    )
    assumed = " (the standard atmosphere's)" if air.pressure_is_assumed else ""
    yield f"Air of {air.pressure_hpa:.0f} hPa{assumed} and {air.temperature_c:.0f} °C."


def _star(result: PoleResult) -> Iterator[str]:
    star = result.star
    yield (
        f"{star.star.name} stands at azimuth {star.azimuth_deg:.4f}°, altitude "
        f"{star.altitude_deg:.4f}° as seen, {star.polar_distance_arcmin:.2f}′ from the pole."
    )
    yield (
        f"Apparent place {star.right_ascension_deg:.5f}° {star.declination_deg:+.5f}°, hour angle "
        f"{star.hour_angle_deg:+.3f}° (west positive)."
    )
    faces = []
    for view in View:
        angle = dial_angle_deg(star.hour_angle_deg, result.site.latitude_deg, view)
        faces.append(f"{clock_text(float(angle))} {view.value}")
    yield f"On the clock face of a polar-axis sight: {', '.join(faces)}."


def _times(result: PoleResult) -> Iterator[str]:
    times = {name: getattr(result.turns, attribute) for name, attribute in _TURNS.items()}
    coming = sorted((time_s, name) for name, time_s in times.items() if time_s is not None)
    for time_s, name in coming:
        yield f"Next {name:18} {format_utc(round(time_s))}"
    if result.turns.widest_deg is not None:
        yield f"At its elongations it is {result.turns.widest_deg:.4f}° in azimuth off the pole."


def _hours(hours: float) -> str:
    seconds = round(hours * 3600.0) % 86400
    return f"{seconds // 3600}h {seconds // 60 % 60:02d}m {seconds % 60:02d}s"
