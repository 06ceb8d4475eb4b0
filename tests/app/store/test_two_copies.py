"""Two copies of the program: one writes, the other reads until it takes over. Nothing is lost."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np
import pytest

from app.store.nights import NightLog
from app.store.records import UnusableFile
from core.night.record import Kind
from core.sky.site import Air, Site
from tests.app.store.program import everything, keep_a_night
from tests.app.store.told import NOW_UTC_S, Told, measure, readings_in
from tests.core.night.recorded import whole_night

ROOT = Path(__file__).parents[3]
# Another process that measures what it is told to, line by line, and answers when it is on disk.
OTHER = """
import sys
from pathlib import Path
from tests.app.store.told import NOW_UTC_S, Told, measure
log = Told().open(Path(sys.argv[1]))
log.resume_or_begin_night(NOW_UTC_S)
measure(log, 3)
print(log.flush(10.0), flush=True)
for line in sys.stdin:
    measure(log, int(line))
    print(log.flush(10.0), flush=True)
log.close()
"""


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "nights.sqlite3"


@pytest.fixture
def begin_other(path: Path) -> Iterator[Callable[[], subprocess.Popen]]:
    running: list[subprocess.Popen] = []

    def begin() -> subprocess.Popen:
        other = subprocess.Popen(
            [sys.executable, "-c", OTHER, str(path)],
            cwd=ROOT,
            env=os.environ | {"PYTHONPATH": str(ROOT)},
            stdin=subprocess.PIPE,
            stdout=subprocess.PIPE,
            text=True,
        )
        running.append(other)
        assert other.stdout.readline() == "True\n"
        return other

    yield begin
    for other in running:
        other.kill()
        other.wait(10.0)
        for stream in (other.stdin, other.stdout):
            stream.close()


@pytest.fixture
def told() -> Told:
    return Told()


def says_read_only(sentence: str | None) -> bool:
    return sentence is not None and "this one only reads it" in sentence


@pytest.mark.parametrize("end", ["closed", "killed"])
def test_the_second_copy_takes_over_and_loses_nothing(
    path: Path, told: Told, begin_other, end: str
) -> None:
    other = begin_other()
    log = told.open(path)
    assert says_read_only(told.troubles[-1])
    assert "Close the other copy" in told.troubles[-1]
    night = log.resume_or_begin_night(NOW_UTC_S)
    assert not night.resumed
    measure(log, 40)
    assert not log.flush(5.0)  # at once: nothing is waited for
    assert readings_in(path) == 3
    other.stdin.write("7\n")  # the first copy goes on undisturbed
    other.stdin.flush()
    assert other.stdout.readline() == "True\n"
    (seen,) = log.archive.overview()
    assert seen.legs == 2  # and what it writes is seen here
    if end == "closed":
        other.stdin.close()  # its end
    else:
        other.kill()
    other.wait(10.0)
    told.wait(lambda sentence: sentence is None)
    assert any("writes the log of nights nights.sqlite3 now" in one for one in told.notices)
    measure(log, 2)
    assert log.close()
    assert readings_in(path) == 3 + 7 + 40 + 2
    assert len(everything(path)) == 2


@pytest.mark.usefixtures("begin_other")
def test_the_second_copy_can_look_at_everything(path: Path, told: Told, tmp_path: Path) -> None:
    first, second = Told().open(path), told.open(path)
    keep_a_night(first, NOW_UTC_S)
    first.put_setting("look", "night")
    assert first.flush()
    (night,) = second.archive.overview()
    assert second.archive.search("dew")
    assert second.archive.record(night.night_id).of_kind(Kind.PICTURE)[0].attachment
    assert "1 nights are saved" in second.archive.back_up(tmp_path / "saved.sqlite3")
    assert second.is_read_only
    with pytest.raises(UnusableFile, match="Close the other copy"):
        second.archive.take_in(tmp_path / "saved.sqlite3")
    with pytest.raises(UnusableFile, match="Close the other copy"):
        second.archive.take_in_record(whole_night())
    assert first.close()
    second.resume_or_begin_night(NOW_UTC_S)
    told.wait(lambda sentence: sentence is None)
    assert second.close()
    assert len(everything(tmp_path / "saved.sqlite3")) == 1


def test_its_night_has_the_place_of_the_one_that_is_written(path: Path, told: Told) -> None:
    first = Told().open(path)
    first.resume_or_begin_night(NOW_UTC_S)
    hill = Site(48.1, 11.6, 520.0, "hill")
    first.set_site(hill, Air(950.0))
    first.set_target(2.5)
    measure(first, 3)
    assert first.flush()
    second = told.open(path)
    night = second.resume_or_begin_night(NOW_UTC_S)
    assert (night.site, night.air, night.target_arcmin) == (hill, Air(950.0), 2.5)
    assert first.close()
    told.wait(lambda sentence: sentence is None)
    assert second.close()
    again = Told().open(path)
    resumed = again.resume_or_begin_night(NOW_UTC_S)  # the one with a leg
    assert resumed.axis_states[0].legs[0].leg.utc_s.size == 3
    assert again.close()


def test_settings_of_the_first_copy_are_not_written_over(path: Path, told: Told) -> None:
    before = Told().open(path)
    for key in ("both", "second", "first"):
        before.put_setting(key, "old")
    assert before.close()
    first, second = Told().open(path), told.open(path)
    second.resume_or_begin_night(NOW_UTC_S)
    first.put_setting("both", "of the first")
    first.put_setting("first", "of the first")
    first.put_setting("new", "of the first")
    for key in ("both", "second", "new"):
        second.put_setting(key, "middle")
        second.put_setting(key, "of the second")
    assert second.get_setting("both") == "of the second"  # here, until it is closed
    assert first.close()
    told.wait(lambda sentence: sentence is None)
    assert second.close()
    again = Told().open(path)
    kept = {key: again.get_setting(key) for key in ("both", "second", "first", "new")}
    assert again.close()
    of_first = dict.fromkeys(("both", "first", "new"), "of the first")
    assert kept == of_first | {"second": "of the second"}


def test_after_taking_over_what_the_other_changed_still_stays_and_that_is_said(
    path: Path, told: Told
) -> None:
    first = Told().open(path)
    first.put_setting("equipment", ["one"])
    first.put_setting("plans", "old")
    assert first.flush()
    second = told.open(path)
    second.resume_or_begin_night(NOW_UTC_S)
    first.put_setting("equipment", ["one", "two"])
    assert first.close()
    told.wait(lambda sentence: sentence is None)
    assert any("Close this copy and open it again" in one for one in told.notices)
    second.put_setting("equipment", ["one", "three"])
    second.put_setting("equipment", ["one", "four"])
    second.put_setting("plans", "new")
    assert second.close()
    again = Told().open(path)
    assert again.get_setting("equipment") == ["one", "two"]
    assert again.get_setting("plans") == "new"
    assert again.close()


def test_nothing_is_said_of_the_steps_of_the_other_copys_own_night(path: Path, told: Told) -> None:
    first = Told().open(path)
    first.put_setting("guide 17", {"stage": "WATCH"})
    assert first.flush()
    second = told.open(path)
    second.resume_or_begin_night(NOW_UTC_S)
    first.put_setting("guide 17", {"stage": "TURN"})
    first.put_setting("goal 17", 2.0)
    assert first.close()
    told.wait(lambda sentence: sentence is None)
    assert not any("open it again" in one for one in told.notices)
    assert second.close()


def test_words_that_wait_are_known_of(path: Path, told: Told) -> None:
    first, second = Told().open(path), told.open(path)
    second.resume_or_begin_night(NOW_UTC_S)
    second.put_entry(Kind.TICK, {"step": "level", "state": "seen by the program"})
    assert not second.has_said
    second.put_entry(Kind.NOTE, {"text": "dew"})
    assert second.has_said
    assert not second.close()
    assert first.close()


def test_a_broken_hold_is_made_anew(path: Path, told: Told) -> None:
    path.with_name("nights.sqlite3-held").write_bytes(b"not a database" * 100)
    log: NightLog = told.open(path)
    log.resume_or_begin_night(NOW_UTC_S)
    log.add_samples(log.add_leg("a", "b", 1.0, 2.0), NOW_UTC_S + np.arange(2.0), np.ones(2))
    assert log.close()
    assert told.troubles == []
    assert readings_in(path) == 2
