"""A drift log is read in a worker thread, with progress, and can be given up."""

from __future__ import annotations

import logging
from collections.abc import Callable
from pathlib import Path
from threading import Event

import pytest
from pytestqt.qtbot import QtBot

from app.devices.files import LogFileSource
from core.alignment.driftlog.records import DriftLog, ReadingCancelled

HEAD = "leg,utc,ra_deg,dec_deg,north_arcsec\n"


def log_of(path: Path, lines: int) -> Path:
    rows = (
        f"a,2026-11-24T{22 + i // 18000:02d}:{i // 300 % 60:02d}:{0.2 * (i % 300):04.1f}Z,10,20,1.5"
        for i in range(lines)
    )
    path.write_text(HEAD + "\n".join(rows), encoding="utf-8")
    return path


def test_a_log_arrives_with_progress(qtbot: QtBot, tmp_path: Path) -> None:
    source = LogFileSource(log_of(tmp_path / "night.csv", 20_000))
    assert source.name == "night.csv"
    shares: list[float] = []
    source.progressed.connect(shares.append)
    logs: list[DriftLog] = []
    source.log_read.connect(logs.append)
    with qtbot.waitSignal(source.ended):
        source.start()
    (log,) = logs
    assert log.legs[0].utc_s.size == 20_000
    assert shares == sorted(shares)
    assert 0.0 < shares[0] < shares[-1] <= 1.0


@pytest.mark.parametrize(
    ("name", "content", "words"),
    [
        ("empty.csv", b"", "empty"),
        ("picture.csv", b"\x89PNG\r\n\x1a\n\x00\x00\x00" * 50, "binary"),
        ("words.csv", b"nothing to see here\n", "words.csv"),
    ],
)
def test_other_files_end_with_a_sentence(
    qtbot: QtBot, tmp_path: Path, name: str, content: bytes, words: str
) -> None:
    path = tmp_path / name
    path.write_bytes(content)
    source = LogFileSource(path)
    with qtbot.waitSignal(source.ended) as got:
        source.start()
    assert words in got.args[0]


def test_a_missing_file_ends_with_a_sentence(qtbot: QtBot, tmp_path: Path) -> None:
    source = LogFileSource(tmp_path / "gone.csv")
    with qtbot.waitSignal(source.ended) as got:
        source.start()
    assert "gone.csv does not exist" in got.args[0]


def test_a_cancelled_reading_says_nothing_more(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    begun = Event()

    def endless(_: Path, keep_going: Callable[[float], bool]) -> None:
        while keep_going(0.5):
            begun.set()
        raise ReadingCancelled("stopped")

    monkeypatch.setattr("app.devices.files.read_file", endless)
    source = LogFileSource(tmp_path / "night.csv")
    said: list[object] = []
    for signal in (source.progressed, source.log_read, source.ended):
        signal.connect(said.append)
    source.start()
    assert begun.wait(5.0)
    source.stop()
    source.stop()
    qtbot.wait(1)  # lets what was already on its way arrive
    assert said == []


def test_a_fault_in_the_reader_becomes_a_sentence(
    qtbot: QtBot,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    def faulty(*_: object) -> None:
        raise KeyError("nobody thought of this")

    monkeypatch.setattr("app.devices.files.read_file", faulty)
    source = LogFileSource(tmp_path / "night.csv")
    with caplog.at_level(logging.ERROR), qtbot.waitSignal(source.ended) as got:
        source.start()
    assert "nobody thought of this" in got.args[0]
    assert "nothing was taken" in got.args[0]
