"""What the Drift page needs besides, on a computer that offers nothing, and a log to give it."""

import numpy as np

from app.night.equipment import FieldInView
from app.night.session import Session
from app.pages.drift.page import DriftPage
from app.ui.text import VerdictBand
from app.workers.awake import Awake
from core.sky.site import Air, Site
from tests.app.night.heard import heard
from tests.app.night.memory import Memory

NOW_S = 1_790_000_000.0
HILL = Site(48.1, 11.6, 520.0, "Hill")
AIR = Air(952.0, 10.0)
SOLVED_MS = 20_000


def seen_by() -> tuple[FieldInView, Awake]:
    """A field nobody typed, and no way to keep the screen on."""
    return FieldInView(Memory()), Awake(lambda: [])


def verdict(page: DriftPage) -> str:
    band = page.findChild(VerdictBand)
    return " ".join(part.accessibleDescription() for part in band.halves())


def wait_for_answer(page: DriftPage, session: Session, qtbot) -> None:
    qtbot.waitUntil(lambda: heard(session).solution is not None, timeout=SOLVED_MS)
    qtbot.waitUntil(lambda: verdict(page) != "not known yet not known yet")


def drifting_log(minutes: float = 8.0) -> list[str]:
    """Two invented legs: near the meridian 0.9″ a minute south, in the east 0.5″ north."""
    lines = ["leg,utc,ra_deg,dec_deg,north_arcsec,sigma_arcsec"]
    random = np.random.default_rng(5)
    for name, ra_deg, rate, start_s in (("m", 245.0, -0.9, 0.0), ("e", 330.0, 0.5, 900.0)):
        for second in np.arange(0.0, 60.0 * minutes, 4.0):
            stamp = np.datetime64(int(NOW_S + start_s + second), "s")
            north = rate * second / 60.0 + random.normal(0.0, 0.5)
            lines.append(f"{name},{stamp}Z,{ra_deg},8.0,{north:.3f},0.5")
    return lines
