"""Which Linux distribution this is and the one command that installs something on it."""

import os
import shutil
from collections.abc import Iterable
from dataclasses import dataclass
from pathlib import Path

OS_RELEASE = Path("/etc/os-release")
DPKG_INFO = Path("/var/lib/dpkg/info")
APT_LISTS = Path("/var/lib/apt/lists")
INSTALLERS = {
    "debian": "apt-get install",
    "fedora": "dnf install",
    "arch": "pacman -S --needed",
}
FAMILIES = {
    "debian": "debian",
    "ubuntu": "debian",
    "fedora": "fedora",
    "rhel": "fedora",
    "centos": "fedora",
    "arch": "arch",
}
# Renamed where the 64-bit time change was made (Debian 13, Ubuntu 24.04 and later).
RENAMED_T64 = {"libglib2.0-0": "libglib2.0-0t64"}


@dataclass(frozen=True)
class Need:
    """Something the system lacks, and the package that brings it per family of distributions."""

    what: str
    debian: str
    fedora: str
    arch: str


def family(os_release: str) -> str | None:
    """The family named in the text of /etc/os-release; None when it is none of those known."""
    values = dict(line.split("=", 1) for line in os_release.splitlines() if "=" in line)
    names = [values.get("ID", ""), *values.get("ID_LIKE", "").strip("\"'").split()]
    return next(
        (FAMILIES[name] for name in (n.strip("\"'") for n in names) if name in FAMILIES), None
    )


def this_family() -> str | None:
    try:
        return family(OS_RELEASE.read_text(encoding="utf-8"))
    except OSError:
        return None


def packages(needs: Iterable[Need], of_family: str) -> list[str]:
    """Package names without repeats, in the order of the needs."""
    names = dict.fromkeys(getattr(need, of_family) for need in needs)
    if of_family == "debian" and any(DPKG_INFO.glob("*t64*.list")):
        return [RENAMED_T64.get(name, name) for name in names]
    return list(names)


def command(
    needs: Iterable[Need], of_family: str | None, is_root: bool | None = None
) -> str | None:
    """The line to type, or None on a distribution whose package names are not known here."""
    if of_family is None:
        return None
    steps = [f"{INSTALLERS[of_family]} {' '.join(packages(needs, of_family))}"]
    if of_family == "debian" and not any(APT_LISTS.glob("*_Packages*")):
        steps.insert(0, "apt-get update")
    if os.geteuid() == 0 if is_root is None else is_root:
        return " && ".join(steps)
    if shutil.which("sudo"):
        return " && ".join(f"sudo {step}" for step in steps)
    return f"su -c '{' && '.join(steps)}'"  # where root has a password, Debian installs no sudo
