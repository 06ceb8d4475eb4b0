"""Pictures of every page in every look, at two window sizes and at twice the text size.

    python packaging/screens.py FOLDER [SCENE ...]
    python packaging/screens.py --gallery      one scene a page into resources/screens

For looking at, and for the README; the night they show is invented (a practice mount).
"""

from __future__ import annotations

import os
import sys
import tempfile
from collections.abc import Callable
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
sys.path.insert(0, str(Path(__file__).parents[1]))

import numpy as np
from PySide6.QtCore import QEventLoop, QSettings, QTimer
from PySide6.QtWidgets import QApplication

from app.compose import Program
from app.pages.drift.page import DriftPage
from app.pages.drift.practice import PracticePanel
from app.pages.drift.sources import HAND, LOG, PRACTICE, Importing
from app.pages.drift.typed import ByHand
from app.pages.pole.page import FIELD, HIDDEN, SIGHT, PolePage
from app.pages.site.page import SitePage
from app.pagetable import DRIFT, POLE, SITE
from app.ui.help import SEEN
from core.sky.horizon import parse
from core.sky.site import Site
from eveningscenes import EVENING_SCENES
from guidescenes import GUIDE_SCENES
from mountscenes import MOUNT_SCENES
from nightscenes import NIGHT_SCENES
from trackingscenes import TRACKING_SCENES

GALLERY = Path(__file__).parents[1] / "resources" / "screens"
GALLERY_SCENES = (
    *("place", "sight-north", "practice", "mount-load", "budget-solved", "tracking-periodic"),
    *("rotation", "plan", "tonight-north", "log-night"),
)
SIZES = ((1280, 800, 1.0), (1920, 1080, 1.0), (1280, 800, 2.0))
NOW_S = 1_790_000_000.0
SETTLE_MS = 300


def main(folder: Path, scenes: list[str]) -> None:
    folder.mkdir(parents=True, exist_ok=True)
    app = QApplication([])
    with tempfile.TemporaryDirectory() as scratch:
        settings = QSettings(str(Path(scratch) / "s.ini"), QSettings.Format.IniFormat)
        settings.setValue(SEEN, "first-run" not in scenes)
        program = Program(app, settings, Path(scratch) / "nights.sqlite", lambda: NOW_S)
        program.ready.connect(lambda: app.exit(0))  # quit would close the window
        program.start()
        app.exec()
        for name in scenes or SCENES:
            SCENES[name](program)
            _take_all(program, folder, name)
        program.window.close()
        program.close()


def _take_all(program: Program, folder: Path, scene: str) -> None:
    for look in ("day", "dark", "night"):
        program.theme.choose(look)
        for width, height, scale in SIZES if folder != GALLERY else SIZES[:2]:
            program.theme.enlarge(scale)
            program.window.resize(width, height)
            _settle(SETTLE_MS)
            while not program.theme.is_settled():  # no picture is drawn of a half dressed window
                _settle(SETTLE_MS)
            _settle(SETTLE_MS)  # what has another size now is laid out anew after that
            name = f"{scene}-{look}-{width}x{height}-{round(100 * scale)}.png"
            program.window.grab().save(str(folder / name))
    program.theme.enlarge(1.0)


def _settle(ms: int) -> None:
    loop = QEventLoop()
    QTimer.singleShot(ms, loop.quit)
    loop.exec()


def _drift(program: Program) -> DriftPage:
    program.window.show_page(DRIFT)
    page = program.window.page(DRIFT)
    assert isinstance(page, DriftPage)
    return page


def _empty(program: Program) -> None:
    _drift(program)


def _site(program: Program) -> None:
    program.window.show_page(SITE)


# Invented places, both in the open Atlantic.
NORTH, SOUTH = Site(47.0, -20.0, 300.0, "Heron Rock"), Site(-33.0, -20.0, 300.0, "Kelp Bank")
SKYLINE = parse("0 6 | 40 4 | 60 18 | 85 22 | 88 3 | 160 2 | 200 9 | 230 14 | 260 5 | 310 8")


def _place(program: Program) -> None:
    _stand(program, NORTH)
    page = program.window.page(SITE)
    assert isinstance(page, SitePage)
    page.horizon().show_horizon(SKYLINE)
    page.horizon().changed.emit(SKYLINE)


def _asked(program: Program) -> None:
    _stand(program, NORTH, pressure="29.92")


def _stand(program: Program, site: Site, pressure: str = "") -> None:
    program.window.show_page(SITE)
    page = program.window.page(SITE)
    assert isinstance(page, SitePage)
    texts = {
        "name": site.name,
        "latitude": f"{site.latitude_deg}",
        "longitude": f"{site.longitude_deg}",
        "elevation": f"{site.elevation_m}",
        "pressure": pressure,
    }
    for name, text in texts.items():
        page.field(name).show_text(text)
    page.use_button().click()


def _pole(program: Program, site: Site | None, way: str) -> PolePage:
    if site is not None:
        _stand(program, site)
    program.window.show_page(POLE)
    page = program.window.page(POLE)
    assert isinstance(page, PolePage)
    page.take_way(way)
    _settle(1000)
    return page


def _pole_empty(program: Program) -> None:
    _pole(program, None, SIGHT)


def _sight_north(program: Program) -> None:
    page = _pole(program, NORTH, SIGHT)
    page.sight_view().placed.emit(200.0, 55.0)


def _sight_south(program: Program) -> None:
    _pole(program, SOUTH, SIGHT)


def _stars_north(program: Program) -> None:
    _pole(program, NORTH, FIELD)


def _stars_south(program: Program) -> None:
    _pole(program, SOUTH, FIELD)


def _hidden_north(program: Program) -> None:
    _pole(program, NORTH, HIDDEN)


def _hidden_south(program: Program) -> None:
    _pole(program, SOUTH, HIDDEN)


def _practice(program: Program) -> None:
    page = _drift(program)
    page.take_way(PRACTICE)
    controls = page.ways().panel.controls(PRACTICE)
    assert isinstance(controls, PracticePanel)
    while not controls.star_buttons():
        _settle(SETTLE_MS)
    for place in ("near the meridian", "low in the east"):
        controls.places().button(place).click()
        controls.set_speed("60")
        controls.star_buttons()[0].click()
        _settle(9000)
    controls.set_speed("0")


def _by_hand(program: Program) -> None:
    _drift(program).take_way(HAND)


def _log(program: Program) -> None:
    _drift(program).take_way(LOG)


def _pad(program: Program) -> None:
    controls = _hand_controls(program)
    controls.own_button().click()
    controls.stars().watch_button().click()


def _single(program: Program) -> None:
    controls = _hand_controls(program)
    controls.pad().done.emit()
    controls.form().button("once").click()
    controls.stars().watch_button().click()


def _one_star(program: Program) -> None:
    controls = _hand_controls(program)
    for name, text in (("moved", "6"), ("minutes", "8")):
        controls.single().fields()[name].show_text(text)
    controls.single().submit()
    _settle(2500)


def _hand_controls(program: Program) -> ByHand:
    page = _drift(program)
    page.take_way(HAND)
    controls = page.ways().panel.controls(HAND)
    assert isinstance(controls, ByHand)
    return controls


def _imported(program: Program) -> None:
    _import(program, _invented_log())


def _contradiction(program: Program) -> None:
    """The leg in the west is the one in the east again, its north and south exchanged."""
    _place(program)
    _import(program, _invented_log(west=(275.0, 5.0)))


def _import(program: Program, log: str) -> None:
    page = _drift(program)
    page.work().turned_button().click()
    page.take_way(LOG)
    controls = page.ways().panel.controls(LOG)
    assert isinstance(controls, Importing)
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "invented-night.csv"
        path.write_text(log, encoding="utf-8")
        controls.read(path)
        _settle(3000)


def _invented_log(west: tuple[float, float] = (110.0, -0.6)) -> str:
    """Three legs with a bump, some gusts and two lines that cannot be used."""
    random = np.random.default_rng(11)
    lines = ["leg,utc,ra_deg,dec_deg,north_arcsec"]
    legs = (("meridian", 190.0, -1.4, 0), ("east", 275.0, 0.8, 900), ("west", *west, 1800))
    for name, ra_deg, rate, start in legs:
        for second in range(0, 480, 2):
            north = rate * second / 60 + random.normal(0, 0.7)
            north += 6.0 if name == "east" and second > 300 else 0.0
            north += 9.0 * (random.random() < 0.01)
            stamp = np.datetime64(int(NOW_S) + start + second, "s")
            lines.append(f"{name},{stamp}Z,{ra_deg},8.0,{north:.2f}")
    lines.insert(40, "meridian,yesterday evening,190.0,8.0,1.0")
    lines.insert(90, "meridian,2026-09-21T14:16:00Z,190.0,98.0,1.0")
    return "\n".join(lines)


SCENES: dict[str, Callable[[Program], None]] = {
    "empty": _empty,
    "contradiction": _contradiction,
    "site": _site,
    "pole-empty": _pole_empty,
    "place": _place,
    "asked": _asked,
    "sight-north": _sight_north,
    "stars-north": _stars_north,
    "hidden-north": _hidden_north,
    "sight-south": _sight_south,
    "stars-south": _stars_south,
    "hidden-south": _hidden_south,
    "practice": _practice,
    "hand": _by_hand,
    "pad": _pad,
    "single": _single,
    "one": _one_star,
    "log": _log,
    "imported": _imported,
    **NIGHT_SCENES,
    **GUIDE_SCENES,
    **EVENING_SCENES,
    **MOUNT_SCENES,
    **TRACKING_SCENES,
}

if __name__ == "__main__":
    if sys.argv[1] == "--gallery":
        main(GALLERY, list(GALLERY_SCENES))
    else:
        main(Path(sys.argv[1]), sys.argv[2:])
