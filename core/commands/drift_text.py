"""The result of the drift sub-command for a person: words first, then figures, then remarks."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

from core.alignment.axis.coarse import WORTH_ARCSEC
from core.alignment.solution import Solution
from core.alignment.trend import LegTrend
from core.alignment.weakness import hour_angle_words
from core.alignment.words import altitude_side, azimuth_side
from core.commands.drift_result import DriftResult
from core.commands.linewords import rejected_words, remark_words

_NOT_TOLD = "these legs cannot tell"


def as_text(result: DriftResult) -> str:
    """Several paragraphs without a line end behind the last."""
    paragraphs = [
        [result.advice.azimuth, result.advice.altitude],
        [*_figures(result.solution)],
        [*_table(_leg_rows(result.solution.legs))],
        [*_place(result), *_granted(result), *result.notes],
        [*remark_words(result.log.remarks)],
        [*rejected_words(result.log.rejected)],
    ]
    return "\n\n".join("\n".join(lines) for lines in paragraphs if lines)


def _figures(solution: Solution) -> Iterator[str]:
    azimuth, altitude = solution.azimuth_error_arcmin, solution.altitude_error_arcmin
    refracted = solution.altitude_error_refracted_arcmin
    east_west = azimuth_side(azimuth, math.radians(solution.latitude_deg)).where
    sky = solution.sky_error_arcmin
    yield from _table(
        [
            ("", "error", "1 sigma", ""),
            ("azimuth", *_pair(azimuth, solution.azimuth_sigma_arcmin, east_west)),
            (
                "altitude, from the true pole",
                *_pair(altitude, solution.altitude_sigma_arcmin, altitude_side(altitude).where),
            ),
            (
                "altitude, from the refracted pole",
                *_pair(refracted, solution.altitude_sigma_arcmin, altitude_side(refracted).where),
            ),
            ("on the sky, from the true pole", *_pair(sky, solution.sky_sigma_arcmin, "")),
        ]
    )
    if math.isfinite(solution.correlation):
        yield f"Correlation of azimuth and altitude error: {solution.correlation:.2f}"
    yield "The sentences above give 95 % half-widths behind ±, the table one standard deviation."


def _pair(error_arcmin: float, sigma_arcmin: float, where: str) -> tuple[str, str, str]:
    if not math.isfinite(error_arcmin):
        return "", "", _NOT_TOLD
    return f"{abs(error_arcmin):.2f}′", f"{sigma_arcmin:.2f}′", where


def _leg_rows(legs: Sequence[LegTrend]) -> list[tuple[str, ...]]:
    heads = ("leg", "readings", "minutes", "drift ″/min", "1 sigma", "hour angle", "altitude")
    return [heads, *(_leg_row(leg) for leg in legs)]


def _leg_row(leg: LegTrend) -> tuple[str, ...]:
    way = "north" if leg.drift_arcsec_per_min >= 0.0 else "south"
    return (
        leg.label,
        str(leg.sample_count),
        f"{leg.minutes:.1f}",
        f"{abs(leg.drift_arcsec_per_min):.3f} {way}",
        f"{leg.drift_sigma_arcsec_per_min:.3f}",
        hour_angle_words(leg.hour_angle_deg),
        f"{leg.altitude_deg:.1f}°",
    )


def _table(rows: Sequence[tuple[str, ...]]) -> Iterator[str]:
    """Rows with the first column flush left and the last free, the others flush right."""
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for first, *rest in rows:
        cells = [first.ljust(widths[0])]
        cells += [cell.rjust(width) for cell, width in zip(rest[:-1], widths[1:-1], strict=True)]
        yield "  ".join([*cells, rest[-1]]).rstrip()


def _place(result: DriftResult) -> Iterator[str]:
    site, air = result.site, result.air
    north_south = "north" if site.latitude_deg >= 0.0 else "south"
    longitude_deg = (site.longitude_deg + 180.0) % 360.0 - 180.0
    east_west = "east" if longitude_deg >= 0.0 else "west"
    yield (
        f"Computed for {abs(site.latitude_deg):.4f}° {north_south}, {abs(longitude_deg):.4f}° "
        f"{east_west}, {site.elevation_m:.0f} m; air of {air.pressure_hpa:.0f} hPa and "
        f"{air.temperature_c:.0f} °C."
    )
    if air.pressure_is_assumed:
        yield "The pressure is not known; that of the standard atmosphere was assumed."


def _granted(result: DriftResult) -> Iterator[str]:
    """What the ± contains beside the scatter of the readings."""
    coarse = [leg for leg in result.solution.legs if leg.reading_step_arcsec >= WORTH_ARCSEC]
    for leg in coarse:
        yield f"Leg “{leg.label}” was read to divisions of {leg.reading_step_arcsec:.3g}″."
    priors = result.priors
    granted = (
        (priors.angle_sigma_deg, f"north of the reticle good to {priors.angle_sigma_deg:g}°"),
        (
            priors.angle_sigma_deg * priors.periodic_error_arcsec,
            f"a periodic error of {priors.periodic_error_arcsec:g}″ where no east offsets show it",
        ),
        (
            priors.slow_wander_arcsec,
            f"a wander of {priors.slow_wander_arcsec:g}″ that changes in "
            f"{priors.slow_wander_s:g} s",
        ),
        (
            priors.flexure_arcsec_per_g,
            f"a tube that yields {priors.flexure_arcsec_per_g:g}″ per g",
        ),
    )
    words = [said for size, said in granted if size > 0.0]
    if words:
        yield f"The ± contains what was granted beforehand: {'; '.join(words)}."
