"""Opens the program: system needs first, then the environment, then the window."""

import os
from collections.abc import Sequence

from firstrun import environment, handover, needs, screen


def program_environment(arguments: Sequence[str]) -> dict[str, str]:
    """The program's modules come from this checkout only; the check of the start has no screen."""
    unwanted = ("PYTHONHOME", "PYTHONPATH")
    kept = {name: value for name, value in os.environ.items() if name not in unwanted}
    if "--check" in arguments:
        kept.setdefault("QT_QPA_PLATFORM", "offscreen")
    return {**kept, "PYTHONPATH": str(environment.CHECKOUT)}


def open_program(arguments: Sequence[str]) -> int:
    wheels, passed_on = handover.take_wheels(arguments)
    around = program_environment(passed_on)
    folder = environment.locate()
    needs.require(around, with_venv=not environment.is_complete(folder, environment.RUN))
    screen.require(around)
    python = environment.ensure(folder, [environment.RUN], wheels)
    return handover.become([str(python), "-P", "-m", "app", *passed_on], around)


def main(arguments: Sequence[str]) -> int:
    return handover.in_words(lambda: open_program(arguments))
