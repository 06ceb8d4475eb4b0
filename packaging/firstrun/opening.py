"""Opens the program: system needs first, then the environment, then the window."""

import os
from collections.abc import Sequence

from firstrun import environment, handover, needs, screen


def program_environment() -> dict[str, str]:
    """The program's modules come from this checkout and from nowhere else."""
    unwanted = ("PYTHONHOME", "PYTHONPATH")
    kept = {name: value for name, value in os.environ.items() if name not in unwanted}
    return {**kept, "PYTHONPATH": str(environment.CHECKOUT)}


def open_program(arguments: Sequence[str]) -> int:
    wheels, passed_on = handover.take_wheels(arguments)
    folder = environment.locate()
    needs.require(os.environ, with_venv=not environment.is_complete(folder, environment.RUN))
    screen.require(os.environ)
    python = environment.ensure(folder, [environment.RUN], wheels)
    return handover.become([str(python), "-P", "-m", "app", *passed_on], program_environment())


def main(arguments: Sequence[str]) -> int:
    return handover.in_words(lambda: open_program(arguments))
