"""The drift log: a text form for readings of watched stars.

Optional lines `# key: value` or `# key = value` (latitude_deg, longitude_deg, elevation_m,
pressure_hpa, temperature_c) and free text behind `#`; a key that is not known though it seems to
state a quantity is reported. Then a line of column names and the readings:

    leg,utc,ra_deg,dec_deg,north_arcsec[,east_arcsec][,sigma_arcsec]

`leg`: any label; `utc`: ISO 8601, without an offset it is UTC; `ra_deg`, `dec_deg`: ICRS place of
the star; offsets from any origin fixed within the leg. Columns may stand in any order and others
may stand among them. Separators are comma, semicolon or tab; with the latter two a comma may be the
decimal sign. Meaning is taken strictly: a line that cannot be used is reported with its reason.
"""

from core.alignment.driftlog.files import MAX_BYTES, read_file
from core.alignment.driftlog.reader import read
from core.alignment.driftlog.records import (
    DriftLog,
    Extras,
    Header,
    Leg,
    ReadingCancelled,
    Rejected,
    Remark,
    UnusableLog,
)
from core.alignment.driftlog.writer import write

__all__ = [
    "MAX_BYTES",
    "DriftLog",
    "Extras",
    "Header",
    "Leg",
    "ReadingCancelled",
    "Rejected",
    "Remark",
    "UnusableLog",
    "read",
    "read_file",
    "write",
]
