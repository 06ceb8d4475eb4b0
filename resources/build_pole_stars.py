"""Build pole_stars.csv, the stars around both poles, from Hipparcos-2 and star_names.csv.

Run once, by hand: `python resources/build_pole_stars.py` (needs what build_stars.py needs).
The same input gives the same file, byte for byte.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
from build_stars import HERE, at_j2000, constellations, read_bright, read_names, write

FAINTEST_HP = 8.0
# Within 3 degrees of the pole of any date from 1990 to 2060: precession moves it 20 arcmin by then.
WITHIN_DEG = 3.4


def build(path: Path) -> int:
    """Write the table to `path`; the number of stars."""
    stars = at_j2000(read_bright(FAINTEST_HP))
    near = np.abs(stars["dec_deg"]) > 90.0 - WITHIN_DEG
    stars = {name: column[near] for name, column in stars.items()}
    found = constellations(stars["ra_deg"], stars["dec_deg"])
    return write(path, stars, found, read_names())


if __name__ == "__main__":
    print(f"{build(HERE / 'pole_stars.csv')} stars written to {HERE / 'pole_stars.csv'}")
