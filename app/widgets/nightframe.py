"""The line of time of a night, with nothing on it yet."""

from __future__ import annotations

from app.widgets.nightpicture import Graph, Lane, NightPicture, Shade, Span
from core.night.darkness import Night
from core.sky.almanac import Light
from core.sky.clocks import Zone

BESIDE_S = 3600.0  # shown before sunset and after sunrise
_DARKNESS = {
    Light.DAY: 0.0,
    Light.CIVIL: 0.3,
    Light.NAUTICAL: 0.55,
    Light.ASTRONOMICAL: 0.8,
    Light.NIGHT: 1.0,
}


def night_frame(
    night: Night, zone: Zone, now_utc_s: float, rows: tuple[Graph | Lane, ...]
) -> NightPicture:
    begin, end = shown_span(night)
    return NightPicture(begin, end, zone, rows, shades(night), now_utc_s)


def shown_span(night: Night) -> Span:
    """Somewhat more than from sunset to sunrise; noon to noon where the Sun keeps up or down."""
    sunset, sunrise = night.sunset_utc_s, night.sunrise_utc_s
    if sunset is None or sunrise is None or sunrise <= sunset:
        return night.begin_utc_s, night.end_utc_s
    return max(sunset - BESIDE_S, night.begin_utc_s), min(sunrise + BESIDE_S, night.end_utc_s)


def shades(night: Night) -> tuple[Shade, ...]:
    times = [night.begin_utc_s, *(change.utc_s for change in night.light.changes), night.end_utc_s]
    lights = [night.light.at_start, *(change.light for change in night.light.changes)]
    return tuple(
        Shade(begin, end, _DARKNESS[light])
        for begin, end, light in zip(times[:-1], times[1:], lights, strict=True)
    )
