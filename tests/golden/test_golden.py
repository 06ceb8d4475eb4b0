"""What the program answered before it was rebuilt, it answers still.

`inputs` holds drift logs, a run and logs of nights (all invented; `inputs/make.py` made them),
`expected` the answers. Words must be the same; a number may differ by one in its last printed
place, or by a millionth, since constants of nature have been put in one place. To keep new answers
on purpose, run this file: `python tests/golden/test_golden.py`, and say in the commit why.
"""

from __future__ import annotations

import json
import re
import shutil
import sys
from collections.abc import Callable
from contextlib import redirect_stderr, redirect_stdout
from io import StringIO
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

import pytest

HERE = Path(__file__).parent
sys.path.insert(0, str(HERE.parents[1]))

from app.night.archive import ExportForm, NightFiles  # noqa: E402
from app.night.procedure import Procedure  # noqa: E402
from app.night.recorder import Recorder  # noqa: E402
from app.night.snapshot import TurnMade  # noqa: E402
from app.night.tonight import Tonight  # noqa: E402
from app.store.nights import NightLog  # noqa: E402
from core.__main__ import main  # noqa: E402
from core.night.words import when  # noqa: E402

NOW_UTC_S = 1_795_554_000.0  # an hour after the first reading
NUMBER = re.compile(r"(?<![\w.])[+−-]?\d+(?:\.\d+)?(?:e[+-]?\d+)?")
RELATIVE = 2e-6
SITE = ["--latitude", "48.1", "--longitude", "11.6", "--elevation", "520"]
SOUTH = ["--latitude", "-33.4", "--longitude", "20"]
OPTICS = ["--focal-length", "600", "--pixel", "3.8", "--width", "4000", "--height", "3000"]

COMMANDS: dict[str, list[str]] = {
    "drift_plain": ["drift", "plain.csv", *SITE],
    "drift_unplaced": ["drift", "plain.csv"],
    "drift_plain_json": ["drift", "plain.csv", *SITE, "--json"],
    "drift_placed": ["drift", "placed.csv"],
    "drift_placed_json": ["drift", "placed.csv", "--json", "--aim", "refracted"],
    "drift_southern": ["drift", "southern.csv"],
    "drift_southern_json": ["drift", "southern.csv", "--json", "--angle", "3"],
    "drift_semicolon": ["drift", "semicolon.csv"],
    "drift_tabs_json": ["drift", "tabs.csv", "--json", "--reading-step", "1"],
    "drift_one_star": ["drift", "one_star.csv"],
    "drift_one_star_json": ["drift", "one_star.csv", "--json", "--flexure", "2"],
    "drift_rejected": ["drift", "rejected.csv"],
    "drift_rejected_json": ["drift", "rejected.csv", "--json"],
    "drift_empty": ["drift", "empty.csv", *SITE],
    "drift_few": ["drift", "few.csv"],
    "drift_missing": ["drift", "nowhere.csv", *SITE],
    "budget": ["budget", "--declination", "20", *OPTICS, "--exposure", "180", *SITE],
    "budget_json": [
        *["budget", "--declination", "-45", *OPTICS, "--exposure", "300", "--guide-star", "70"],
        *[*SOUTH, "--azimuth-error", "4", "--altitude-error", "-2", "--json"],
    ],
    "budget_refused": ["budget", "--declination", "-80", *OPTICS, "--exposure", "60", *SITE],
    "pole": ["pole", *SITE, "--utc", "2026-11-24T20:00:00Z"],
    "pole_json": ["pole", *SOUTH, "--utc", "2026-11-24T20:00:00Z", "--json"],
    "pole_later": ["pole", *SITE, "--utc", "2058-01-01T00:00:00Z"],
    "rotation": ["rotation", "--azimuth", "120", "--altitude", "40", *SITE],
    "rotation_json": [
        *["rotation", "--ra", "5h14m32s", "--dec", "-8.2", "--utc", "2026-11-24T22:00:00Z"],
        *[*SITE, "--json"],
    ],
    "tracking": ["tracking", "run.csv"],
    "tracking_json": ["tracking", "run.csv", "--json", "--worm-period", "480", *SITE],
    "tracking_refused": ["tracking", "plain.csv"],
}  # fmt: skip


def said(arguments: list[str]) -> str:
    """What the command prints, and its exit code."""
    given = [str(HERE / "inputs" / one) if one.endswith(".csv") else one for one in arguments]
    out, err = StringIO(), StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = main(given, NOW_UTC_S)
    text = f"{out.getvalue()}--- {code}\n{err.getvalue()}"
    return text.replace(str(HERE / "inputs"), "inputs")


def nights_of(name: str, folder: Path) -> str:
    """All that comes out of a log of nights, as JSON and as the files that nights leave as."""
    path = folder / f"{name}.sqlite"
    shutil.copy(HERE / "inputs" / path.name, path)
    notices: list[str] = []
    log = NightLog.open(path, lambda: NOW_UTC_S, lambda _: None, notices.append)
    try:
        told = _told(log, folder)
    finally:
        assert log.close()
    told["notices"] = [one.replace(str(folder), "folder") for one in notices]
    return json.dumps(told, indent=1, sort_keys=True, ensure_ascii=False)


def _told(log: NightLog, folder: Path) -> dict[str, Any]:
    night = log.resume_or_begin_night(NOW_UTC_S)
    keys = [one.night_id for one in log.archive.overview()]
    files = NightFiles(log.archive, when)
    exported: dict[str, list[str]] = {}
    for key in keys:
        for form in (ExportForm.HTML, ExportForm.CSV, ExportForm.JSON):
            target = folder / f"{key}.{form.name}"
            files.export(key, form, target)
            exported[f"night {keys.index(key)} {form.name}"] = _lines(target.read_text("utf-8"))
    return {
        "resumed": night.resumed,
        "site": str(night.site),
        "air": str(night.air),
        "aim": night.aim_name,
        "target_arcmin": night.target_arcmin,
        "legs": [
            [one.leg.label, one.star_name, one.ended, one.discarded, one.leg.utc_s.size]
            for state in night.axis_states
            for one in state.legs
        ],
        "stage": _stage(log, night),
        "exported": exported,
    }


def _lines(text: str) -> list[str]:
    return [line for line in text.splitlines() if line.strip()]


def _stage(log: NightLog, night: Any) -> dict[str, Any]:
    """Where the person stands in the procedure, after the night has been taken up again."""
    recorder = Recorder(log, lambda _: None)
    tonight = Tonight(recorder)
    procedure = Procedure(tonight, recorder)
    tonight.resume(night)
    procedure.resume(night.night_id)
    guide = procedure.guide
    made = guide.last_turn
    return {
        "stage": guide.stage.name,
        "north": guide.north.name,
        "axis_state": guide.axis_state,
        "turns_made": guide.turns_made,
        "exchanged": sorted(guide.exchanged),
        "goal_arcmin": tonight.goal.arcmin,
        "north_set": tonight.north_set.name,
        "turn": None if made is None else _turn(made),
        "before": None if made is None or made.was is None else made.was.sky_arcmin.tolist(),
    }


def _turn(made: TurnMade) -> list[Any]:
    turn = made.turn
    assert turn is not None
    return [made.how.name, turn.azimuth_arcmin, turn.altitude_arcmin, made.azimuth_turns]


NIGHTS = ("nights_1", "nights_2")


def in_a_folder(name: str) -> str:
    with TemporaryDirectory() as folder:
        return nights_of(name, Path(folder))


ANSWERS: dict[str, Callable[[], str]] = {
    **{name: lambda given=given: said(given) for name, given in COMMANDS.items()},
    **{name: lambda name=name: in_a_folder(name) for name in NIGHTS},
}


def differences(told: str, expected: str) -> list[str]:
    """Lines that differ in a word, or in a number by more than is allowed."""
    found = []
    now, then = told.splitlines(), expected.splitlines()
    if len(now) != len(then):
        found.append(f"{len(now)} lines instead of {len(then)}")
    for one, other in zip(now, then, strict=False):
        if NUMBER.sub("#", one) != NUMBER.sub("#", other):
            found.append(f"{one!r} instead of {other!r}")
            continue
        pairs = zip(NUMBER.findall(one), NUMBER.findall(other), strict=True)
        found += [f"{a} instead of {b} in {one!r}" for a, b in pairs if not _near(a, b)]
    return found


def _near(one: str, other: str) -> bool:
    if one == other:
        return True
    if "." not in other:
        return False  # a count, a date, a key
    here, there = (float(text.replace("−", "-")) for text in (one, other))
    mantissa, _, exponent = other.partition("e")
    last = 10.0 ** (int(exponent or 0) - len(mantissa.partition(".")[2]))
    return abs(here - there) <= max(RELATIVE * abs(there), 1.001 * last, 1e-9)


@pytest.mark.parametrize("name", ANSWERS)
def test_the_answer_is_what_it_was(name: str) -> None:
    expected = (HERE / "expected" / f"{name}.txt").read_text(encoding="utf-8")
    assert not differences(ANSWERS[name](), expected)


def test_a_changed_word_or_number_is_seen() -> None:
    assert differences("the axis is 3.21′ east", "the axis is 3.21′ west")
    assert differences("the axis is 3.21′ east", "the axis is 3.24′ east")
    assert differences("7 legs", "8 legs")
    assert not differences("the axis is 3.21′ east", "the axis is 3.22′ east")


if __name__ == "__main__":
    for name, answer in ANSWERS.items():
        (HERE / "expected").mkdir(exist_ok=True)
        (HERE / "expected" / f"{name}.txt").write_text(answer(), encoding="utf-8")
