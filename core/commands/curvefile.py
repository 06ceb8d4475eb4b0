"""The file a command writes a curve to: a new one, so that nothing measured is ever replaced."""

from __future__ import annotations

import os


class UnwritableCurve(Exception):
    """The curve cannot go where it should; the text is a sentence for the person."""


def refuse_if_there(curve: str, log: str) -> None:
    """Raises UnwritableCurve when `curve` is the log itself or another file that is there."""
    if _are_one(curve, log):
        raise UnwritableCurve(
            f"--curve names the measurement itself ({curve}), which the curve would replace; "
            "nothing was written. Give the curve a name of its own."
        )
    if os.path.lexists(curve):
        raise UnwritableCurve(_is_there(curve))


def write_curve(curve: str, text: str) -> None:
    """Writes the text to a file that was not there. Raises UnwritableCurve."""
    try:
        with open(curve, "x", encoding="utf-8") as out:
            out.write(text)
    except FileExistsError:
        raise UnwritableCurve(_is_there(curve)) from None
    except OSError as error:
        raise UnwritableCurve(
            f"The curve could not be written to {curve} ({error.strerror or error}); "
            "name another place."
        ) from None


def _are_one(curve: str, log: str) -> bool:
    try:
        return os.path.samefile(curve, log)
    except OSError:
        return False


def _is_there(curve: str) -> str:
    return (
        f"{curve} is there already and was left as it is; give the curve another name, "
        "or remove that file first."
    )
