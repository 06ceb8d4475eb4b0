"""Build deep_sky.csv, the table of clusters, nebulae and galaxies, from the PyPI package pyongc.

Run once, by hand: `python resources/build_deep_sky.py` (needs pyongc, astropy). The database inside
the package is read directly. The same input gives the same file, byte for byte; a row whose
constellation disagrees with its place, or a name given to two objects, stops the build.
"""

from __future__ import annotations

import csv
import re
import sqlite3
import sys
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

import numpy as np
from astropy import units
from astropy.coordinates import ICRS, get_constellation

HERE = Path(__file__).parent
HEADER = (
    "name", "other_names", "kind", "constellation", "ra_deg", "dec_deg",
    "magnitude", "magnitude_band", "size_arcmin",
)  # fmt: skip
KINDS = {
    "*": "star", "**": "double star", "*Ass": "star group", "OCl": "open cluster",
    "GCl": "globular cluster", "Cl+N": "cluster with nebula", "G": "galaxy",
    "GPair": "pair of galaxies", "GTrpl": "triplet of galaxies", "GGroup": "group of galaxies",
    "PN": "planetary nebula", "HII": "emission nebula", "EmN": "emission nebula",
    "DrkN": "dark nebula", "Neb": "nebula", "RfN": "reflection nebula", "SNR": "supernova remnant",
    "Nova": "nova", "Other": "object of unknown kind",
}  # fmt: skip
ABSENT = ("NonEx", "Dup")
SPELLING = {"Chamaleon": "Chamaeleon", "Crux ": "Crux", "Ophiucus": "Ophiuchus"}  # astropy's slips
SERPENS = {"Se1": "Ser", "Se2": "Ser"}  # its head and tail
# Names the source gives to a neighbour: taken from the first, given to the second.
MISPLACED = {"Flame Nebula": ("IC 434", "NGC 2024")}
# Names that two objects bear together: a pair that meets, or a nebula and the stars within.
SHARED = frozenset({
    "Eagle Nebula", "Antennae Galaxies", "Eyes", "Butterfly Galaxies", "Siamese Twins",
    "Eastern Veil", "Network Nebula",
})  # fmt: skip
QUERY = (
    "SELECT name, type, ra, dec, const, majax, vmag, bmag, messier, ngc, ic, commonnames,"
    " identifiers FROM objects"
)


@dataclass(frozen=True)
class Source:
    name: str
    kind: str
    ra_rad: float | None
    dec_rad: float | None
    constellation: str
    size_arcmin: float | None
    v_magnitude: float | None
    b_magnitude: float | None
    messier: str
    ngc: str
    ic: str
    common_names: str
    identifiers: str


def database() -> Path:
    """The package's own database, found without importing the package."""
    spec = find_spec("pyongc")
    if spec is None or spec.origin is None:
        sys.exit("The package pyongc is not installed: pip install --no-deps pyongc")
    return Path(spec.origin).parent / "ongc.db"


def read(path: Path) -> list[Source]:
    connection = sqlite3.connect(f"file:{path}?mode=ro&immutable=1", uri=True)
    try:
        return [Source(*row) for row in connection.execute(QUERY)]
    finally:
        connection.close()


def shown(designation: str) -> str:
    """NGC0224 → NGC 224, IC0080 NED01 → IC 80 NED01, Mel022 → Mel 22."""
    found = re.fullmatch(r"([A-Za-z]+?)\s*0*(\d.*)", designation)
    return f"{found[1]} {found[2]}" if found else designation


def other_names(row: Source, duplicates: list[str]) -> list[str]:
    """Messier and Caldwell numbers, common names, and numbers given to it a second time."""
    names = [f"M {int(row.messier)}"] if row.messier else []
    names += [shown(part) for part in row.identifiers.split(",") if re.match(r"C \d+$", part)]
    names += [part for part in row.common_names.split(",") if part]
    names += sorted(duplicates)
    own = shown(row.name)
    names += [name for name, (_, owner) in MISPLACED.items() if owner == own]
    left_out = {own, *(name for name, (owner, _) in MISPLACED.items() if owner == own)}
    return [name for name in dict.fromkeys(names) if name not in left_out]


def duplicates(rows: list[Source]) -> dict[str, list[str]]:
    """Second designations by the first, as the source's duplicate rows point to them."""
    found: dict[str, list[str]] = {}
    for row in rows:
        if row.kind != "Dup":
            continue
        for catalogue, number in (("M", row.messier), ("NGC", row.ngc), ("IC", row.ic)):
            if number:
                found.setdefault(f"{catalogue}{number}", []).append(shown(row.name))
                break
    return found


def check_constellations(rows: list[Source], names: list[str]) -> None:
    """The source's abbreviation against the borders; rows on a border may differ."""
    different = [
        row.name
        for row, name in zip(rows, names, strict=True)
        if SERPENS.get(row.constellation, row.constellation) != name
    ]
    if len(different) > len(rows) // 200:
        sys.exit(f"{len(different)} constellations disagree with the places: {different[:20]}")


def check_names(table: list[list[str]]) -> None:
    seen: dict[str, str] = {}
    for name, others, *_ in table:
        for one in (name, *filter(None, others.split("|"))):
            if one in seen and one not in SHARED:
                sys.exit(f"{one} is given to {seen[one]} and to {name}.")
            seen[one] = name


def build(path: Path) -> int:
    """Write the table to `path`; the number of objects."""
    rows = read(database())
    second = duplicates(rows)
    kept = [row for row in rows if row.kind not in ABSENT and row.ra_rad is not None]
    ra_rad, dec_rad = np.array([(row.ra_rad, row.dec_rad) for row in kept]).T
    places = ICRS(ra_rad * units.rad, dec_rad * units.rad)
    check_constellations(kept, list(get_constellation(places, short_name=True)))
    full = [SPELLING.get(str(name), str(name)) for name in get_constellation(places)]
    table = [
        line(row, constellation, [*second.get(row.name, []), *second.get(f"M{row.messier}", [])])
        for row, constellation in zip(kept, full, strict=True)
    ]
    table.sort(key=lambda cells: (float(cells[6] or "99"), cells[0]))
    check_names(table)
    with path.open("w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file, lineterminator="\n")
        writer.writerow(HEADER)
        writer.writerows(table)
    return len(table)


def line(row: Source, constellation: str, second: list[str]) -> list[str]:
    magnitude, band = row.v_magnitude, "V"
    if magnitude is None:
        magnitude, band = row.b_magnitude, "B"
    return [
        shown(row.name),
        "|".join(other_names(row, second)),
        KINDS[row.kind],
        constellation,
        f"{np.degrees(row.ra_rad):.5f}",
        f"{np.degrees(row.dec_rad):.5f}",
        *(("", "") if magnitude is None else (f"{magnitude:.2f}", band)),
        "" if row.size_arcmin is None else f"{row.size_arcmin:.2f}",
    ]


if __name__ == "__main__":
    print(build(HERE / "deep_sky.csv"), "objects")
