"""Tries the frozen program as on a computer that has never seen it: no home, no network."""

import json
import os
import subprocess
import sys
import tempfile
import time
from collections.abc import Mapping, Sequence
from pathlib import Path

from firstrun.trouble import Trouble
from freezing import samplelog

LONGEST_S = 90.0
WITHIN_ARCMIN = 0.5  # the rule of the sample log is a small-angle one, its stars cross some degrees
OF_NO_SCREEN = "This plugin does not support"  # said whenever windows are drawn in memory
KEPT = ("PATH", "SYSTEMROOT", "TEMP", "TMP", "LANG", "LC_ALL")


def program_in(folder: Path) -> Path:
    return folder / ("poleward.exe" if os.name == "nt" else "poleward")


def surroundings(home: Path, given: Mapping[str, str]) -> dict[str, str]:
    """What a program finds at a first start; nothing of this checkout or of a person's settings."""
    kept = {name: given[name] for name in KEPT if name in given}
    homes = dict.fromkeys(("HOME", "USERPROFILE", "APPDATA", "LOCALAPPDATA"), str(home))
    return {**kept, **homes, "XDG_RUNTIME_DIR": str(home)}


def cut_off() -> list[str]:
    """The beginning of a command that runs without a network; empty where that cannot be done."""
    for beginning in (["unshare", "-n"], ["unshare", "-rn"]):
        try:
            tried = subprocess.run([*beginning, "true"], capture_output=True, check=False)
        except OSError:
            break
        if tried.returncode == 0:
            return beginning
    return []


def run(command: Sequence[str], home: Path) -> str:
    """What the command prints. Raises Trouble unless it ends in time with exit code 0."""
    try:
        ran = subprocess.run(
            command,
            env=surroundings(home, os.environ),
            cwd=home,
            text=True,
            capture_output=True,
            timeout=LONGEST_S,
            check=False,
            encoding="utf-8",
        )
    except subprocess.TimeoutExpired as late:
        raise Trouble(f"{' '.join(command)} did not end within {LONGEST_S:.0f} s.") from late
    if ran.returncode != 0:
        raise Trouble(
            f"{' '.join(command)} ended with code {ran.returncode}:\n"
            f"{ran.stdout}{ran.stderr}{faults(home)}"
        )
    return ran.stdout


def faults(home: Path) -> str:
    """What the program wrote down of faults inside."""
    return "".join(file.read_text("utf-8") for file in home.rglob("faults.txt"))


def judge_start(printed: str, noted: str) -> None:
    """Raises Trouble unless the program said that it is ready, and noted no fault."""
    if printed.split() != ["ready"]:
        raise Trouble(f"The program should say “ready”; it said: {printed!r}.")
    told = "\n".join(line for line in noted.splitlines() if OF_NO_SCREEN not in line)
    if told.strip():
        raise Trouble(f"The program is ready, but noted faults:\n{told}")


def judge_answer(printed: str) -> None:
    """Raises Trouble unless the axis error is the one the sample log was made with."""
    answer = json.loads(printed)
    found = answer["azimuth_error_arcmin"], answer["altitude_error_arcmin"]
    wanted = samplelog.AZIMUTH_ERROR_ARCMIN, 0.0
    if any(abs(f - w) > WITHIN_ARCMIN for f, w in zip(found, wanted, strict=True)):
        raise Trouble(
            f"The axis error of the sample log came out as {found}, not {wanted}"
            " (azimuth, altitude, arcminutes)."
        )


def try_out(program: Path) -> int:
    """Start it twice, then let it compute; says what it saw. Raises Trouble."""
    alone = cut_off()
    print(
        f"Trying {program} {'without a network' if alone else 'with the network there is'}",
        flush=True,
    )
    with tempfile.TemporaryDirectory(prefix="poleward-trial-", ignore_cleanup_errors=True) as empty:
        home = Path(empty)
        for which in ("first", "second"):
            begun = time.monotonic()
            judge_start(run([*alone, str(program), "--check"], home), faults(home))
            print(f"{which} start: ready and ended after {time.monotonic() - begun:.1f} s")
        log = home / "sample.csv"
        log.write_text(samplelog.text(), "utf-8")
        judge_answer(run([*alone, str(program), "core", "drift", str(log), "--json"], home))
        print("computation: as expected")
    return 0


def main(arguments: Sequence[str]) -> int:
    if len(arguments) != 1 or not Path(arguments[0]).is_file():
        print("smoke.py wants the frozen program, such as dist/poleward/poleward", file=sys.stderr)
        return 2
    return try_out(Path(arguments[0]).resolve())
