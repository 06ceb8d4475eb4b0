"""Which star a name means, against the star list of PyEphem 4.2.1 (LGPL or MIT).

Its places are J2000.0, rounded here to 0.01°; magnitudes are visual, ours Hipparcos Hp.
"""

from __future__ import annotations

import numpy as np
import pytest

from core.sky import catalogues

SAME_STAR_DEG = 0.02
SAME_MAGNITUDE = 0.45  # Hp − V for the reddest of them

# (name, right ascension in degrees, declination in degrees, visual magnitude)
STARS = [
    ("Acamar", 44.57, -40.30, 2.9), ("Achernar", 24.43, -57.24, 0.5),
    ("Acrux", 186.65, -63.10, 0.8), ("Adhara", 104.66, -28.97, 1.5),
    ("Agena", 210.96, -60.37, 0.6), ("Albireo", 292.68, 27.96, 3.0),
    ("Alcor", 201.31, 54.99, 4.0), ("Alcyone", 56.87, 24.11, 2.9),
    ("Aldebaran", 68.98, 16.51, 0.9), ("Alderamin", 319.64, 62.59, 2.5),
    ("Alfirk", 322.16, 70.56, 3.2), ("Algenib", 3.31, 15.18, 2.8),
    ("Algieba", 154.99, 19.84, 2.0), ("Algol", 47.04, 40.96, 2.1), ("Alhena", 99.43, 16.40, 1.9),
    ("Alioth", 193.51, 55.96, 1.8), ("Alkaid", 206.89, 49.31, 1.9), ("Almach", 30.97, 42.33, 2.1),
    ("Alnair", 332.06, -46.96, 1.7), ("Alnilam", 84.05, -1.20, 1.7),
    ("Alnitak", 85.19, -1.94, 1.7), ("Alphard", 141.90, -8.66, 2.0),
    ("Alphecca", 233.67, 26.71, 2.2), ("Alpheratz", 2.10, 29.09, 2.1),
    ("Alshain", 298.83, 6.41, 3.7), ("Altair", 297.70, 8.87, 0.8), ("Ankaa", 6.57, -42.31, 2.4),
    ("Antares", 247.35, -26.43, 1.1), ("Arcturus", 213.92, 19.18, -0.1),
    ("Arkab Posterior", 290.80, -44.80, 4.3), ("Arkab Prior", 290.66, -44.46, 4.0),
    ("Arneb", 83.18, -17.82, 2.6), ("Atlas", 57.29, 24.05, 3.6), ("Atria", 252.17, -69.03, 1.9),
    ("Avior", 125.63, -59.51, 1.9), ("Bellatrix", 81.28, 6.35, 1.6),
    ("Betelgeuse", 88.79, 7.41, 0.5), ("Canopus", 95.99, -52.70, -0.6),
    ("Capella", 79.17, 46.00, 0.1), ("Caph", 2.29, 59.15, 2.3), ("Castor", 113.65, 31.89, 1.6),
    ("Cebalrai", 265.87, 4.57, 2.8), ("Deneb", 310.36, 45.28, 1.2),
    ("Denebola", 177.26, 14.57, 2.1), ("Diphda", 10.90, -17.99, 2.0),
    ("Dubhe", 165.93, 61.75, 1.8), ("Electra", 56.22, 24.11, 3.7), ("Elnath", 81.57, 28.61, 1.6),
    ("Eltanin", 269.15, 51.49, 2.2), ("Enif", 326.05, 9.88, 2.4), ("Etamin", 269.15, 51.49, 2.2),
    ("Fomalhaut", 344.41, -29.62, 1.2), ("Gacrux", 187.79, -57.11, 1.6),
    ("Gienah", 183.95, -17.54, 2.6), ("Hadar", 210.96, -60.37, 0.6), ("Hamal", 31.79, 23.46, 2.0),
    ("Izar", 221.25, 27.07, 2.4), ("Kaus Australis", 276.04, -34.38, 1.8),
    ("Kochab", 222.68, 74.16, 2.1), ("Maia", 56.46, 24.37, 3.9), ("Markab", 346.19, 15.21, 2.5),
    ("Megrez", 183.86, 57.03, 3.3), ("Menkalinan", 89.88, 44.95, 1.9),
    ("Menkar", 45.57, 4.09, 2.5), ("Menkent", 211.67, -36.37, 2.1), ("Merak", 165.46, 56.38, 2.3),
    ("Merope", 56.58, 23.95, 4.1), ("Miaplacidus", 138.30, -69.72, 1.7),
    ("Mimosa", 191.93, -59.69, 1.2), ("Minkar", 182.53, -22.62, 3.0),
    ("Mintaka", 83.00, -0.30, 2.2), ("Mirach", 17.43, 35.62, 2.1), ("Mirfak", 51.08, 49.86, 1.8),
    ("Mirzam", 95.67, -17.96, 2.0), ("Mizar", 200.98, 54.93, 2.2), ("Naos", 120.90, -40.00, 2.2),
    ("Nihal", 82.06, -20.76, 2.8), ("Nunki", 283.82, -26.30, 2.0),
    ("Peacock", 306.41, -56.74, 1.9), ("Phecda", 178.46, 53.69, 2.4),
    ("Polaris", 37.95, 89.26, 2.0), ("Pollux", 116.33, 28.03, 1.2),
    ("Procyon", 114.83, 5.22, 0.4), ("Rasalgethi", 258.66, 14.39, 2.8),
    ("Rasalhague", 263.73, 12.56, 2.1), ("Regulus", 152.09, 11.97, 1.4),
    ("Rigel", 78.63, -8.20, 0.2), ("Rigil Kentaurus", 219.90, -60.83, -0.0),
    ("Rukbat", 290.97, -40.62, 4.0), ("Sabik", 257.59, -15.72, 2.4),
    ("Sadalmelik", 331.45, -0.32, 3.0), ("Sadr", 305.56, 40.26, 2.2),
    ("Saiph", 86.94, -9.67, 2.1), ("Scheat", 345.94, 28.08, 2.4), ("Schedar", 10.13, 56.54, 2.2),
    ("Shaula", 263.40, -37.10, 1.6), ("Sheliak", 282.52, 33.36, 3.5),
    ("Sirius", 101.29, -16.72, -1.4), ("Sirrah", 2.10, 29.09, 2.1),
    ("Spica", 201.30, -11.16, 1.0), ("Suhail", 137.00, -43.43, 2.2),
    ("Sulafat", 284.74, 32.69, 3.2), ("Tarazed", 296.56, 10.61, 2.7),
    ("Taygeta", 56.30, 24.47, 4.3), ("Thuban", 211.10, 64.38, 3.7),
    ("Unukalhai", 236.07, 6.43, 2.6), ("Vega", 279.23, 38.78, 0.0),
    ("Vindemiatrix", 195.54, 10.96, 2.9), ("Wezen", 107.10, -26.39, 1.8),
    ("Zaurak", 59.51, -13.51, 3.0), ("Zubenelgenubi", 222.72, -16.04, 2.8),
]  # fmt: skip


@pytest.mark.parametrize(("name", "ra_deg", "dec_deg", "magnitude"), STARS)
def test_name_means_the_same_star(
    name: str, ra_deg: float, dec_deg: float, magnitude: float
) -> None:
    star = catalogues.load_stars().find(name)
    assert star is not None
    east = (star.ra_deg - ra_deg + 180.0) % 360.0 - 180.0
    assert abs(east) * np.cos(np.radians(dec_deg)) < SAME_STAR_DEG
    assert abs(star.dec_deg - dec_deg) < SAME_STAR_DEG
    assert abs(star.magnitude - magnitude) < SAME_MAGNITUDE
