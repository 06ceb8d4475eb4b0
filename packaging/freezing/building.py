"""Builds the frozen program from this checkout with exactly pinned tools, then tries it."""

import os
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Sequence
from pathlib import Path

from firstrun import environment, handover, needs
from firstrun.distribution import Need
from firstrun.trouble import Trouble
from freezing import trial

FREEZE = environment.CHECKOUT / "packaging" / "requirements-freeze.txt"
SPEC = environment.CHECKOUT / "packaging" / "poleward.spec"
BUILD = environment.CHECKOUT / "build"
DIST = environment.CHECKOUT / "dist"


def tools() -> list[Need]:
    """What building needs of a Linux system beside what the program needs itself."""
    if not sys.platform.startswith("linux"):
        return []
    version = f"{sys.version_info.major}.{sys.version_info.minor}"
    shared = str(sysconfig.get_config_var("INSTSONAME"))
    lacking = []
    if not Path(str(sysconfig.get_config_var("LIBDIR")), shared).exists():
        lacking.append(Need(shared, f"libpython{version}", "python3-libs", "python"))
    if shutil.which("objdump") is None:
        lacking.append(Need("objdump", "binutils", "binutils", "binutils"))
    return lacking


def build(wheels: Path | None) -> Path:
    """Make the frozen program; its folder. Raises Trouble."""
    folder = BUILD / "environment"
    pins = [environment.RUN, FREEZE]
    whole = all(environment.is_complete(folder, requirements) for requirements in pins)
    every_screen = {**os.environ, "QT_QPA_PLATFORM": "xcb"}  # its libraries are taken along
    needs.install(every_screen, with_venv=not whole, more=tools)
    python = environment.ensure(folder, pins, wheels)
    command = [
        str(python),
        "-m",
        "PyInstaller",
        "--noconfirm",
        "--log-level",
        "WARN",
        "--distpath",
        str(DIST),
        "--workpath",
        str(BUILD / "work"),
        str(SPEC),
    ]
    print("Building (some minutes)", flush=True)
    if subprocess.call(command, cwd=environment.CHECKOUT) != 0:
        raise Trouble("The frozen program could not be built: what PyInstaller says stands above.")
    return DIST / "poleward"


def freeze(arguments: Sequence[str]) -> int:
    wheels, rest = handover.take_wheels(arguments)
    if rest:
        raise Trouble(f"Not understood: {' '.join(rest)}. Only --wheels FOLDER is.")
    folder = build(wheels)
    size = sum(file.stat().st_size for file in folder.rglob("*") if not file.is_symlink())
    print(f"{folder}: {size / 1e6:.0f} MB", flush=True)
    return trial.try_out(trial.program_in(folder))


def main(arguments: Sequence[str]) -> int:
    return handover.in_words(lambda: freeze(arguments))
