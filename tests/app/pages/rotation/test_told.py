"""The rates told on the Field rotation page, against ERFA's parallactic angles differenced."""

import erfa
import numpy as np
import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from app.pages.rotation.page import SKY
from app.ui.skyview import SkyView
from core.imaging.rotation import turning_of_star
from core.sky.targets import Target
from tests.app.pages.eveningpages import AIR, HILL, evening
from tests.app.pages.rotation.waiting import after

MIDNIGHT_S = 1_790_028_000.0  # 2026-09-21T22:00:00Z


def _differenced_rate(azimuth_deg: float, altitude_deg: float, latitude_deg: float) -> float:
    """Field rotation, degrees an hour, from two of ERFA's parallactic angles four seconds apart."""
    latitude, step = np.radians(latitude_deg), 2.0 * 2.0 * np.pi / 86164.1
    hour, declination = erfa.ae2hd(np.radians(azimuth_deg), np.radians(altitude_deg), latitude)
    apart = erfa.hd2pa(hour + step, declination, latitude) - erfa.hd2pa(
        hour - step, declination, latitude
    )
    return float(np.degrees((apart + np.pi) % (2.0 * np.pi) - np.pi)) * 900.0


@pytest.mark.parametrize("azimuth_deg", [85.0, 88.7, 91.3, 271.0, 269.5, 200.0])
def test_the_pointer_tells_slow_rates_as_exactly_as_fast_ones(shown, azimuth_deg: float) -> None:
    sky = shown(evening(HILL)).sections().section(SKY)
    dome = sky.dome()
    right, down = SkyView().place(azimuth_deg, 40.0)
    place = dome.middle() + QPointF(float(right), float(down)) * dome.radius()
    QTest.mouseClick(dome, Qt.MouseButton.LeftButton, pos=place.toPoint())
    share = dome.share_of(QPointF(place.toPoint()))
    azimuth, altitude = SkyView().direction(share.x(), share.y())
    told = float(sky.told().split("turns ")[1].removesuffix("°/h").replace("−", "-"))
    exact = _differenced_rate(float(azimuth), float(altitude), HILL.latitude_deg)
    assert told == pytest.approx(exact, rel=0.02)


def test_the_rate_at_a_moment_near_the_zenith_is_that_of_the_moment(shown, qtbot) -> None:
    """Beside the zenith it changes too much within a minute to be told from straight lines."""
    when = MIDNIGHT_S + 30.0 * np.arange(-600, 600)
    overhead = Target("Overhead", "coordinates", 320.3, 48.0)
    azimuth, altitude, _ = turning_of_star(320.3, 48.0, HILL, AIR, when)
    highest = float(when[np.argmax(altitude)])
    page = shown(evening(HILL, overhead))
    for moment in highest + np.array([-130.0, -50.0, 40.0, 75.0]):
        after(qtbot, page, lambda moment=moment: page.pick(float(moment)))
        azimuth, altitude, _ = turning_of_star(320.3, 48.0, HILL, AIR, [moment])
        exact = abs(_differenced_rate(float(azimuth[0]), float(altitude[0]), HILL.latitude_deg))
        told = page.facts().told()[0].split("°")[0].replace(",", "")
        assert float(told) == pytest.approx(exact, rel=0.02)
