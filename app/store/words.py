"""What the person reads when the log of nights is in trouble."""

from __future__ import annotations

import sqlite3
from collections import Counter
from pathlib import Path

from app.store.file import GoneFromPlace, HeldElsewhere, is_damage, is_locked, primary_code
from core.language import say


def cannot_write(path: Path, error: Exception) -> str:
    """Why nothing goes to disk, and what to do."""
    if isinstance(error, HeldElsewhere):
        return held_by_another_copy(path)
    if isinstance(error, GoneFromPlace) and isinstance(error.__cause__, Exception):
        return _cannot_bring_back(path, error.__cause__)
    kept = say(
        "What you measure is kept in memory and writing is tried again every few seconds; "
        "export it as a drift log before you close the program."
    )
    return f"{_cause(path, error)} {kept}"


def _cannot_bring_back(path: Path, error: Exception) -> str:
    gone = say(
        "The log of nights {path} was deleted, moved or replaced while the program ran.", path=path
    )
    still_here = say(
        "This program still has all nights and tries every few seconds to write them there anew. "
        "Do not close it before this message is gone."
    )
    return f"{gone} {_cause(path, error)} {still_here}"


def _cause(path: Path, error: Exception) -> str:
    code = primary_code(error)
    if code == sqlite3.SQLITE_FULL:
        return say("The disk with {folder} is full: free some space on it.", folder=path.parent)
    if is_locked(error):
        return say(
            "The log of nights {path} is held by another program: close that program.", path=path
        )
    if is_damage(error):
        return say(
            "The log of nights {path} is damaged and cannot be set aside: move it elsewhere.",
            path=path,
        )
    if code == sqlite3.SQLITE_IOERR:
        return say(
            "The drive with {folder} does not take data: check that it is still there.",
            folder=path.parent,
        )
    if code in (sqlite3.SQLITE_READONLY, sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_PERM):
        return say(
            "The log of nights {path} cannot be written: allow writing in {folder}.",
            path=path,
            folder=path.parent,
        )
    if isinstance(error, OSError):
        return say(
            "The folder {folder} cannot be made or used ({reason}).",
            folder=path.parent,
            reason=error.strerror or error,
        )
    return say("The log of nights {path} cannot be written ({reason}).", path=path, reason=error)


def held_by_another_copy(path: Path) -> str:
    """A second copy of the program is running: this one."""
    return say(
        "Another copy of this program writes the log of nights {file}: this one only reads it. "
        "What you measure here is kept in memory. Close the other copy, and within seconds it is "
        "written.",
        file=path.name,
    )


def took_over(path: Path) -> str:
    """The other copy is closed."""
    return say(
        "The other copy is closed: this one writes the log of nights {file} now.", file=path.name
    )


def others_settings_stay() -> str:
    """The other copy changed what this one knows as it was, and would write over."""
    return say(
        "While this copy of the program only read, the other one changed what both keep, such as "
        "the equipment or the places. That stays as the other one left it, and what you change of "
        "it here is not kept. Close this copy and open it again to go on with it."
    )


def read_only(path: Path) -> str:
    """Something was to be written into a log that another copy writes."""
    return say(
        "Another copy of this program writes the log of nights, so nothing can be added here. "
        "Close the other copy, then take {file} in.",
        file=path.name,
    )


def joined(path: Path, rows: Counter[str]) -> str:
    """What another copy measured is now with the rest."""
    return say(
        "What was recorded beside {file} by another copy of the program has joined it: {counted}.",
        file=path.name,
        counted=_counted(rows),
    )


def from_newer_version(path: Path, instead: Path) -> str:
    """The file is beyond this program."""
    return say(
        "The log of nights {file} was written by a newer version of this program and is left "
        "untouched; tonight goes into {instead}. Update the program to see the earlier nights.",
        file=path.name,
        instead=instead,
    )


def was_hollow(path: Path) -> str:
    """A file with nothing in it stood where the log should be."""
    return say(
        "The log of nights {path} was empty (0 bytes) and was begun anew. If nights should be in "
        "it, restore a backup on the Log page.",
        path=path,
    )


def set_aside(path: Path, aside: Path, rows: Counter[str] | None) -> str:
    """A broken file was put away, and these of its rows brought over; None: no room for them."""
    names = {"file": path.name, "aside": aside}
    if rows is None:
        return say(
            "The log of nights {file} was damaged. It is kept as {aside} and a new one was begun, "
            "but there was no room to save what can be read of the old one: free some space on "
            "the disk, then salvage it on the Log page, part “Keep safe”.",
            **names,
        )
    if not rows.total():
        return say(
            "The log of nights {file} was damaged. It is kept as {aside} and a new one was begun, "
            "and nothing in the old one could be read.",
            **names,
        )
    return say(
        "The log of nights {file} was damaged. It is kept as {aside} and a new one was begun with "
        "all that could be read of it: {counted}.",
        counted=_counted(rows),
        **names,
    )


def brought_back(path: Path, other: Path | None) -> str:
    """The file was gone from its place; all of it stands there again."""
    if other is None:
        return say(
            "The log of nights {path} was deleted or moved, in whole or in part, while the program "
            "ran. The program still had all nights, tonight as well, and has written them there "
            "anew. Leave the log where it is while the program runs.",
            path=path,
        )
    return say(
        "Another file was put in the place of the log of nights {path} while the program ran. The "
        "program still had all nights, tonight as well, and has written them there anew. The other "
        "file is kept as {other}: if nights are in it, add them on the Log page, part “Keep safe”.",
        path=path,
        other=other,
    )


def _counted(rows: Counter[str]) -> str:
    return say(
        "nights: {nights}, legs: {legs}, readings: {readings:,}",
        nights=rows["nights"],
        legs=rows["legs"],
        readings=rows["samples"],
    )


def no_log(path: Path) -> str:
    """A file to be taken in holds nothing of ours."""
    return say(
        "{file} is not a log of nights, or nothing in it can be read: choose a backup or a log "
        "made by this program. Nothing was changed.",
        file=path.name,
    )


def hollow_file(path: Path) -> str:
    """A file to be taken in has no bytes."""
    return say(
        "{file} is empty (0 bytes): there is nothing in it to take. Choose another file.",
        file=path.name,
    )


def is_whole(path: Path) -> str:
    """The log in use was looked through."""
    return say(
        "{file} is the log of nights in use; it was looked through and is not damaged.",
        file=path.name,
    )


def salvaged_in_use(path: Path) -> str:
    """The log in use was found damaged."""
    return say("{file} was damaged and is salvaged; what was saved is said above.", file=path.name)


def newer_file(path: Path) -> str:
    """A file to be taken in is beyond this program."""
    return say(
        "{file} was written by a newer version of this program: update the program, then take it "
        "in. Nothing was changed.",
        file=path.name,
    )


def took_in(path: Path, taken: Counter[str], is_whole: bool) -> str:
    """What of a file is new in the log."""
    if taken.total():
        said = [say("Saved into the log: {counted}.", counted=_counted(taken))]
    else:
        said = [say("All that can be read of the file is in the log already; nothing was added.")]
    if not is_whole:
        said.append(say("Some of the file cannot be read."))
    return " ".join([*said, say("The old file is kept untouched: {path}.", path=path)])


def backed_up(path: Path, nights: int) -> str:
    """A backup was written and read back."""
    return say(
        "{nights} nights are saved in {path} and were read back without a fault.",
        nights=nights,
        path=path,
    )


def own_file(path: Path) -> str:
    """Something was to be written over a log that is in use."""
    return say(
        "{path} belongs to the log of nights that is in use, and writing there would destroy it. "
        "Nothing was written: choose another name or another folder.",
        path=path,
    )


def cannot_back_up(path: Path, error: Exception) -> str:
    """No backup was made."""
    return say(
        "The backup {path} could not be written ({reason}). Choose a place with enough room that "
        "may be written; the log of nights is not affected.",
        path=path,
        reason=getattr(error, "strerror", None) or error,
    )
