"""Checks the program: rules of style, types, then the tests, whose closing line comes last."""

import os
import subprocess
import sys
from collections.abc import Sequence

from firstrun import environment, handover, needs, screen

GATES = (("ruff", "check", "."), ("mypy", "-p", "core", "-p", "app"))
# Of the whole run: two processes take three fifths of the time of one. A file stays in one of
# them, for its tests share what is costly. Whoever names tests gets a single process, to debug in.
SHARED_OUT = ("-n", "2", "--dist", "loadfile")


def surroundings() -> dict[str, str]:
    """The person's environment; drawing in memory where there is no screen, and with one thread for
    matrices, for ours are so small that more would only wait for one another.
    """
    unwanted = ("PYTHONHOME", "PYTHONPATH")
    kept = {name: value for name, value in os.environ.items() if name not in unwanted}
    kept.setdefault("OPENBLAS_NUM_THREADS", "1")
    if sys.platform.startswith("linux") and not screen.has_screen(kept):
        kept.setdefault("QT_QPA_PLATFORM", "offscreen")
    return kept


def failed_gates(python: str, around: dict[str, str]) -> list[str]:
    """Names of the checkers that found faults; each prints its own findings."""
    failed = []
    for gate in GATES:
        print(f"== {' '.join(gate)}", flush=True)
        if subprocess.call([python, "-m", *gate], cwd=environment.CHECKOUT, env=around) != 0:
            failed.append(gate[0])
    return failed


def check(arguments: Sequence[str]) -> int:
    wheels, passed_on = handover.take_wheels(arguments)
    around = surroundings()
    needed = [environment.RUN, environment.TEST]
    folder = environment.locate()
    whole = all(environment.is_complete(folder, requirements) for requirements in needed)
    needs.install(around, with_venv=not whole)
    python = str(environment.ensure(folder, needed, wheels))
    failed = failed_gates(python, around)
    if failed:
        print(
            f"== {' and '.join(failed)} found faults (above): this check fails whatever the"
            " tests say",
            flush=True,
        )
    print("== pytest", flush=True)
    tests = subprocess.call(
        [python, "-m", "pytest", *(passed_on or SHARED_OUT)], cwd=environment.CHECKOUT, env=around
    )
    return tests or int(bool(failed))


def main(arguments: Sequence[str]) -> int:
    return handover.in_words(lambda: check(arguments))
