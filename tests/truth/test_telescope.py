"""The tests' own telescope: the drift of published relations, and each trouble by itself."""

from datetime import UTC, datetime

import numpy as np
import pytest
from skyfield.api import Star

from core.alignment.axis.solution import solve
from core.alignment.driftlog.records import Leg
from core.sky.site import Air, Site
from tests.truth.bolts import ALTITUDE, BoltedMount, leaning
from tests.truth.mount import sky
from tests.truth.sky import Sky
from tests.truth.telescope import Drive, Telescope

START_S = 1.797e9
UTC_S = START_S + np.arange(0.0, 601.0, 10.0)
QUIET = Drive()


def star_at(hour_angle_deg, dec_deg):
    """A star at this hour angle over longitude 0 at the start, within half a degree."""
    moment = sky()[0].from_datetime(datetime.fromtimestamp(START_S, UTC))
    return Star(ra_hours=(moment.gast - hour_angle_deg / 15.0) % 24.0, dec_degrees=dec_deg)


def offsets(star, errors=(0.0, 0.0), latitude_deg=45.0, pressure_hpa=0.0, **troubles):
    """East and north offsets (n, 2) at `UTC_S` on a level mount."""
    mount = BoltedMount(latitude_deg, *errors, leaning(0.0, 0.0))
    telescope = Telescope(mount, **{"drive": QUIET, **troubles})
    seen = Sky(latitude_deg, 0.0, 0.0, pressure_hpa).seen(star, UTC_S)
    telescope.point(seen[0], UTC_S[0])
    return telescope.offsets_arcsec(seen, UTC_S)


def drift(star, errors, **others):
    """North drift in the first minute that the displaced axis makes, arcsec/min."""
    made = offsets(star, errors, **others) - offsets(star, **others)
    return made[6, 1] - made[0, 1]


# Derived, elementary: dδ/dt = −ω(Δh sin H + ΔA cos φ cos H), ω·1′ = 0.26252″ per minute.
@pytest.mark.parametrize("dec_deg", [0.0, 50.0])
def test_the_drift_in_the_east_and_on_the_meridian(dec_deg):
    assert drift(star_at(-90.0, dec_deg), (0.0, 1.0)) == pytest.approx(+0.26252, abs=1e-4)
    assert drift(star_at(0.0, dec_deg), (1.0, 0.0)) == pytest.approx(-0.18563, abs=1e-4)


# Scheiner's method as in published practice; the south is the mirror image.
def test_the_drift_in_the_south_is_the_mirror_image():
    assert drift(star_at(-90.0, 0.0), (0.0, 1.0), latitude_deg=-45.0) == pytest.approx(
        -0.26252, abs=1e-4
    )
    assert drift(star_at(0.0, 0.0), (1.0, 0.0), latitude_deg=-45.0) == pytest.approx(
        -0.18563, abs=1e-4
    )


# Derived numerically for 58.3″ tan z; the traced air of 1010 hPa at 10 °C has 58.1″ or so.
@pytest.mark.parametrize(
    ("latitude_deg", "hour_angle_deg", "expected"),
    [(45.0, -60.0, -0.878), (45.0, 45.0, 0.360), (30.0, -60.0, -0.508)],
)
def test_the_air_alone_drifts(latitude_deg, hour_angle_deg, expected):
    north = offsets(star_at(hour_angle_deg, 0.0), latitude_deg=latitude_deg, pressure_hpa=1010.0)
    still = offsets(star_at(hour_angle_deg, 0.0), latitude_deg=latitude_deg)
    assert (north - still)[6, 1] == pytest.approx(expected, rel=0.03)


def test_with_everything_off_a_star_stands_still():
    assert np.abs(offsets(star_at(-30.0, 40.0))).max() < 0.01  # the aberration of ten minutes


def test_the_drive_errs_along_right_ascension_only():
    star = star_at(-30.0, 60.0)
    fast = offsets(star, drive=Drive(fast=1e-3)) - offsets(star)
    assert fast[6] == pytest.approx([902.5e-3 * 0.5, 0.0], abs=0.01)  # 15.041″ s⁻¹ cos 60°
    uneven = offsets(star, drive=Drive(amplitude_arcsec=8.0, period_s=480.0)) - offsets(star)
    assert 8.0 < np.ptp(uneven[:, 0]) < 13.0  # 16″ cos 60°, and harmonics
    assert np.abs(uneven[:, 1]).max() < 1e-3


def test_a_turned_camera_leaks_east_into_north():
    star, drive = star_at(-30.0, 60.0), Drive(fast=1e-3)
    straight, turned = (offsets(star, drive=drive, angle_deg=angle) for angle in (0.0, 1.0))
    leak = turned[-1, 1] - straight[-1, 1]
    assert abs(leak) == pytest.approx(straight[-1, 0] * np.sin(np.deg2rad(1.0)), abs=1e-3)
    assert np.hypot(*turned[-1]) == pytest.approx(np.hypot(*straight[-1]))


def test_a_tube_that_yields_to_the_pull_along_it_sags_with_the_sine_of_the_altitude():
    yields = np.array([[0.0, 0.0, 0.0], [100.0, 0.0, 0.0]])  # north, by what pulls along the tube
    for hour_angle_deg, side in ((-60.0, 1.0), (60.0, -1.0)):  # west of the meridian turned over
        star = star_at(hour_angle_deg, 20.0)
        sag = (offsets(star, sag_arcsec_per_g=yields) - offsets(star))[:, 1]
        up = Sky(45.0, 0.0, 0.0, 0.0).seen(star, UTC_S)[:, 2]
        assert sag == pytest.approx(-100.0 * side * up, abs=0.01)


def test_the_altitude_bolt_moves_a_star_on_the_meridian_by_as_much():
    mount = BoltedMount(45.0, 0.0, 0.0, leaning(0.0, 0.0))
    telescope = Telescope(mount, QUIET)
    seen = Sky(45.0, 0.0, 0.0, 0.0).seen(star_at(0.0, 10.0), UTC_S)
    telescope.point(seen[0], UTC_S[0])
    telescope.turn_bolt(ALTITUDE, 10.0, UTC_S[0])
    north = telescope.offsets_arcsec(seen[:1], UTC_S[:1])[0, 1]
    assert north == pytest.approx(600.0, abs=0.1)  # the tube goes down in the south, the star up


@pytest.mark.parametrize("latitude_deg", [48.0, -33.0])
def test_without_troubles_the_axis_is_found(latitude_deg):
    legs = []
    for number, star in enumerate((star_at(-50.0, 10.0), star_at(40.0, 5.0))):
        north = offsets(star, (25.0, -15.0), latitude_deg, 980.0)[:, 1]
        place = star.ra.hours * 15.0, star.dec.degrees
        legs.append(Leg(str(number), *place, UTC_S, north))
    found = solve(legs, Site(latitude_deg, 0.0), Air(980.0))
    assert found.azimuth_error_arcmin == pytest.approx(25.0, abs=0.02)
    assert found.altitude_error_arcmin == pytest.approx(-15.0, abs=0.02)
