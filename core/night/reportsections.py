"""What a night's report shows, in order: paragraphs, tables, plots and pictures, no markup."""

from __future__ import annotations

from collections.abc import Iterator

from core.language import say
from core.night.checklistmarks import Mark, State, newest
from core.night.reportlegs import east_plot, has_east, legs_table, north_plot
from core.night.reportmeasured import measured
from core.night.reportnight import AxisState, Entry, Kind, NightRecord, Purpose
from core.night.reportparts import Picture, Section, Table
from core.night.reportresult import EntryOfNight, NightFigures, figures
from core.night.reportwords import SayTime, aim_words, figure, rows, said, site_rows, when

_SENTENCES = frozenset({"sentence", "sentences"})
_LINKS = frozenset({"axis_state", "leg", "aim", "kept"})


def sections(night: NightRecord, say_time: SayTime = when) -> tuple[Section, ...]:
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
    began = [leg.began_utc_s for leg in night.legs if leg.purpose == Purpose.ALIGNMENT]
    entries = [EntryOfNight(one.kind, one.utc_s, one.content) for one in night.entries]
    return figures(min(began, default=None), [state.key for state in night.axis_states], entries)


def _summary(night: NightRecord, say_time: SayTime) -> Section:
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
    return Section(say("The night"), tables=(_facts(facts),))


def _verdict(night: NightRecord) -> list[list[str]]:
    """The goal of the last result and whether it was reached; nothing in older logs."""
    said_last = night.of_kind(Kind.RESULT)[-1].content
    goal, origin = said_last.get("goal_arcmin"), said_last.get("goal_is")
    verdict = said_last.get("verdict")
    if not isinstance(goal, int | float) or not isinstance(verdict, str):
        return []
    return [[say("goal"), f"{figure(goal, 3)}′, {say(said(origin))}: {say(verdict)}"]]


def _listed(night: NightRecord, say_time: SayTime) -> Iterator[Section]:
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
            yield Section(title, tables=(Table((say("time"), say("what")), told),))


def _flips(night: NightRecord, say_time: SayTime) -> Iterator[Section]:
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
        yield Section(say("Meridian flip"), tables=(Table(header, lines),))


def _section_of(title: str, entry: Entry, say_time: SayTime) -> Section:
    facts = _facts(rows(entry.content, _SENTENCES | _LINKS, say_time))
    return Section(title, _sentences(entry), (facts,) if facts.rows else ())


def _told(entry: Entry) -> str:
    text = entry.content.get("text")
    rest = rows(entry.content, _SENTENCES | {"text"})
    parts = [said(text), *_sentences(entry), *(f"{what}: {how}" for what, how in rest)]
    return "; ".join(part for part in parts if part)


def _checklist(night: NightRecord, say_time: SayTime) -> Section | None:
    read = [Mark.from_object(one.content, one.utc_s) for one in night.of_kind(Kind.TICK)]
    marks = newest([mark for mark in read if mark is not None])
    lines = tuple(
        (say_time(mark.utc_s), mark.text or mark.key, say(mark.state.value), mark.reason)
        for mark in sorted(marks.values(), key=lambda one: one.utc_s)
        if mark.state is not State.OPEN
    )
    header = (say("time"), say("step"), say("state"), say("reason"))
    return Section(say("Checklist"), tables=(Table(header, lines),)) if lines else None


def _alignment(night: NightRecord, say_time: SayTime) -> Iterator[Section]:
    for number, state in enumerate(night.axis_states, 1):
        legs = [leg for leg in state.legs if leg.purpose == Purpose.ALIGNMENT]
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
        yield Section(
            say("Alignment {number}", number=number),
            tuple(told),
            tuple(table for table in tables if table.rows),
            tuple(north_plot(leg) for leg in legs if leg.leg.utc_s.size > 1),
        )


def _entries_of(night: NightRecord, kind: Kind, state: AxisState) -> list[Entry]:
    return [one for one in night.of_kind(kind) if one.content.get("axis_state") == state.key]


def _tracking(night: NightRecord, say_time: SayTime) -> Iterator[Section]:
    legs = [leg for leg in night.legs if leg.purpose == Purpose.TRACKING]
    found = night.of_kind(Kind.TRACKING)
    if not (legs or found):
        return
    tables = (legs_table(legs, say_time),) if legs else ()
    facts = tuple(_facts_of(one, say("found")) for one in found)
    told = tuple(text for one in found for text in _sentences(one))
    plots = tuple(east_plot(leg) for leg in legs if has_east(leg.leg))
    yield Section(say("Tracking"), told, (*tables, *(one for one in facts if one.rows)), plots)


def _pictures(night: NightRecord) -> Section | None:
    entries = [one for one in night.of_kind(Kind.PICTURE) if one.attachment is not None]
    pictures = tuple(
        Picture(
            said(one.content.get("name")),
            said(one.content.get("caption")),
            said(one.content.get("media_type")),
            one.attachment or b"",
        )
        for one in entries
    )
    return Section(say("Pictures"), pictures=pictures) if pictures else None


def _sentences(entry: Entry) -> tuple[str, ...]:
    single, many = entry.content.get("sentence"), entry.content.get("sentences")
    texts = [single, *(many if isinstance(many, list) else ())]
    return tuple(text for text in texts if isinstance(text, str) and text.strip())


def _facts_of(entry: Entry, title: str) -> Table:
    return _facts(rows(entry.content, _SENTENCES | _LINKS), title)


def _facts(facts: list[list[str]], title: str = "") -> Table:
    return Table((), tuple((what, how) for what, how in facts), title)
