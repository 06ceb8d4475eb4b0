"""A file that grows, followed without a window."""

import os

import numpy as np
import pytest

from app.devices.files import LONGEST_LINE_BYTES, GrowingFileSource

HEAD = "leg,utc,ra_deg,dec_deg,north_arcsec,east_arcsec\n"
BEGIN_S = 1_790_000_000
WAIT_MS = 5_000


def line(second: int, label: str = "run", ra_deg: float = 200.0) -> str:
    stamp = np.datetime64(BEGIN_S + second, "s")
    return f"{label},{stamp}Z,{ra_deg},0.0,0.5,{second}\n"


class Heard:
    """Remembers what a source says, in order."""

    def __init__(self, source: GrowingFileSource) -> None:
        self.east: list[float] = []
        self.stars: list[str] = []
        self.left_out: list[tuple[int, str]] = []
        self.ended: list[str] = []
        source.reading.connect(lambda reading: self.east.append(reading.east_arcsec))
        source.star.connect(lambda label, _ra, _dec: self.stars.append(label))
        source.left_out.connect(
            lambda lines: self.left_out.extend((one.line_number, one.reason) for one in lines)
        )
        source.ended.connect(self.ended.append)


@pytest.fixture
def path(tmp_path):
    return tmp_path / "run.csv"


@pytest.fixture
def follow(qtbot, path):
    made = []

    def follow(**how) -> tuple[GrowingFileSource, Heard]:
        source = GrowingFileSource(path, **how)
        made.append(source)
        heard = Heard(source)
        source.start()
        return source, heard

    yield follow
    for source in made:
        source.stop()
    assert qtbot


def add(path, text: str) -> None:
    with path.open("a", encoding="utf-8", newline="") as file:
        file.write(text)


def test_what_is_there_and_what_is_added_comes_once(qtbot, path, follow) -> None:
    add(path, HEAD + line(0) + line(3))
    _, heard = follow()
    qtbot.waitUntil(lambda: heard.east == [0.0, 3.0], timeout=WAIT_MS)
    whole = line(6)
    add(path, whole[:20])  # a line is written in two halves
    add(path, whole[20:] + line(9).replace("\n", "\r\n"))
    qtbot.waitUntil(lambda: heard.east == [0.0, 3.0, 6.0, 9.0], timeout=WAIT_MS)
    assert heard.stars == ["run"]
    assert heard.ended == []


def test_only_the_last_leg_of_what_is_there_is_taken(qtbot, path, follow) -> None:
    add(path, HEAD + line(0, "old") + line(3, "old") + line(10, "new") + line(13, "new"))
    _, heard = follow()
    qtbot.waitUntil(lambda: heard.east == [10.0, 13.0], timeout=WAIT_MS)
    add(path, line(20, "next"))
    qtbot.waitUntil(lambda: heard.stars == ["new", "next"], timeout=WAIT_MS)


def test_a_long_file_is_taken_in_parts_and_whole(qtbot, path, follow) -> None:
    add(path, HEAD + "".join(line(3 * number) for number in range(3000)))
    _, heard = follow()
    qtbot.waitUntil(lambda: len(heard.east) == 3000, timeout=4 * WAIT_MS)
    assert heard.east == [3.0 * number for number in range(3000)]


def test_what_is_known_already_is_passed_over(qtbot, path, follow) -> None:
    add(path, HEAD + line(0) + line(3) + line(6))
    _, heard = follow(after_utc_s=BEGIN_S + 3.0)
    qtbot.waitUntil(lambda: heard.east == [6.0], timeout=WAIT_MS)


def test_a_bad_line_is_said_and_left_out(qtbot, path, follow) -> None:
    add(path, HEAD + line(0))
    _, heard = follow()
    qtbot.waitUntil(lambda: heard.east == [0.0], timeout=WAIT_MS)
    add(path, "run,yesterday,200.0,0.0,0.5,1\n" + line(6))
    qtbot.waitUntil(lambda: heard.east == [0.0, 6.0], timeout=WAIT_MS)
    ((number, reason),) = heard.left_out
    assert number == 3
    assert "yesterday" in reason


def test_bad_lines_that_were_there_before_are_said_too(qtbot, path, follow) -> None:
    add(path, "# of last night\n" + HEAD + line(0, "old") + "run,soon,200.0,0.0,0.5,1\n" + line(3))
    _, heard = follow()
    qtbot.waitUntil(lambda: heard.east == [3.0], timeout=WAIT_MS)
    assert [number for number, _ in heard.left_out] == [4]


def test_another_star_under_the_same_label_does_not_join_the_leg(qtbot, path, follow) -> None:
    add(path, HEAD + line(0))
    _, heard = follow()
    qtbot.waitUntil(lambda: heard.east == [0.0], timeout=WAIT_MS)
    add(path, line(3, ra_deg=210.0) + line(6))
    qtbot.waitUntil(lambda: heard.east == [0.0, 6.0], timeout=WAIT_MS)
    assert "give each star a leg" in heard.left_out[0][1]
    assert heard.stars == ["run"]


def test_lines_that_are_not_text_are_left_out(qtbot, path, follow) -> None:
    add(path, HEAD + line(0) + line(3).replace("0.5", "0.5\0"))
    with path.open("ab") as file:
        file.write(line(6).replace("run", "r\xfcn").encode("latin-1"))
    add(path, line(9))
    _, heard = follow()
    qtbot.waitUntil(lambda: heard.east == [0.0, 9.0], timeout=WAIT_MS)
    assert [number for number, _ in heard.left_out] == [3, 4]


@pytest.mark.parametrize("end", ["\r", "\r\n"], ids=["return", "both"])
def test_lines_may_end_with_a_carriage_return(qtbot, path, follow, end) -> None:
    text = (HEAD + "".join(line(3 * number) for number in range(1000))).replace("\n", end)
    add(path, text + line(0, "late").replace("\n", end).replace("Z", "?"))
    _, heard = follow()
    qtbot.waitUntil(lambda: len(heard.east) == 1000, timeout=4 * WAIT_MS)
    assert [number for number, _ in heard.left_out] == [1002]


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="only where there are named pipes")
def test_a_pipe_is_refused_at_once_and_holds_nothing_up(path, follow) -> None:
    os.mkfifo(path)
    source, heard = follow()
    source.look()
    assert "not a file that can be read as a log" in heard.ended[0]


def test_text_of_sixteen_bits_is_refused(path, follow) -> None:
    path.write_bytes((HEAD + line(0)).encode("utf-16"))
    source, heard = follow()
    source.look()
    assert "not text in UTF-8" in heard.ended[0]
    assert heard.left_out == []


@pytest.mark.parametrize(
    ("text", "word"),
    [
        ("these,are,no,columns\n", "cannot be followed"),
        ("x" * (LONGEST_LINE_BYTES + 1), "no lines of text"),
        (HEAD.replace("arcsec", "px"), "pixels"),
    ],
    ids=["columns", "one endless line", "pixels"],
)
def test_a_file_that_cannot_be_followed_ends_with_a_sentence(
    qtbot, path, follow, text, word
) -> None:
    add(path, text)
    _, heard = follow()
    qtbot.waitUntil(lambda: bool(heard.ended), timeout=WAIT_MS)
    assert word in heard.ended[0]


def test_a_file_that_vanishes_or_begins_anew_ends_the_recording(qtbot, path, follow) -> None:
    add(path, HEAD + line(0) + line(3))
    _, heard = follow()
    qtbot.waitUntil(lambda: len(heard.east) == 2, timeout=WAIT_MS)
    path.write_text(HEAD, encoding="utf-8")
    qtbot.waitUntil(lambda: bool(heard.ended), timeout=WAIT_MS)
    assert "shorter" in heard.ended[0]
    path.unlink()
    _, heard = follow()
    qtbot.waitUntil(lambda: bool(heard.ended), timeout=WAIT_MS)
    assert "can no longer be read" in heard.ended[0]
