"""Drift logs on disk: encodings, and files that are something else."""

from __future__ import annotations

import os
from pathlib import Path

import pytest

from core.alignment.driftlog.files import read_file
from core.alignment.driftlog.records import ReadingCancelled, UnusableLog

TEXT = """# hill: Größenberg
leg,utc,ra_deg,dec_deg,north_arcsec
Stern ö,2026-11-24T20:00:00Z,83.8,-5.4,0.0
Stern ö,2026-11-24T20:01:00Z,83.8,-5.4,0.5
"""


def write(folder: Path, content: bytes) -> Path:
    path = folder / "night.csv"
    path.write_bytes(content)
    return path


@pytest.mark.parametrize("encoding", ["utf-8", "utf-8-sig", "utf-16", "utf-32"])
def test_reads_the_unicode_encodings_spreadsheets_write(tmp_path: Path, encoding: str) -> None:
    log = read_file(write(tmp_path, TEXT.replace("\n", "\r\n").encode(encoding)))
    assert log.legs[0].label == "Stern ö"
    assert log.header.other == (("hill", "Größenberg"),)
    assert log.rejected == ()


def test_utf16_cut_in_the_middle_of_a_character_still_gives_its_legs(tmp_path: Path) -> None:
    longer = TEXT + "Stern ö,2026-11-24T20:02:00Z,83.8,-5.4,0.5"
    log = read_file(write(tmp_path, longer.encode("utf-16")[:-1]))
    assert log.legs[0].utc_s.size == 2
    assert [line.line_number for line in log.rejected] == [5]


def test_lines_in_another_encoding_are_reported_and_the_rest_is_used(tmp_path: Path) -> None:
    plain = TEXT.replace("Stern ö", "star").encode("utf-8")
    log = read_file(write(tmp_path, plain + "ö,2026,1,2,3\n".encode("latin-1")))
    assert [(line.line_number, "UTF-8" in line.reason) for line in log.rejected] == [(5, True)]


def test_a_tail_of_nul_bytes_costs_only_itself(tmp_path: Path) -> None:
    log = read_file(write(tmp_path, TEXT.encode() + b"\0" * 5000))
    assert log.legs[0].utc_s.size == 2
    assert "power cut" in log.rejected[0].reason


@pytest.mark.parametrize(
    ("content", "words"),
    [
        (b"", "is empty"),
        (b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR" + bytes(range(256)) * 40, "binary file"),
        (b"PK\x03\x04" + bytes(range(256)), "workbook or an archive"),
        (bytes(range(128, 256)) * 1000, "not text in UTF-8"),
        (TEXT.encode("utf-16-le"), "binary file"),
        (b"x" * 3_000_000, "has no usable leg: .* longer than"),
    ],
)
def test_a_file_that_is_something_else_is_refused(tmp_path: Path, content, words) -> None:
    with pytest.raises(UnusableLog, match=words) as caught:
        read_file(write(tmp_path, content))
    assert "night.csv" in str(caught.value)


def test_a_huge_file_is_refused_unread(tmp_path: Path) -> None:
    path = tmp_path / "huge.csv"
    with path.open("wb") as file:
        file.truncate(1_000_000_000)  # sparse: takes no room on the disk
    with pytest.raises(UnusableLog, match="has 1,000 MB"):
        read_file(path)


def test_what_is_no_file_is_refused(tmp_path: Path) -> None:
    with pytest.raises(UnusableLog, match="does not exist"):
        read_file(tmp_path / "missing.csv")
    with pytest.raises(UnusableLog, match="is not a file"):
        read_file(tmp_path)
    with pytest.raises(UnusableLog):
        read_file("nul\0name")


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="needs named pipes")
def test_a_pipe_that_never_ends_is_refused(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    with pytest.raises(UnusableLog, match="is not a file"):
        read_file(tmp_path / "pipe")


def test_progress_is_told_as_a_share_and_reading_can_be_stopped(tmp_path: Path) -> None:
    path = write(tmp_path, TEXT.encode() + b"x\n" * 50_000)
    shares: list[float] = []

    def keep_going(share: float) -> bool:
        shares.append(share)
        return len(shares) < 5

    with pytest.raises(ReadingCancelled):
        read_file(path, keep_going)
    assert shares == sorted(shares)
    assert 0.0 < shares[0] < shares[-1] < 1.0
