"""Guiding, pointing and vibration stay with the night, and are there when it is opened again."""

from collections.abc import Callable

import numpy as np
import pytest

from app.night.session import Session
from app.pages.tracking.figures import Tap
from app.pages.tracking.page import GUIDING, POINTING, VIBRATION, TrackingPage
from app.pagetable import tracking_page
from app.startup import StartupLoad
from app.store.nights import NightLog
from core.night.record import Kind
from core.night.report import html
from core.sky.site import Air, Site

from .conftest import DONE_MS, NOW_S, written

HILL, AIR = Site(48.1, 11.6, 520.0, "Hill"), Air(952.0, 10.0)


@pytest.fixture
def reopened(tmp_path, qtbot, theme, session: Session):
    """Opens the page over the night on disk, again and again."""
    open_now: list[tuple[TrackingPage, NightLog]] = []
    session.set_site(HILL, AIR)

    def close() -> None:
        while open_now:
            page, log = open_now.pop()
            page.stop()
            assert log.close()

    def reopened() -> tuple[TrackingPage, NightLog]:
        close()
        log = NightLog.open(tmp_path / "nights.sqlite", lambda: NOW_S, _no_trouble, _no_trouble)
        night = log.resume_or_begin_night(NOW_S)
        page = tracking_page(session, theme, StartupLoad(log, night), None, None, lambda: NOW_S)
        qtbot.addWidget(page)
        open_now.append((page, log))
        return page, log

    yield reopened
    close()


def _no_trouble(sentence: str | None) -> None:
    assert sentence is None


@pytest.fixture
def worked(qtbot) -> Callable[[TrackingPage, Callable[[], None]], None]:
    def worked(page: TrackingPage, act: Callable[[], None]) -> None:
        with qtbot.waitSignal(page.bench.job.done, timeout=DONE_MS):
            act()

    return worked


def _guiding() -> str:
    rng = np.random.default_rng(5)
    lines = ["leg,utc,ra_deg,dec_deg,north_arcsec,east_arcsec"]
    for second in range(0, 600, 3):
        stamp = np.datetime64(int(NOW_S) + second, "s")
        lines.append(f"guided,{stamp}Z,200.0,0.0,{rng.normal(0, 0.5):.3f},{rng.normal(0, 1.4):.3f}")
    return "\n".join(lines)


def _tap(frequency_hz: float) -> Tap:
    time_s = np.arange(0.0, 8.0, 0.05)
    ring = 10.0 * np.exp(-time_s) * np.cos(2.0 * np.pi * frequency_hz * time_s)
    return Tap(time_s, ring + np.random.default_rng(2).normal(0.0, 0.1, time_s.size), "tap.csv")


def _entries(log: NightLog, kind: Kind):
    night = log.resume_or_begin_night(NOW_S)
    return [one for one in night.entries if one.kind == kind]


def test_guiding_is_kept_and_there_again(reopened, worked, tmp_path) -> None:
    page, log = reopened()
    page.bench.want(scale_arcsec_per_px=1.2)
    box = page.show_section(GUIDING).box
    worked(page, lambda: box.read(written(tmp_path, _guiding())))
    found = page.bench.study.guiding.value
    worked(page, lambda: page.bench.want(seeing_arcsec=2.5))  # said anew, not twice
    page, log = reopened()
    (kept,) = _entries(log, Kind.GUIDING)
    assert kept.content["right_ascension_rms_arcsec"] == pytest.approx(
        found.east.rms_arcsec, abs=0.001
    )
    assert "wider" in kept.content["sentence"]
    assert page.bench.guided.leg.label == "guided"
    assert page.bench.run is None
    page.bench.leave_guided_out()
    page, log = reopened()
    assert page.bench.guided is None


def test_taps_are_kept_each_with_its_readings(reopened, worked) -> None:
    page, log = reopened()
    worked(page, lambda: page.bench.take_tap(_tap(2.0), is_after=False))
    worked(page, lambda: page.bench.take_tap(_tap(4.0), is_after=True))
    page, log = reopened()
    kept = {one.content["when"]: one.content for one in _entries(log, Kind.VIBRATION)}
    assert kept["before a change"]["frequency_hz"] == pytest.approx(2.0, abs=0.02)
    assert kept["after a change"]["frequency_hz"] == pytest.approx(4.0, abs=0.02)
    assert np.allclose(page.bench.after.offset_arcsec, _tap(4.0).offset_arcsec, atol=1e-4)
    assert page.show_section(VIBRATION) is not None
    worked(page, lambda: page.bench.work())
    assert len(_entries(log, Kind.VIBRATION)) == 2


def test_pointing_is_kept_once_a_night_and_never_that_of_another(reopened, worked, qtbot) -> None:
    page, log = reopened()
    section = page.show_section(POINTING)
    stars = _stars()
    worked(page, lambda: page.bench.take_sightings(stars[:6], None))
    worked(page, lambda: page.bench.take_sightings(stars, None))
    assert section is not None
    page, log = reopened()
    (kept,) = _entries(log, Kind.POINTING)
    assert kept.content["stars"] == len(stars)
    assert "′" in kept.content["sentence"]
    qtbot.waitUntil(lambda: page.bench.study is not None, timeout=DONE_MS)
    assert len(_entries(log, Kind.POINTING)) == 1


def test_practice_is_not_kept(page, wait, log) -> None:
    page.bench.want(scale_arcsec_per_px=1.2)
    wait(page.show_section(GUIDING).box.practice_key.click)
    wait(page.show_section(POINTING).practice_key.click)
    wait(page.show_section(VIBRATION).practice_key.click)
    assert log.entries == []
    assert log.legs == []


def test_the_report_tells_them(reopened, worked) -> None:
    page, log = reopened()
    worked(page, lambda: page.bench.take_tap(_tap(2.0), is_after=False))
    sentence = page.bench.study.before.value.sentence
    _, log = reopened()  # everything is on disk then
    record = log.archive.record(log.resume_or_begin_night(NOW_S).night_id)
    assert str(sentence) in html(record)


def _stars():
    from app.pages.tracking.practice import practice_sightings

    return practice_sightings(np.random.default_rng(3))
