"""The frozen program: the window, or with `core` as its first word a computation without it."""

import os
import sys


def window(arguments: list[str]) -> int:
    """What the system lacks is named before the toolkit fails for want of it."""
    from firstrun import needs, screen

    if "--check" in arguments:
        os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    needs.require(os.environ, with_venv=False)
    screen.require(os.environ)
    from app.__main__ import main

    return main(arguments)


def run(arguments: list[str]) -> int:
    if arguments[:1] == ["core"]:
        sys.argv = [sys.argv[0], *arguments[1:]]
        from core.__main__ import _run

        return _run()
    from firstrun import handover

    return handover.in_words(lambda: window(arguments))


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
