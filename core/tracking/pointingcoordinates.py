"""What the hand control shows, as a remark in a list of stars says it: ICRS, or of date."""

from __future__ import annotations

import re

from core.alignment.driftlog.numerals import shown
from core.language import say
from core.tracking.pointing import UnusablePointing

_REMARK = re.compile(r"mount[ _-]?coordinates?(?!\w)[\s:=]*(.*)", re.IGNORECASE | re.DOTALL)
_OF_DATE = ("ofdate", "date", "jnow", "epochofdate", "equinoxofdate")
_ICRS = ("icrs", "j2000", "j2000.0", "2000", "2000.0")


def is_of_date(remark: str, line_number: int) -> bool | None:
    """Whether the mount's coordinates are of date from here on; None when a remark is another.

    Raises UnusablePointing for a word that is neither: the two differ by a third of a degree now,
    so that a guess would be taken for an error of the mount.
    """
    said = _REMARK.match(remark.strip(' \t,;"').lstrip("# \t"))
    if said is None:
        return None
    word = re.sub(r"[\s_-]", "", said[1].lower())
    if word in _OF_DATE:
        return True
    if word in _ICRS:
        return False
    raise UnusablePointing(
        say(
            "Line {line}: the mount's coordinates {text} are not known here. Write "
            "“# mount_coordinates: of date” (also JNow) or “# mount_coordinates: ICRS” (also "
            "J2000), whichever the hand control shows.",
            line=line_number,
            text=shown(said[1]),
        )
    )
