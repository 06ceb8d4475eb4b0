"""Makes sure a Python that is new enough runs; itself readable by any Python since 2.7."""

import os
import subprocess
import sys

OLDEST = (3, 11)
NAMES = ("python3.13", "python3.12", "python3.11", "python3.14", "python3")
QUESTION = ["-c", "import sys; sys.exit(sys.version_info < (3, 11))"]


def candidates(path, windows=os.name == "nt"):
    """Commands on the search path that may be a newer Python, best tested first."""
    found = [["py", "-3"]] if windows else []
    for name in NAMES:
        for folder in path.split(os.pathsep):
            program = os.path.join(folder, name + (".exe" if windows else ""))
            if os.path.isfile(program) and os.access(program, os.X_OK):
                found.append([program])
    return found


def is_new_enough(command):
    """Ask the interpreter itself: a name such as python3.13 may be a wrapper around nothing."""
    with open(os.devnull, "w") as nowhere:
        try:
            return subprocess.call(command + QUESTION, stdout=nowhere, stderr=nowhere) == 0
        except OSError:
            return False


def too_old_sentence(version):
    return (
        "Poleward needs Python 3.11 or later; this is Python "
        + ".".join(str(part) for part in version[:3])
        + " and no newer one was found. Install Python 3.13 and start again with it:"
        + " python3.13 packaging/start.py\n"
    )


def become_new_enough(arguments, version=sys.version_info):
    """Return when this Python will do; else start again under a newer one, or stop and say so."""
    if tuple(version[:2]) >= OLDEST:
        return
    for command in candidates(os.environ.get("PATH", "")):
        if is_new_enough(command):
            try:
                sys.exit(subprocess.call(command + arguments))
            except KeyboardInterrupt:
                sys.exit(130)
    sys.stderr.write(too_old_sentence(version))
    sys.exit(1)
