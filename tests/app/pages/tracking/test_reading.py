"""Runs from files: which leg, which place, and what is refused."""

import os
from pathlib import Path

import pytest

from app.pages.tracking.figures import Given, TrackingPlace, UnusablePairs, pairs
from app.pages.tracking.runs import MOST_BYTES, Refusal, read_one_tap, read_run, read_stars
from core.imaging.tolerance import Alignment
from core.sky.site import Air, Site

from .conftest import NOW_S, invented_run

HERE = TrackingPlace(Site(48.1, 11.6, 520.0, "Hill"), Air(952.0), Alignment(1.0, 2.0))


def _read(
    tmp_path: Path, text: str, here: TrackingPlace | None = None
) -> tuple[Given, ...] | Refusal:
    path = tmp_path / "run.csv"
    path.write_text(text, encoding="utf-8")
    found = read_run(path, None, here, NOW_S, lambda _share: True)
    assert found is not None
    return found


def _read_each_way(path: Path) -> tuple:
    return (
        read_run(path, None, None, NOW_S, lambda _share: True),
        read_stars(path, HERE.site),
        read_one_tap(path, None),
    )


def _heads(latitude_deg: float) -> tuple[str, ...]:
    return (f"# latitude_deg: {latitude_deg}", "# longitude_deg: 11.6", "# pressure_hpa: 950")


def test_the_longest_leg_comes_first(tmp_path) -> None:
    short = [line.replace("run,", "short,") for line in invented_run(minutes=4.0).splitlines()[1:]]
    given = _read(tmp_path, "\n".join([invented_run(), *short]))
    assert [one.leg.label for one in given] == ["run", "short"]
    assert "run.csv" in given[0].origin


def test_without_a_place_of_its_own_a_run_was_taken_here(tmp_path) -> None:
    assert _read(tmp_path, invented_run(), HERE)[0].place is HERE
    assert _read(tmp_path, invented_run())[0].place is None


def test_tonights_axis_counts_only_at_tonights_place(tmp_path) -> None:
    here = _read(tmp_path, invented_run(heads=_heads(48.1)), HERE)[0].place
    assert here.alignment is HERE.alignment
    assert here.air.pressure_hpa == 950.0
    elsewhere = _read(tmp_path, invented_run(heads=_heads(-33.0)), HERE)[0].place
    assert elsewhere.alignment is None
    assert elsewhere.site.latitude_deg == -33.0


def test_a_run_of_another_night_does_not_know_tonights_axis(tmp_path) -> None:
    path = tmp_path / "run.csv"
    path.write_text(invented_run(), encoding="utf-8")
    later = read_run(path, None, HERE, NOW_S + 86_400.0, lambda _share: True)
    assert later[0].place.site is HERE.site
    assert later[0].place.alignment is None


def test_the_scale_in_the_file_is_enough(tmp_path) -> None:
    text = invented_run("px", heads=("# scale_arcsec_per_px: 2",))
    plain = _read(tmp_path, invented_run())[0].leg
    assert _read(tmp_path, text)[0].leg.east_arcsec == pytest.approx(2.0 * plain.east_arcsec)


def test_pixels_alone_ask_for_the_scale(tmp_path) -> None:
    found = _read(tmp_path, invented_run("px"))
    assert isinstance(found, Refusal)
    assert found.needs_scale


@pytest.mark.parametrize("content", [b"", b"\x00\xff\x13" * 400, b"a,b\n1,2"])
def test_no_file_raises(tmp_path, content: bytes) -> None:
    path = tmp_path / "any.bin"
    path.write_bytes(content)
    for found in _read_each_way(path):
        assert isinstance(found, Refusal)
        assert found.sentence.endswith((".", "?"))


def test_a_missing_file_is_named(tmp_path) -> None:
    found = read_one_tap(tmp_path / "gone.csv", None)
    assert isinstance(found, Refusal)
    assert "gone.csv" in found.sentence


@pytest.mark.skipif(not hasattr(os, "mkfifo"), reason="only where there are pipes and devices")
def test_a_folder_a_pipe_and_a_device_are_refused_and_not_opened(tmp_path) -> None:
    pipe = tmp_path / "pipe.csv"
    os.mkfifo(pipe)
    for path in (tmp_path, pipe, Path("/dev/zero")):
        for found in _read_each_way(path):
            assert isinstance(found, Refusal)
            assert "not a file that can be read" in found.sentence


def test_a_small_record_that_is_large_is_refused(tmp_path) -> None:
    path = tmp_path / "large.csv"
    with path.open("wb") as file:
        file.truncate(MOST_BYTES + 1)
    for found in (read_stars(path, HERE.site), read_one_tap(path, None)):
        assert isinstance(found, Refusal)
        assert "too large" in found.sentence


def test_stopped_reading_takes_nothing(tmp_path) -> None:
    path = tmp_path / "run.csv"
    path.write_text(invented_run(minutes=300.0), encoding="utf-8")
    assert read_run(path, None, None, NOW_S, lambda _share: False) is None


@pytest.mark.parametrize(
    ("text", "first", "second"),
    [
        ("", [], []),
        ("2 0.1\n\n4 3", [2.0, 4.0], [0.1, 3.0]),
        ("2;0,1\n4\t3", [2.0, 4.0], [0.1, 3.0]),
    ],
)
def test_pairs(text: str, first: list[float], second: list[float]) -> None:
    assert pairs(text) == (first, second)


@pytest.mark.parametrize(("text", "words"), [("1", "Line 1 needs two"), ("1 2\n3 x", "Line 2: ")])
def test_pairs_that_are_none(text: str, words: str) -> None:
    with pytest.raises(UnusablePairs, match=words):
        pairs(text)
