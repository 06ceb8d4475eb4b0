"""Texts of drift logs for tests of their form."""

from __future__ import annotations

from core.alignment.driftlog.records import DriftLog

NAMES = "leg,utc,ra_deg,dec_deg,north_arcsec"
PLAIN = f"""# latitude_deg: 48.1
# longitude_deg: 11.6
{NAMES}
east,2026-11-24T20:00:00Z,83.8,-5.4,0.0
east,2026-11-24T20:01:00Z,83.8,-5.4,0.5
south,2026-11-24T20:10:00Z,10.7,-18.0,3.0
south,2026-11-24T20:11:00Z,10.7,-18.0,2.5
"""
# Seconds from 1970-01-01 to 2026-11-24: 20781 days, of which 14 in leap years (by hand).
EVENING_UTC_S = 20_781 * 86_400 + 20 * 3_600


def log_of(*rows: str, names: str = NAMES) -> str:
    return "\n".join([names, *rows])


def reasons(log: DriftLog) -> dict[int, str]:
    return {line.line_number: line.reason for line in log.rejected}


GOOD = (
    "a,2026-11-24T20:00:00Z,83.8,-5.4,0.0",
    "a,2026-11-24T20:01:00Z,83.8,-5.4,0.5",
)
