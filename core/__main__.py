"""The computations without a screen: `python -m core --help`."""

from __future__ import annotations

import argparse
import io
import sys
import time
from collections.abc import Sequence
from contextlib import redirect_stderr, redirect_stdout, suppress

from core.commands import budget, drift, pole, rotation, tracking
from core.commands.options import Undelivered, deliver, joined

UNDELIVERED = 1
INTERRUPTED = 130  # what a shell reports of a program stopped by Ctrl-C


def main(arguments: Sequence[str], now_utc_s: float) -> int:
    """Runs one sub-command.

    The exit code is 0, 1 when the answer cannot be written, 2 when the input cannot be used.
    """
    parser = argparse.ArgumentParser(
        prog="python -m core", description="What Poleward computes, without its screen."
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    budget.add_to(commands)
    drift.add_to(commands)
    pole.add_to(commands)
    rotation.add_to(commands)
    tracking.add_to(commands)
    out, err = io.StringIO(), io.StringIO()
    try:
        with redirect_stdout(out), redirect_stderr(err):  # help and usage are delivered as well
            chosen = parser.parse_args(joined(arguments))
    except SystemExit as ended:
        raise SystemExit(_delivered(int(ended.code or 0), out.getvalue(), err.getvalue())) from None
    code: int = chosen.run(chosen, now_utc_s, out, err)
    return _delivered(code, out.getvalue(), err.getvalue())


def _delivered(code: int, said: str, complaint: str) -> int:
    """The exit code once both texts are on their way."""
    try:
        if said or sys.stdout is not None:
            deliver(said, sys.stdout)
    except Undelivered as sentence:
        code, complaint = UNDELIVERED, f"{complaint}{sentence}\n"
    with suppress(Undelivered):  # there is nowhere left to say so; the exit code does
        deliver(complaint, sys.stderr)
    return code


def _write_any_character() -> None:
    """A terminal without ′ or ″ shows a question mark instead of failing."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")


def _run() -> int:
    _write_any_character()
    try:
        return main(sys.argv[1:], time.time())
    except SystemExit as ended:
        return int(ended.code or 0)
    except KeyboardInterrupt:
        return INTERRUPTED


if __name__ == "__main__":
    sys.exit(_run())
