"""A night's report: its parts in order, and the one HTML file they make."""

from __future__ import annotations

import base64
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from html import escape

import numpy as np

from core.alignment.driftlog.records import Leg
from core.language import marked, say, spoken
from core.night.checklist import State, StepMark, newest
from core.night.record import (
    AxisState,
    Entry,
    EntryOfNight,
    Kind,
    LegPurpose,
    NightFigures,
    NightRecord,
    WatchedLeg,
    figures,
)
from core.night.reportplot import Plot, PlotSeries
from core.night.words import SayTime, aim_words, figure, rows, said, site_rows, when

# The parts a night's report is made of, no markup in them: tables, pictures, sections.


@dataclass(frozen=True)
class Table:
    """Rows of texts; without a header the first column names what the second says."""

    header: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    title: str = ""


@dataclass(frozen=True)
class ReportPicture:
    """A picture dropped into the night."""

    name: str
    caption: str
    media_type: str
    data: bytes


@dataclass(frozen=True, eq=False)
class ReportSection:
    """A heading and what stands under it, in this order."""

    title: str
    paragraphs: tuple[str, ...] = ()
    tables: tuple[Table, ...] = ()
    plots: tuple[Plot, ...] = ()
    pictures: tuple[ReportPicture, ...] = ()


# Watched legs in a night's report: what they come to as a table, and each as a picture.


def drift_arcsec_per_min(leg: Leg) -> float | None:
    """Slope of a straight line through the north offsets; None for fewer than two times."""
    if leg.utc_s.size < 2 or np.ptp(leg.utc_s) == 0.0:
        return None
    minutes = (leg.utc_s - leg.utc_s[0]) / 60.0
    return float(np.polynomial.Polynomial.fit(minutes, leg.north_arcsec, 1).convert().coef[-1])


def drift_words(arcsec_per_min: float | None) -> str:
    """To a hundredth of an arcsecond a minute, finer than any seeing allows."""
    if arcsec_per_min is None:
        return "–"
    return f"{round(arcsec_per_min, 2) + 0.0:.2f}".replace("-", "−")


def legs_table(legs: Sequence[WatchedLeg], say_time: SayTime) -> Table:
    """A line for each leg; `say_time` writes a Unix time for the reader."""
    header = (
        say("leg"),
        say("star"),
        say("begun"),
        say("minutes"),
        say("readings"),
        say("drift ″/min"),
        say("used"),
    )
    lines = []
    for one in legs:
        leg = one.leg
        minutes = float(np.ptp(leg.utc_s)) / 60.0 if leg.utc_s.size else 0.0
        lines.append(
            (
                leg.label,
                one.star_name,
                say_time(one.began_utc_s),
                f"{minutes:.1f}",
                str(leg.utc_s.size),
                drift_words(drift_arcsec_per_min(leg)),
                say("left out") if one.is_discarded else say("yes"),
            )
        )
    return Table(header, tuple(lines))


def north_plot(watched: WatchedLeg) -> Plot:
    """Declination drift, with a straight line through the readings."""
    leg = watched.leg
    minutes = (leg.utc_s - leg.utc_s[0]) / 60.0
    series = [PlotSeries(minutes, leg.north_arcsec, say("readings"))]
    if np.ptp(minutes) > 0.0:
        line = np.polynomial.Polynomial.fit(minutes, leg.north_arcsec, 1)
        ends = np.array([minutes.min(), minutes.max()])
        series.append(PlotSeries(ends, line(ends), say("straight line through them"), is_line=True))
    return Plot(
        f"leg-{watched.key}",
        say("{leg}: declination drift", leg=leg.label),
        say("minutes"),
        say("north offset (″)"),
        tuple(series),
    )


def has_east(leg: Leg) -> bool:
    """Whether anything was read to the east."""
    return leg.east_arcsec is not None and bool(np.isfinite(leg.east_arcsec).any())


def east_plot(watched: WatchedLeg) -> Plot:
    """Offsets in right ascension; only for a leg that `has_east`."""
    leg = watched.leg
    assert leg.east_arcsec is not None
    readings = PlotSeries((leg.utc_s - leg.utc_s[0]) / 60.0, leg.east_arcsec, say("readings"))
    title = say("{leg}: tracking in right ascension", leg=leg.label)
    return Plot(f"run-{watched.key}", title, say("minutes"), say("east offset (″)"), (readings,))


# What was measured of the mount beside its drive, for the report of a night.

_TITLES = {
    Kind.GUIDING: marked("Guiding"),
    Kind.POINTING: marked("Pointing"),
    Kind.VIBRATION: marked("Vibration"),
}


def measured(night: NightRecord) -> Iterator[tuple[str, Entry]]:
    """A title with each entry, guiding first."""
    for kind, title in _TITLES.items():
        for entry in night.of_kind(kind):
            yield say(title), entry


# What a night's report shows, in order: paragraphs, tables, plots and pictures, no markup.

_SENTENCES = frozenset({"sentence", "sentences"})
_LINKS = frozenset({"axis_state", "leg", "aim", "kept"})


def sections(night: NightRecord, say_time: SayTime = when) -> tuple[ReportSection, ...]:
    """All of a night that says something; `say_time` writes a Unix time for the reader."""
    made = [
        _summary(night, say_time),
        *_listed(night, say_time),
        _checklist(night, say_time),
        *_alignment(night, say_time),
        *_tracking(night, say_time),
        *(_section_of(title, entry, say_time) for title, entry in measured(night)),
        _pictures(night),
    ]
    return tuple(one for one in made if one is not None)


def figures_of(night: NightRecord) -> NightFigures:
    """What the night comes to."""
    began = [leg.began_utc_s for leg in night.legs if leg.purpose == LegPurpose.ALIGNMENT]
    entries = [EntryOfNight(one.kind, one.utc_s, one.content) for one in night.entries]
    return figures(min(began, default=None), [state.key for state in night.axis_states], entries)


def _summary(night: NightRecord, say_time: SayTime) -> ReportSection:
    found = figures_of(night)
    facts = [
        [say("begun"), say_time(night.started_utc_s)],
        [say("last entry"), say_time(night.active_utc_s)],
        *site_rows(night.site, night.air),
    ]
    if night.aim_name is not None:
        facts.append([say("aimed at"), aim_words(night.aim_name)])
    if found.error_arcmin is not None:
        reached = f"{figure(found.error_arcmin, 3)}′ ± {figure(found.half_width_arcmin, 2)}′ (95 %)"
        facts.append([say("axis error reached"), reached])
        facts += _verdict(night)
    if found.minutes is not None:
        facts.append(
            [say("time spent on the alignment"), say("{minutes:.0f} min", minutes=found.minutes)]
        )
    for name, values in (
        (say("azimuth bolt, moved over meant"), found.azimuth_bolt_scales),
        (say("altitude bolt, moved over meant"), found.altitude_bolt_scales),
        (say("periodic error, peak to peak (″)"), found.periodic_error_arcsec),
    ):
        if values:
            facts.append([name, ", ".join(figure(value, 3) for value in values)])
    return ReportSection(say("The night"), tables=(_facts(facts),))


def _verdict(night: NightRecord) -> list[list[str]]:
    """The goal of the last result and whether it was reached; nothing in older logs."""
    said_last = night.of_kind(Kind.RESULT)[-1].content
    goal, origin = said_last.get("goal_arcmin"), said_last.get("goal_is")
    verdict = said_last.get("verdict")
    if not isinstance(goal, int | float) or not isinstance(verdict, str):
        return []
    return [[say("goal"), f"{figure(goal, 3)}′, {say(said(origin))}: {say(verdict)}"]]


def _listed(night: NightRecord, say_time: SayTime) -> Iterator[ReportSection]:
    """Equipment and plan as they last stood; weather and notes in order of time."""
    for kind, title in ((Kind.EQUIPMENT, say("Equipment")), (Kind.PLAN, say("Plan"))):
        entries = night.of_kind(kind)
        if entries:
            yield _section_of(title, entries[-1], say_time)
    yield from _flips(night, say_time)
    for kind, title in ((Kind.WEATHER, say("Weather")), (Kind.NOTE, say("Notes"))):
        entries = night.of_kind(kind)
        if entries:
            told = tuple((say_time(one.utc_s), _told(one)) for one in entries)
            yield ReportSection(title, tables=(Table((say("time"), say("what")), told),))


def _flips(night: NightRecord, say_time: SayTime) -> Iterator[ReportSection]:
    """Those that were done; the plan of one says nothing yet."""
    lines = tuple(
        (
            said(entry.content.get("target")),
            *(
                say_time(one[name]) if isinstance(one.get(name), int | float) else "–"
                for name in ("flipped_utc_s", "centred_utc_s")
            ),
        )
        for entry in night.of_kind(Kind.FLIP)
        for one in entry.content.get("flips", ())
        if isinstance(one, dict)
    )
    if lines:
        header = (say("target"), say("flipped"), say("centred and focused again"))
        yield ReportSection(say("Meridian flip"), tables=(Table(header, lines),))


def _section_of(title: str, entry: Entry, say_time: SayTime) -> ReportSection:
    facts = _facts(rows(entry.content, _SENTENCES | _LINKS, say_time))
    return ReportSection(title, _sentences(entry), (facts,) if facts.rows else ())


def _told(entry: Entry) -> str:
    text = entry.content.get("text")
    rest = rows(entry.content, _SENTENCES | {"text"})
    parts = [said(text), *_sentences(entry), *(f"{what}: {how}" for what, how in rest)]
    return "; ".join(part for part in parts if part)


def _checklist(night: NightRecord, say_time: SayTime) -> ReportSection | None:
    read = [StepMark.from_object(one.content, one.utc_s) for one in night.of_kind(Kind.TICK)]
    marks = newest([mark for mark in read if mark is not None])
    lines = tuple(
        (say_time(mark.utc_s), mark.text or mark.key, say(mark.state.value), mark.reason)
        for mark in sorted(marks.values(), key=lambda one: one.utc_s)
        if mark.state is not State.OPEN
    )
    header = (say("time"), say("step"), say("state"), say("reason"))
    return ReportSection(say("Checklist"), tables=(Table(header, lines),)) if lines else None


def _alignment(night: NightRecord, say_time: SayTime) -> Iterator[ReportSection]:
    for number, state in enumerate(night.axis_states, 1):
        legs = [leg for leg in state.legs if leg.purpose == LegPurpose.ALIGNMENT]
        results = _entries_of(night, Kind.RESULT, state)
        turns = _entries_of(night, Kind.ADJUSTMENT, state)
        if not (legs or results or turns):
            continue
        kept = [
            *((say("found"), one) for one in results[-1:]),
            *((say("bolts turned"), one) for one in turns),
        ]
        tables = [legs_table(legs, say_time)] if legs else []
        tables += [_facts_of(one, title) for title, one in kept]
        told = [text for _, one in kept for text in _sentences(one)]
        yield ReportSection(
            say("Alignment {number}", number=number),
            tuple(told),
            tuple(table for table in tables if table.rows),
            tuple(north_plot(leg) for leg in legs if leg.leg.utc_s.size > 1),
        )


def _entries_of(night: NightRecord, kind: Kind, state: AxisState) -> list[Entry]:
    return [one for one in night.of_kind(kind) if one.content.get("axis_state") == state.key]


def _tracking(night: NightRecord, say_time: SayTime) -> Iterator[ReportSection]:
    legs = [leg for leg in night.legs if leg.purpose == LegPurpose.TRACKING]
    found = night.of_kind(Kind.TRACKING)
    if not (legs or found):
        return
    tables = (legs_table(legs, say_time),) if legs else ()
    facts = tuple(_facts_of(one, say("found")) for one in found)
    told = tuple(text for one in found for text in _sentences(one))
    plots = tuple(east_plot(leg) for leg in legs if has_east(leg.leg))
    yield ReportSection(
        say("Tracking"), told, (*tables, *(one for one in facts if one.rows)), plots
    )


def _pictures(night: NightRecord) -> ReportSection | None:
    entries = [one for one in night.of_kind(Kind.PICTURE) if one.attachment is not None]
    pictures = tuple(
        ReportPicture(
            said(one.content.get("name")),
            said(one.content.get("caption")),
            said(one.content.get("media_type")),
            one.attachment or b"",
        )
        for one in entries
    )
    return ReportSection(say("Pictures"), pictures=pictures) if pictures else None


def _sentences(entry: Entry) -> tuple[str, ...]:
    single, many = entry.content.get("sentence"), entry.content.get("sentences")
    texts = [single, *(many if isinstance(many, list) else ())]
    return tuple(text for text in texts if isinstance(text, str) and text.strip())


def _facts_of(entry: Entry, title: str) -> Table:
    return _facts(rows(entry.content, _SENTENCES | _LINKS), title)


def _facts(facts: list[list[str]], title: str = "") -> Table:
    return Table((), tuple((what, how) for what, how in facts), title)


# A night's report as one HTML file that needs nothing else: to read, to send, to print.
#
# Markup and styles are those a plain document widget knows as well, apart from inline SVG:
# `draw_plot` may put something else in its place.

DrawPlot = Callable[[Plot], str]

_STYLE = """
body { font-family: sans-serif; color: #1b1b1b; background-color: #ffffff; margin: 24px; }
table { border-collapse: collapse; margin-bottom: 12px; }
td, th { border: 1px solid #8a8a8a; padding: 4px 8px; text-align: left; vertical-align: top; }
h1 { font-size: 22px; } h2 { font-size: 17px; margin-top: 22px; }
img { max-width: 100%; }
@media print { h2, svg, img, tr { page-break-inside: avoid; } h2 { page-break-after: avoid; } }
@media screen and (min-width: 908px) { body { width: 860px; margin: 24px auto; } }
"""
# Only what a browser shows as a still picture, and what cannot bring a script along.
_SHOWN = ("image/png", "image/jpeg", "image/gif", "image/webp", "image/bmp")


def inline_svg(plot: Plot) -> str:
    """The plot in the page itself."""
    return f"<p>{plot.svg()}</p>"


def html(night: NightRecord, say_time: SayTime = when, draw_plot: DrawPlot = inline_svg) -> str:
    """The file's text. `say_time` writes a Unix time for the reader."""
    place = night.site.name if night.site is not None and night.site.name else ""
    began = say_time(night.started_utc_s)
    title = say("Night of {time}", time=began)
    if place:
        title = say("Night of {time}, {place}", time=began, place=place)
    body = [_section(one, draw_plot) for one in sections(night, say_time)]
    return "\n".join(
        [
            "<!DOCTYPE html>",
            f'<html lang="{spoken()}"><head><meta charset="utf-8">',
            f"<title>{escape(title)}</title>",
            f"<style>{_STYLE}</style></head><body>",
            f"<h1>{escape(title)}</h1>",
            *body,
            "</body></html>\n",
        ]
    )


def _section(section: ReportSection, draw_plot: DrawPlot) -> str:
    parts = [f"<h2>{escape(section.title)}</h2>"]
    parts += [f"<p>{escape(text)}</p>" for text in section.paragraphs]
    parts += [_table(table) for table in section.tables]
    parts += [draw_plot(plot) for plot in section.plots]
    parts += [_picture(picture) for picture in section.pictures]
    return "\n".join(parts)


def _table(table: Table) -> str:
    head = "".join(f"<th>{escape(cell)}</th>" for cell in table.header)
    lines = ["".join(f"<td>{escape(cell)}</td>" for cell in row) for row in table.rows]
    body = "".join(f"<tr>{line}</tr>\n" for line in ([head] if head else []) + lines)
    title = f"<p><b>{escape(table.title)}</b></p>\n" if table.title else ""
    return f'{title}<table border="1" cellspacing="0" cellpadding="4">\n{body}</table>'


def _picture(picture: ReportPicture) -> str:
    caption = escape(picture.caption or picture.name)
    if picture.media_type not in _SHOWN:
        words = say(
            "{caption}: {name}, {size:.0f} kB, not shown here.",
            caption=picture.caption or picture.name,
            name=picture.name,
            size=len(picture.data) / 1e3,
        )
        return f"<p>{escape(words)}</p>"
    data = base64.b64encode(picture.data).decode("ascii")
    source = f"data:{picture.media_type};base64,{data}"
    return f'<p><img src="{source}" alt="{caption}" width="640"></p>\n<p>{caption}</p>'
