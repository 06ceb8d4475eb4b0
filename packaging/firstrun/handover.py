"""Reads this tool's own option, hands over to another program, and words what goes wrong."""

import os
import subprocess
import sys
from collections.abc import Callable, Mapping, Sequence
from pathlib import Path

from firstrun.trouble import Trouble


def take_wheels(arguments: Sequence[str]) -> tuple[Path | None, list[str]]:
    """Split `--wheels FOLDER` off; everything else is passed on. Raises Trouble."""
    rest = list(arguments)
    for index, argument in enumerate(rest):
        name, equals, value = argument.partition("=")
        if name == "--wheels":
            following = rest[index + 1 : index + 2] if not equals else [value]
            del rest[index : index + (1 if equals else 2)]
            return _folder(following[0] if following else ""), rest
    return None, rest


def _folder(text: str) -> Path:
    folder = Path(text).expanduser().absolute()
    if not text or not any(folder.glob("*.whl")):
        raise Trouble(f"--wheels wants a folder with wheels (*.whl); there are none in '{text}'.")
    return folder


def become(command: Sequence[str], environment: Mapping[str, str]) -> int:
    """Run the command in this process's place; returns its exit code where that is not possible."""
    sys.stdout.flush()
    sys.stderr.flush()
    if os.name == "posix":
        os.execve(command[0], list(command), dict(environment))
    try:
        return subprocess.call(list(command), env=dict(environment))
    except KeyboardInterrupt:
        return 130


def in_words(job: Callable[[], int]) -> int:
    """The job's exit code; troubles become their sentence on the error stream and code 1."""
    try:
        return job()
    except Trouble as trouble:
        print(trouble, file=sys.stderr)
    except OSError as fault:
        print(
            f"The start failed at {fault.filename or 'a file'}: {fault.strerror or fault}."
            " Check free space and permissions there, then start again.",
            file=sys.stderr,
        )
    except KeyboardInterrupt:
        print("\nStopped. The next start takes it up from here.", file=sys.stderr)
        return 130
    return 1
