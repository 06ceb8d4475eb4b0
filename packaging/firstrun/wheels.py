"""Fetches the pinned libraries as ready-built wheels, then installs them from a folder.

Two steps, so that nothing installed is touched before everything needed is at hand.
"""

import os
import subprocess
from pathlib import Path

from firstrun.trouble import Trouble

PIP = ("-m", "pip", "--no-input", "--disable-pip-version-check", "--no-python-version-warning")
EXACTLY = ("--no-deps", "--only-binary", ":all:")
NETWORK_MARKS = (
    "Retrying (",
    "Failed to establish",
    "NewConnectionError",
    "ConnectTimeout",
    "ReadTimeout",
    "getaddrinfo",
    "Name or service not known",
    "ProxyError",
    "SSLError",
    "ConnectionResetError",
    "IncompleteRead",
)
FOLDER_ADVICE = (
    "run\n\n    python3 -m pip download --no-deps --only-binary :all:"
    " -r packaging/{requirements} -d FOLDER\n\non a connected computer of the same kind with the"
    " same Python, carry FOLDER over and start with --wheels FOLDER."
)


def explain(errors: str, requirements: str, folder: Path | None) -> str:
    """One sentence, with the next step, for what pip said on its error stream."""
    if "No space left" in errors or "Errno 28" in errors:
        return "The disk is full: the libraries need about 1.2 GB. Make room, then start again."
    if folder is None and any(mark in errors for mark in NETWORK_MARKS):
        return (
            "The libraries could not be fetched: the network does not answer. Connect this"
            " computer once and start again; later starts need no network. Without a network,"
            " " + FOLDER_ADVICE.format(requirements=requirements)
        )
    unmatched = [
        line.rsplit(" ", 1)[-1]
        for line in errors.splitlines()
        if "No matching distribution found for" in line
    ]
    if unmatched and folder is not None:
        return (
            f"The folder {folder} holds no wheel of {unmatched[0]} that fits this Python and"
            " system. To fill it, " + FOLDER_ADVICE.format(requirements=requirements)
        )
    if unmatched:
        return (
            f"There is no ready-built {unmatched[0]} for this Python and system. Use Python"
            " 3.11 to 3.14, 64 bit (on Windows the x86-64 one), on Linux with glibc 2.34 or"
            " macOS 13, or later."
        )
    said = [line for line in errors.splitlines() if line.strip()] or ["no reason given"]
    return f"The libraries could not be installed: {said[-1]}. Start again once that is settled."


def _pip(python: Path, requirements: Path, folder: Path | None, arguments: list[str]) -> None:
    command = [str(python), *PIP, *arguments, *EXACTLY, "-r", str(requirements)]
    environment = {**os.environ, "PIP_USER": "0"}  # a person's own default would refuse a venv
    run = subprocess.run(
        command, env=environment, stderr=subprocess.PIPE, text=True, errors="replace", check=False
    )
    if run.returncode != 0:
        raise Trouble(explain(run.stderr, requirements.name, folder))


def fetch(python: Path, requirements: Path, into: Path) -> None:
    """Raises Trouble when the network, the disk or a wheel is missing."""
    _pip(
        python,
        requirements,
        None,
        ["download", "--retries", "1", "--timeout", "20", "--dest", str(into)],
    )


def install(python: Path, requirements: Path, folder: Path) -> None:
    """Install from the wheels in `folder` without a network; raises Trouble."""
    _pip(
        python,
        requirements,
        folder,
        ["install", "--quiet", "--no-index", "--find-links", str(folder)],
    )
