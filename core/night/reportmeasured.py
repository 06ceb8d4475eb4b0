"""What was measured of the mount beside its drive, for the report of a night."""

from __future__ import annotations

from collections.abc import Iterator

from core.language import marked, say
from core.night.reportnight import Entry, Kind, NightRecord

_TITLES = {
    Kind.GUIDING: marked("Guiding"),
    Kind.POINTING: marked("Pointing"),
    Kind.VIBRATION: marked("Vibration"),
}


def measured(night: NightRecord) -> Iterator[tuple[str, Entry]]:
    """A title with each entry, guiding first."""
    for kind, title in _TITLES.items():
        for entry in night.of_kind(kind):
            yield say(title), entry
