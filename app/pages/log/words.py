"""What the Log page says of nights, legs and entries."""

from __future__ import annotations

from app.store.records import NightSummary
from core.language import say
from core.night.record import Entry, Kind, NightRecord, WatchedLeg
from core.night.report import drift_words, figures_of
from core.night.words import figure
from core.sky.clocks import Zone

UNKNOWN = "–"
UNTOLD = (Kind.TICK, Kind.OWN_STEPS, Kind.PICTURE, Kind.RESULT, Kind.EQUIPMENT)


def date_words(utc_s: float, zone: Zone) -> str:
    return f"{zone.civil(utc_s):%Y-%m-%d}"


def clock_words(utc_s: float, zone: Zone) -> str:
    return f"{zone.civil(utc_s):%H:%M}"


def title(started_utc_s: float, place: str, zone: Zone) -> str:
    when = date_words(started_utc_s, zone)
    return f"{when}  {place}" if place else when


def summary_words(night: NightSummary, zone: Zone) -> str:
    """Two lines: which night, and what it came to."""
    place = "" if night.site is None else night.site.name
    said = [error_words(night.figures.error_arcmin, night.figures.half_width_arcmin)]
    if night.figures.minutes is not None:
        said.append(say("{minutes:.0f} min", minutes=night.figures.minutes))
    said.append(say("1 leg") if night.legs == 1 else say("{count} legs", count=night.legs))
    if night.tracking_runs == 1:
        said.append(say("1 tracking run"))
    elif night.tracking_runs:
        said.append(say("{count} tracking runs", count=night.tracking_runs))
    if night.target:
        said.append(night.target)
    return f"{title(night.started_utc_s, place, zone)}\n{', '.join(said)}"


def error_words(error_arcmin: float | None, half_width_arcmin: float | None) -> str:
    if error_arcmin is None:
        return say("not aligned")
    if half_width_arcmin is None:
        return f"{figure(error_arcmin, 2)}′"
    return f"{figure(error_arcmin, 2)}′ ± {figure(half_width_arcmin, 2)}′"


def reached(night: NightRecord) -> list[tuple[str, str]]:
    """The figures of the night: figure, and what it is."""
    found = figures_of(night)
    minutes = UNKNOWN
    if found.minutes is not None:
        minutes = say("{minutes:.0f} min", minutes=found.minutes)
    error = UNKNOWN if found.error_arcmin is None else f"{figure(found.error_arcmin, 2)}′"
    sure = say("axis error reached")
    if found.half_width_arcmin is not None:
        width = figure(found.half_width_arcmin, 2)
        sure = say("± {width}′ (95 %), axis error reached", width=width)
    return [
        (error, sure),
        (minutes, say("from the first leg to the result")),
        (str(found.turns_of_the_bolts), say("turns of the bolts")),
    ]


def leg_row(
    watched: WatchedLeg, drift_arcsec_per_min: float | None, state: int, zone: Zone
) -> tuple[str, ...]:
    leg = watched.leg
    minutes = (leg.utc_s.max() - leg.utc_s.min()) / 60.0 if leg.utc_s.size else 0.0
    drift = drift_words(drift_arcsec_per_min)
    name = say("{leg} (left out)", leg=leg.label) if watched.is_discarded else leg.label
    when = clock_words(watched.began_utc_s, zone)
    return name, str(state), when, f"{minutes:.1f}", str(leg.utc_s.size), drift


def told(entry: Entry, zone: Zone) -> str:
    """An entry in words, empty for what is shown elsewhere."""
    if entry.kind == Kind.FLIP:
        return _flip_words(entry, zone)
    if entry.kind in UNTOLD:
        return ""
    texts = [entry.content.get(name) for name in ("text", "sentence", "target")]
    said = [text for text in texts if isinstance(text, str) and text]
    units = {"temperature_c": "°C", "humidity_percent": "%", "wind_m_per_s": say("m/s wind")}
    for name, unit in units.items():
        value = entry.content.get(name)
        if isinstance(value, int | float):
            said.append(f"{value:g} {unit}")
    return ", ".join(said)


def _flip_words(entry: Entry, zone: Zone) -> str:
    """Nothing while only the plan was looked at."""
    flips = entry.content.get("flips")
    times = [
        clock_words(one["flipped_utc_s"], zone)
        for one in (flips if isinstance(flips, list) else ())
        if isinstance(one, dict) and isinstance(one.get("flipped_utc_s"), int | float)
    ]
    if not times:
        return ""
    target = entry.content.get("target", "")
    return say("{target}: flipped at {times}", target=target, times=", ".join(times))
