"""The sky as a disc: which way round, contours where they belong, read by pointer and key."""

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest

from app.ui.skydisc import Dome, DomePicture
from app.ui.skyview import SkyView, bands, contours
from core.imaging.rotation import rate_deg_per_hour
from core.sky.horizon import Horizon
from core.units import SIDEREAL_DEG_PER_HOUR


@pytest.mark.parametrize(
    ("azimuth_deg", "right", "down"), [(0, 0, -1), (90, 1, 0), (180, 0, 1), (270, -1, 0)]
)
def test_north_is_up_and_east_on_the_right(azimuth_deg, right, down) -> None:
    assert SkyView().place(azimuth_deg, 0.0) == pytest.approx((right, down), abs=1e-12)


def test_places_and_directions_belong_together() -> None:
    azimuth, altitude = np.array([10.0, 123.0, 350.0]), np.array([5.0, 45.0, 88.0])
    view = SkyView(70.0)
    assert np.allclose(view.direction(*view.place(azimuth, altitude)), (azimuth, altitude))


def test_a_contour_of_altitude_is_a_ring() -> None:
    found = contours(lambda azimuth, altitude: altitude + 0.0 * azimuth, [45.0], str)
    assert {line.words for line in found} == {"45.0"}
    for line in found:
        assert np.allclose(line.altitude_deg, 45.0, atol=0.05)
    turned = np.concatenate([line.azimuth_deg for line in found])
    assert np.ptp(turned) > 355.0


@pytest.mark.parametrize("latitude_deg", [48.0, -33.0])
def test_contours_of_field_rotation_lie_where_the_rate_is_theirs(latitude_deg: float) -> None:
    def values(azimuth, altitude):
        return rate_deg_per_hour(latitude_deg, azimuth, altitude)

    found = contours(values, [-20.0, -10.0, 0.0, 10.0, 20.0], str)
    assert {line.words for line in found} == {"-20.0", "-10.0", "0.0", "10.0", "20.0"}
    for line in found:
        # cos h = −ω cos φ cos A / rate, the classical formula solved for the altitude.
        there = -SIDEREAL_DEG_PER_HOUR * np.cos(np.radians(latitude_deg))
        there = there * np.cos(np.radians(line.azimuth_deg)) / np.cos(np.radians(line.altitude_deg))
        assert np.allclose(there, float(line.words), atol=0.35)
        assert line.is_negative == (float(line.words) < 0.0)


def test_bands_know_no_sign_and_end_at_the_rim() -> None:
    shares = bands(lambda *sky: np.where(sky[0] < 180.0, 5.0, -5.0), [2.0, 9.0])
    assert np.isnan(shares[0, 0])
    assert np.unique(shares[np.isfinite(shares)]).tolist() == [0.5]


@pytest.fixture
def dome(qtbot, theme) -> Dome:
    made = Dome("Sky", theme)
    made.resize(500, 500)
    qtbot.addWidget(made)
    made.show_picture(
        DomePicture(horizon=Horizon.through([(90.0, 0.0), (180.0, 40.0), (270.0, 0.0)])),
        lambda azimuth, altitude: f"value {azimuth:.0f} {altitude:.0f}",
    )
    with qtbot.waitExposed(made):
        made.show()
    return made


def test_the_pointer_reads_the_map(dome: Dome, qtbot) -> None:
    with qtbot.waitSignal(dome.told) as told:
        QTest.mouseClick(dome, Qt.MouseButton.LeftButton, pos=QPoint(370, 250))
    assert told.args[0].startswith("Azimuth 90°, ")
    assert "value 90" in told.args[0]


def test_arrow_keys_read_the_map_and_stay_inside(dome: Dome) -> None:
    for _ in range(40):
        QTest.keyClick(dome, Qt.Key.Key_Right)
    assert "Azimuth 90°, 0° high" in dome.accessibleDescription()
    for _ in range(10):
        QTest.keyClick(dome, Qt.Key.Key_Left)
    assert "45° high: value" in dome.accessibleDescription()


def test_what_is_hidden_is_told(dome: Dome) -> None:
    for _ in range(16):
        QTest.keyClick(dome, Qt.Key.Key_Down)
    assert "obstructed" in dome.accessibleDescription()
