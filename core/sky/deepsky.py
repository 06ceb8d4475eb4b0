"""Clusters, nebulae and galaxies: finding one by any of its names, and all of them as arrays."""

from __future__ import annotations

import csv
import re
import unicodedata
from dataclasses import dataclass, field
from functools import cache
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from core.language import marked, say

Floats = NDArray[np.float64]

TABLE = Path(__file__).parents[2] / "resources" / "deep_sky.csv"
_HEADER = [
    *("name", "other_names", "kind", "constellation", "ra_deg", "dec_deg"),
    *("magnitude", "magnitude_band", "size_arcmin"),
]
# What an object may be, as the table has it; said where it is shown.
KINDS = frozenset(
    {
        marked("galaxy"),
        marked("open cluster"),
        marked("star"),
        marked("object of unknown kind"),
        marked("double star"),
        marked("pair of galaxies"),
        marked("globular cluster"),
        marked("planetary nebula"),
        marked("nebula"),
        marked("emission nebula"),
        marked("cluster with nebula"),
        marked("star group"),
        marked("reflection nebula"),
        marked("triplet of galaxies"),
        marked("group of galaxies"),
        marked("supernova remnant"),
        marked("nova"),
        marked("dark nebula"),
    }
)
_MESSIER = re.compile(r"M \d+$")
_MARKS = re.compile(r"[\W_]+")
_LONG_FORM = re.compile(r"^(?:messier|caldwell)(?=\d)")
_LEADING_ZEROS = re.compile(r"(?<!\d)0+(?=\d)")
_NUMBERED = re.compile(r"(M|C|NGC|IC) \d")


@dataclass(frozen=True)
class DeepSkyObject:
    """ICRS place; proper motion is nothing at this distance.

    `magnitude` is visual where `magnitude_band` is "V", blue where it is "B" (galaxies look up to
    a magnitude brighter than that), None where none is known. `size_arcmin`: its longer axis.
    """

    name: str
    other_names: tuple[str, ...]
    kind: str
    constellation: str
    ra_deg: float
    dec_deg: float
    magnitude: float | None
    magnitude_band: str
    size_arcmin: float | None

    @property
    def messier(self) -> str | None:
        """Its number in Messier's list, as "M 31"."""
        names = (self.name, *self.other_names)
        return next((name for name in names if _MESSIER.match(name)), None)

    @property
    def common_names(self) -> tuple[str, ...]:
        """Names that are not a number in a catalogue."""
        return tuple(name for name in self.other_names if not _NUMBERED.match(name))

    @property
    def title(self) -> str:
        """What people call it: "M 31, Andromeda Galaxy", "NGC 7000, North America Nebula"."""
        return ", ".join([self.messier or self.name, *self.common_names[:1]])


@dataclass(frozen=True, eq=False)
class DeepSky:
    """All objects, brightest first; `ra_deg`, `dec_deg`, `magnitude`, `size_arcmin` (n,) beside.

    Unknown magnitudes and sizes are NaN in the arrays. `names`: every name of every object as
    `search_key` makes it, with the object's index; `endings`: the same from a later word on.
    """

    objects: tuple[DeepSkyObject, ...]
    ra_deg: Floats = field(repr=False)
    dec_deg: Floats = field(repr=False)
    magnitude: Floats = field(repr=False)
    size_arcmin: Floats = field(repr=False)
    names: tuple[tuple[str, int], ...] = field(repr=False)
    endings: tuple[tuple[str, int], ...] = field(repr=False)

    def find(self, text: str) -> DeepSkyObject | None:
        """The object of this name or number ("m31", "NGC 224", "andromeda galaxy"), else None.

        Capitals, spaces, hyphens, accents and leading zeros do not matter. Of two that share a
        name, one of Messier's comes first, then the brighter.
        """
        key = search_key(text)
        hits = [self.objects[index] for name, index in self.names if key and name == key]
        return min(hits, key=lambda hit: hit.messier is None, default=None)

    def beginning_with(self, text: str, limit: int = 20) -> list[DeepSkyObject]:
        """Objects with a name, or a word of one, that begins so; for offering while someone types.

        The exact name first, then Messier's, then the brighter.
        """
        key = search_key(text)
        hits: dict[int, bool] = {}
        for name, index in (*self.names, *self.endings):
            if key and name.startswith(key):
                hits[index] = hits.get(index, False) or name == key
        order = sorted(hits, key=lambda i: (not hits[i], self.objects[i].messier is None, i))
        return [self.objects[index] for index in order[:limit]]


@cache
def load() -> DeepSky:
    """The bundled table, read once. Raises RuntimeError, a sentence, if it cannot be read."""
    return read(TABLE)


def read(path: Path) -> DeepSky:
    """The table that resources/build_deep_sky.py writes. Raises RuntimeError, a sentence."""
    try:
        with path.open(encoding="utf-8", newline="") as file:
            header, *rows = csv.reader(file)
        if header != _HEADER:
            raise ValueError(say("its columns are not the ones expected"))
        return _gathered([_object(row) for row in rows])
    except (OSError, ValueError, csv.Error) as error:
        raise RuntimeError(
            say(
                "The table of clusters, nebulae and galaxies {path} cannot be read "
                "({problem}). Install Poleward again; until then targets can be entered by "
                "their coordinates.",
                path=path,
                problem=error,
            )
        ) from error


def search_key(name: str) -> str:
    """The name without capitals, accents, spaces, marks and leading zeros, for comparing."""
    plain = unicodedata.normalize("NFKD", name).casefold()
    joined = _MARKS.sub("", plain)
    return _LEADING_ZEROS.sub("", _LONG_FORM.sub(lambda found: found[0][0], joined))


def _object(row: list[str]) -> DeepSkyObject:
    name, others, kind, constellation, ra_deg, dec_deg, magnitude, band, size = row
    if kind not in KINDS:
        raise ValueError(say("“{kind}” is no kind of object", kind=kind))
    return DeepSkyObject(
        name,
        tuple(filter(None, others.split("|"))),
        kind,
        constellation,
        float(ra_deg),
        float(dec_deg),
        float(magnitude) if magnitude else None,
        band,
        float(size) if size else None,
    )


def _gathered(objects: list[DeepSkyObject]) -> DeepSky:
    columns = [
        (one.ra_deg, one.dec_deg, _number(one.magnitude), _number(one.size_arcmin))
        for one in objects
    ]
    names = [
        (search_key(name), index)
        for index, one in enumerate(objects)
        for name in (one.name, *one.other_names)
    ]
    endings = [
        (search_key(ending), index)
        for index, one in enumerate(objects)
        for name in one.common_names
        for ending in _endings(name)
    ]
    ra_deg, dec_deg, magnitude, size_arcmin = np.array(columns, dtype=np.float64).T
    return DeepSky(
        *(tuple(objects), ra_deg, dec_deg, magnitude, size_arcmin), tuple(names), tuple(endings)
    )


def _endings(name: str) -> list[str]:
    words = name.split()
    return [" ".join(words[begin:]) for begin in range(1, len(words))]


def _number(value: float | None) -> float:
    return np.nan if value is None else value
