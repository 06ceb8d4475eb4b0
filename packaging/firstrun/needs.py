"""Everything the system itself must have first, and the sentence that names what is missing."""

import importlib.util
import os
import subprocess
import sys
from collections.abc import Callable, Mapping, Sequence

from firstrun import distribution, libraries, screen
from firstrun.distribution import Need
from firstrun.trouble import Trouble


def venv_need() -> list[Need]:
    """Debian splits the making of virtual environments off into a package of its own."""
    if all(importlib.util.find_spec(name) for name in ("venv", "ensurepip")):
        return []
    version = f"{sys.version_info.major}.{sys.version_info.minor}"
    return [
        Need(
            f"the venv module of Python {version}",
            f"python{version}-venv",
            "python3-libs python3-pip",
            "python python-pip",
        )
    ]


def of_system(
    environment: Mapping[str, str], with_venv: bool, more: Callable[[], list[Need]] = list
) -> list[Need]:
    """What is missing; only Linux leaves anything to look for beside the venv module.

    `more` looks for what a purpose of its own needs.
    """
    needs = (venv_need() if with_venv else []) + more()
    if sys.platform.startswith("linux"):
        needs += libraries.missing(screen.platforms(environment), environment)
    return needs


def sentence(needs: Sequence[Need], line: str | None) -> str:
    listed = ", ".join(need.what for need in needs)
    if line is None:
        return (
            f"This system lacks: {listed}. Install them with its package manager, then start again."
        )
    return f"This system lacks: {listed}. Install them with\n\n    {line}\n\nthen start again."


def require(
    environment: Mapping[str, str], with_venv: bool, more: Callable[[], list[Need]] = list
) -> None:
    """Raise Trouble naming everything missing at once, so that one command is enough."""
    needs = of_system(environment, with_venv, more)
    if needs:
        raise Trouble(sentence(needs, distribution.command(needs, distribution.this_family())))


def install(
    environment: Mapping[str, str], with_venv: bool, more: Callable[[], list[Need]] = list
) -> None:
    """As root on a Debian family system install what is missing; elsewhere as `require`."""
    needs = of_system(environment, with_venv, more)
    may = hasattr(os, "geteuid") and os.geteuid() == 0
    if not needs or not may or distribution.this_family() != "debian":
        return require(environment, with_venv, more)
    names = distribution.packages(needs, "debian")
    print(f"Installing what this system lacks: {' '.join(names)}", flush=True)
    quiet = {**os.environ, "DEBIAN_FRONTEND": "noninteractive"}
    for step in (["update"], ["install", "-y", "--no-install-recommends", *names]):
        if subprocess.call(["apt-get", "-q", *step], env=quiet) != 0:
            raise Trouble(
                f"apt-get {step[0]} failed (above). "
                + sentence(needs, distribution.command(needs, "debian"))
            )
    importlib.invalidate_caches()
    return require(environment, with_venv, more)
