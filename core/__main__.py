"""The computations without a screen: `python -m core --help`."""

from __future__ import annotations

import argparse
import io
import os
import sys
import time
from collections.abc import Sequence

from core.commands import budget, drift, pole, rotation, tracking

INTERRUPTED = 130  # what a shell reports of a program stopped by Ctrl-C


def main(arguments: Sequence[str], now_utc_s: float) -> int:
    """Runs one sub-command; the exit code is 0, or 2 when the input cannot be used."""
    parser = argparse.ArgumentParser(
        prog="python -m core", description="What Poleward computes, without its screen."
    )
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", required=True)
    budget.add_to(commands)
    drift.add_to(commands)
    pole.add_to(commands)
    rotation.add_to(commands)
    tracking.add_to(commands)
    chosen = parser.parse_args(arguments)
    code: int = chosen.run(chosen, now_utc_s, sys.stdout, sys.stderr)
    return code


def _write_any_character() -> None:
    """A terminal without ′ or ″ shows a question mark instead of failing."""
    for stream in (sys.stdout, sys.stderr):
        if isinstance(stream, io.TextIOWrapper):
            stream.reconfigure(errors="replace")


def _run() -> int:
    _write_any_character()
    try:
        code = main(sys.argv[1:], time.time())
        sys.stdout.flush()
    except BrokenPipeError:  # whoever read the output has seen enough
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0
    except KeyboardInterrupt:
        return INTERRUPTED
    return code


if __name__ == "__main__":
    sys.exit(_run())
