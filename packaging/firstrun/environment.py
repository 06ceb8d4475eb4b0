"""The virtual environment: where it lies, whether it is whole, and how it is made."""

import hashlib
import os
import platform
import shutil
import subprocess
import sys
import tempfile
from pathlib import Path

from firstrun import lock, wheels
from firstrun.trouble import Trouble

CHECKOUT = Path(__file__).resolve().parents[2]
RUN = CHECKOUT / "packaging" / "requirements.txt"
TEST = CHECKOUT / "packaging" / "requirements-test.txt"
LOCK = "lock"
FETCHED = "fetched-"
UNBEARABLE = (os.pathsep, '"')


def pins(requirements: Path) -> list[tuple[str, str]]:
    """(name, version) of every pinned line."""
    lines = (line.split("#")[0].strip() for line in requirements.read_text("utf-8").splitlines())
    return [tuple(line.split("==")) for line in lines if line]


def python_mark() -> str:
    return f"{sys.implementation.cache_tag} {sys.platform} {platform.machine()}"


def stamp_text(requirements: Path) -> str:
    return f"{python_mark()}\n{hashlib.sha256(requirements.read_bytes()).hexdigest()}\n"


def stamp_path(folder: Path, requirements: Path) -> Path:
    return folder / f"{requirements.stem}.stamp"


def python_of(folder: Path) -> Path:
    return folder / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def site_packages(folder: Path) -> Path:
    if os.name == "nt":
        return folder / "Lib" / "site-packages"
    version = f"python{sys.version_info.major}.{sys.version_info.minor}"
    return folder / "lib" / version / "site-packages"


def stamped(folder: Path, requirements: Path) -> str:
    try:
        return stamp_path(folder, requirements).read_text("utf-8")
    except OSError:
        return ""


def records(requirements: Path) -> set[str]:
    """The folder names in which pip records each pinned package, in lower case."""
    return {
        f"{name.replace('-', '_')}-{version}.dist-info".lower()
        for name, version in pins(requirements)
    }


def installed(folder: Path) -> set[str]:
    try:
        return {name.lower() for name in os.listdir(site_packages(folder))}
    except OSError:
        return set()


def is_complete(folder: Path, requirements: Path) -> bool:
    """Whether the last making ended, for these pins and this Python, and all is still there."""
    if stamped(folder, requirements) != stamp_text(requirements) or not python_of(folder).exists():
        return False
    return records(requirements) <= installed(folder)


def data_folder() -> Path:
    """Where this system keeps a person's program data, for a checkout that cannot be written."""
    if sys.platform == "win32":
        return Path(os.environ.get("LOCALAPPDATA") or "~/AppData/Local").expanduser() / "Poleward"
    if sys.platform == "darwin":
        return Path("~/Library/Application Support/Poleward").expanduser()
    return Path(os.environ.get("XDG_DATA_HOME") or "~/.local/share").expanduser() / "poleward"


def locate(checkout: Path = CHECKOUT) -> Path:
    """.venv in the checkout where that can be used or made, else one in the data folder."""
    beside = checkout / ".venv"
    if is_complete(beside, RUN) or os.access(beside if beside.exists() else checkout, os.W_OK):
        return beside
    digest = hashlib.sha256(stamp_text(RUN).encode()).hexdigest()
    return data_folder() / f"environment-{digest[:12]}"


def ensure(folder: Path, needed: list[Path], from_wheels: Path | None = None) -> Path:
    """Return the environment's Python, after making or completing the environment if needed.

    Raises Trouble when that is not possible.
    """
    if not all(is_complete(folder, requirements) for requirements in needed):
        _claim(folder)
        with lock.one_at_a_time(folder / LOCK):
            for requirements in needed:
                if not is_complete(folder, requirements):
                    _complete(folder, requirements, from_wheels)
    return python_of(folder)


def _claim(folder: Path) -> None:
    """Make the folder ours; refuse one that something else has filled."""
    if any(mark in str(folder) for mark in UNBEARABLE):
        raise Trouble(
            f"The path {folder} holds one of the characters {' '.join(UNBEARABLE)} which"
            " Python or the window library cannot bear. Move the program to another"
            " folder, then start again."
        )
    folder.mkdir(parents=True, exist_ok=True)
    if any(folder.iterdir()) and not (folder / LOCK).exists():
        raise Trouble(
            f"The folder {folder} was filled by something else. Move it away, then start again."
        )


def _complete(folder: Path, requirements: Path, from_wheels: Path | None) -> None:
    if not _is_sound(folder):
        print(f"Making the virtual environment {folder}", flush=True)
        begin_afresh(folder)
    for interrupted in folder.glob(f"{FETCHED}*"):
        shutil.rmtree(interrupted)
    python = python_of(folder)
    with tempfile.TemporaryDirectory(dir=folder, prefix=FETCHED) as fetched:
        if from_wheels is None:
            print("Fetching the pinned libraries (once; later starts need no network)", flush=True)
            wheels.fetch(python, requirements, Path(fetched))
        stamp = stamp_path(folder, requirements)
        stamp.unlink(missing_ok=True)
        print("Installing them (about a minute)", flush=True)
        wheels.install(python, requirements, from_wheels or Path(fetched))
        stamp.write_text(stamp_text(requirements), "utf-8")


def _is_sound(folder: Path) -> bool:
    """Whether an earlier making for this Python ended, so that pins may be exchanged in place."""
    first_line = stamped(folder, RUN).partition("\n")[0]
    return first_line == python_mark() and python_of(folder).exists()


def begin_afresh(folder: Path) -> None:
    """Throw away what is there, the lock apart, and make an empty environment."""
    for entry in folder.iterdir():
        if entry.is_dir() and not entry.is_symlink():
            shutil.rmtree(entry)
        elif entry.name != LOCK:
            entry.unlink()
    base = getattr(sys, "_base_executable", None) or sys.executable
    made = subprocess.run(
        [base, "-m", "venv", str(folder)], capture_output=True, text=True, check=False
    )
    if made.returncode != 0:
        said = (made.stdout + made.stderr).strip().splitlines() or ["no reason given"]
        raise Trouble(f"Python could not make the virtual environment {folder}: {said[-1]}")
