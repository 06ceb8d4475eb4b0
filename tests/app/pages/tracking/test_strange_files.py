"""Files a stranger might bring: what the page says of them, read through the page itself."""

import numpy as np
import pytest

from app.pages.tracking.page import PERIODIC

from .conftest import DONE_MS, NOW_S, written

HEAD = "leg,utc,ra_deg,dec_deg,north_arcsec,east_arcsec"
PERIOD_S = 480.0
TIME = np.arange(0.0, 3000.0, 3.0)
NOISE = np.random.default_rng(2).normal(0.0, 0.4, (2, 6000))


def swing(time_s, turn: float = 0.0):
    noise = NOISE[0, : time_s.size]
    return 6.0 * np.sin(2.0 * np.pi * time_s / PERIOD_S + turn) + noise


def text(time_s, east, head: str = HEAD) -> str:
    stamps = [f"{np.datetime64(round(1000 * (NOW_S + one)), 'ms')}Z" for one in time_s]
    rows = zip(stamps, NOISE[1], east, strict=False)
    return "\n".join([head, *(f"run,{at},200.0,0.0,{n:.3f},{e}" for at, n, e in rows)])


def irregular() -> str:
    times = np.cumsum(np.random.default_rng(4).exponential(3.0, 1000) + 0.06)
    return text(times, swing(times))


def with_gaps() -> str:
    times = np.concatenate([TIME[:300], TIME[420:700], TIME[760:]])
    return text(times, swing(times))


def flipped() -> str:
    """The worm was turned on by a part of its turn while the mount changed sides."""
    times = np.arange(0.0, 5400.0, 3.0)
    before, after = times[:900], times[1000:]
    east = np.concatenate([swing(before), 40.0 + swing(after, 1.9 + np.pi)])
    return text(np.concatenate([before, after]), east)


def guided() -> str:
    drive, moved = swing(TIME) - NOISE[0, : TIME.size], []
    correction = 0.0
    for lead, air in zip(drive, NOISE[0], strict=False):
        moved.append(lead - correction + air)
        correction += 0.6 * moved[-1]
    return text(TIME, moved)


def with_nan() -> str:
    return text(TIME, ["nan" if n % 7 == 0 else f"{e:.3f}" for n, e in enumerate(swing(TIME))])


@pytest.fixture
def brought(page, qtbot, tmp_path):
    """Reads a file; everything the page then says of it, and the section."""

    def brought(content: str) -> str:
        section = page.show_section(PERIODIC)
        arrived = []
        page.bench.job.done.connect(arrived.append)
        section.box._job.done.connect(
            lambda answer: None if isinstance(answer, tuple) else arrived.append(answer)
        )
        section.box.read(written(tmp_path, content))
        qtbot.waitUntil(lambda: bool(arrived), timeout=DONE_MS)
        page.head._show()
        section.show_bench()
        said = (section.box.said(), section.sentence.text(), section.notes.text())
        return "\n".join((*said, page.head.doubts.text()))

    return brought


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (irregular(), ["swings 12.0″", "turn of 479.9 ± 0.3 s"]),
        (with_gaps(), ["2 gaps of together 9 minutes", "swings 12.0″"]),
        (flipped(), ["not keep its phase", "the part before it is used", "turn of 480.1 ± 0.3 s"]),
        (text(TIME / 60.0, swing(TIME)), ["in seconds, not in minutes"]),
        (text(TIME * 60.0, swing(TIME)), ["50 hours", "check the unit of the times"]),
        (text(TIME, swing(TIME), HEAD.replace("arcsec", "px")), ["Enter the image scale"]),
        (guided(), ["probably left on"]),
        (text(TIME[:1], swing(TIME[:1])), ["only usable reading"]),
        (with_nan(), ["857 readings", "Line 2: east_arcsec “nan”", "140 more lines"]),
        (text(TIME, ["nan"] * TIME.size), ["1000 lines were rejected"]),
        ("", ["empty"]),
        (HEAD + "\n", ["no readings below"]),
        (text(TIME[:320], swing(TIME[:320])), ["16 minutes", "track longer"]),
        (text(TIME[::-1], swing(TIME)), ["run backwards; put its lines in order"]),
        (text(TIME, np.zeros(TIME.size)), ["never change; was the star measured?"]),
        (text(TIME, 3600.0 * swing(TIME)), ["more than any worm does"]),
    ],
    ids=[
        *("irregular", "gaps", "flip", "minutes", "seconds", "pixels", "guided", "one reading"),
        *("some nan", "all nan", "empty", "head only", "short", "backwards", "stuck", "units"),
    ],
)
def test_every_file_gets_its_sentence(brought, content: str, words: list[str]) -> None:
    said = brought(content)
    for one in words:
        assert one in said, said
    assert "Traceback" not in said


def test_a_file_too_large_is_refused_before_it_is_read(page, qtbot, tmp_path) -> None:
    path = tmp_path / "large.csv"
    with path.open("wb") as file:
        file.truncate(300_000_000)
    box = page.show_section(PERIODIC).box
    box.read(path)
    qtbot.waitUntil(lambda: "300 MB" in box.said(), timeout=DONE_MS)
