"""The steps of the meridian flip tick themselves: planned, done, or not needed with the reason."""

from __future__ import annotations

import pytest

from core.night.checklist import NightPart
from core.night.record import NightRecord
from core.night.report import html
from core.sky.targets import Target
from tests.app.pages.tonight.conftest import NOW_S

# From the north at 47° in September: one culminates about midnight, one sets early in the west.
ANDROMEDA = Target("M 31", "galaxy", 10.685, 41.269)
HERCULES = Target("M 13", "globular cluster", 250.42, 36.46)


def shown(page, qtbot, target: Target):
    page.evening.plans.set_target(target)
    qtbot.waitUntil(page.is_up_to_date, timeout=20_000)
    return row_of(page, qtbot, NightPart.THROUGH_THE_NIGHT, "flip")


def row_of(page, qtbot, part: NightPart, key: str):
    page.steps().show_part(part)
    qtbot.waitUntil(page.steps().is_whole, timeout=5_000)
    return page.steps().row(key)


def after(page, qtbot, do) -> None:
    with qtbot.waitSignal(page.worked_out, timeout=20_000):
        do()


def is_ticked(page, key: str) -> bool:
    return page.steps().row(key).tick().isChecked()


def test_the_flip_step_ticks_itself_when_the_flip_was_recorded(make_page, qtbot, memory) -> None:
    page = make_page()
    shown(page, qtbot, ANDROMEDA)
    assert not is_ticked(page, "flip")
    after(page, qtbot, lambda: page.flips.flip("M 31"))
    assert not is_ticked(page, "flip")  # not centred again yet
    after(page, qtbot, lambda: page.flips.centre("M 31"))
    qtbot.waitUntil(lambda: is_ticked(page, "flip"))
    assert "The program saw it done" in page.steps().row("flip").said()
    kept = [one for one in memory.entries if one.kind == "flip"]
    done = [{"flipped_utc_s": NOW_S, "centred_utc_s": NOW_S}]
    assert [one.content for one in kept] == [{"target": "M 31", "flips": done}]
    after(page, qtbot, lambda: page.flips.take_back("M 31"))
    qtbot.waitUntil(lambda: not is_ticked(page, "flip"))


def test_a_flip_that_is_not_needed_says_why(make_page, qtbot, memory) -> None:
    page = make_page()
    shown(page, qtbot, HERCULES)
    qtbot.waitUntil(lambda: is_ticked(page, "flip"))
    said = page.steps().row("flip").said()
    assert said.startswith("Not needed: The target")
    assert "no flip" in said
    kept = [one.content for one in memory.entries if one.content.get("step") == "flip"]
    assert "no flip" in kept[-1]["reason"]
    # Another target that needs one opens the step again, and what is said of it then is newer.
    shown(page, qtbot, ANDROMEDA)
    qtbot.waitUntil(lambda: not is_ticked(page, "flip"))
    page.flips.flip("M 31")
    page.flips.centre("M 31")
    qtbot.waitUntil(lambda: is_ticked(page, "flip"))
    qtbot.waitUntil(lambda: "Not needed" not in page.steps().row("flip").said())


def test_seeing_the_plan_ticks_its_step(make_page, qtbot) -> None:
    page = make_page()
    shown(page, qtbot, ANDROMEDA)
    assert not row_of(page, qtbot, NightPart.DARK, "flip-plan").tick().isChecked()
    after(page, qtbot, lambda: page.flips.see("M 31"))
    qtbot.waitUntil(lambda: is_ticked(page, "flip-plan"))


@pytest.mark.parametrize("target", [None, HERCULES])
def test_the_plan_step_stands_only_where_a_flip_is_needed(make_page, qtbot, target) -> None:
    page = make_page()
    if target is not None:
        shown(page, qtbot, target)
    with pytest.raises(LookupError):
        row_of(page, qtbot, NightPart.DARK, "flip-plan")


def test_flips_stand_in_the_report(make_page, memory) -> None:
    def report() -> str:
        entries = tuple(memory.entries)
        return html(NightRecord(1, NOW_S, NOW_S, None, None, None, None, (), entries))

    page = make_page()
    page.flips.see("M 31")
    assert "Meridian flip" not in report()
    page.flips.flip("M 31")
    assert "<td>M 31</td><td>2026-09-21 14:13 UTC</td><td>–</td>" in report()
