"""Evidence adds up by the names of its parameters; every slope against a difference."""

from dataclasses import replace

import numpy as np
import pytest

from core.alignment.axis.evidence import AXIS, FLEXURE, Evidence, estimate, to_sky
from core.alignment.axis.legrate import leg_rate
from core.alignment.drift.noise import NoiseGrid, group
from core.alignment.drift.prepared import PreparedLeg
from core.alignment.priors import USUAL
from core.sky.site import Site
from core.units import ARCMIN_PER_RAD
from tests.truth.watched import gravity_in_tube, hard_night

ONE = np.ones(1)
SCALE = to_sky(np.deg2rad(48.0))


def piece(names, shows, measured, sigma, freedom=np.inf, known=0.0):
    return Evidence(
        "test", "", names, np.array([[measured]]), np.array([[shows]], dtype=float),
        np.array([[[sigma**2]]]), np.array([freedom]), np.array([known]),
    )  # fmt: skip


def dense(pieces, names):
    """The same least squares with one dense design matrix."""
    rows = np.zeros((sum(one.measured.shape[1] for one in pieces), len(names)))
    data, variance, at = [], [], 0
    for one in pieces:
        size = one.measured.shape[1]
        rows[at : at + size, [names.index(name) for name in one.names]] = one.shows[0]
        data.extend(one.measured[0])
        variance.extend(np.diag(one.covariance[0]))
        at += size
    inverse = np.diag(1.0 / np.array(variance))
    covariance = np.linalg.inv(rows.T @ inverse @ rows)
    return covariance @ rows.T @ inverse @ np.array(data), covariance


def test_pieces_of_different_kinds_add_up_as_one_design_matrix_would():
    pieces = [
        piece(("a", "b"), [1.0, 2.0], 3.0, 0.1),
        piece(("b", "c"), [1.0, -1.0], 1.0, 0.2),
        piece(("a", "c"), [0.5, 1.0], 0.0, 0.3),
        Evidence.prior("prior", ("c",), np.zeros(1), np.eye(1) * 0.04),
    ]
    found = estimate(pieces, ONE)
    assert found.names == ("a", "b", "c")
    values, covariance = dense(pieces, found.names)
    np.testing.assert_allclose(found.values, values, atol=1e-12)
    np.testing.assert_allclose(found.covariance, covariance, atol=1e-12)
    rest = np.array([0.1, 0.2, 0.3, 0.2])
    shows = np.array([[1, 2, 0], [0, 1, -1], [0.5, 0, 1], [0, 0, 1]])
    pulls = (np.array([3.0, 1.0, 0.0, 0.0]) - shows @ values) / rest
    np.testing.assert_allclose(found.squares, pulls**2, atol=1e-12)


def test_what_is_known_beforehand_has_no_students_tail():
    few = piece(("a",), [1.0], 0.0, 1.0, freedom=4.0)
    assert estimate([few], ONE).interval_factor[0] == pytest.approx(2.776, abs=1e-3)  # t tables
    known = replace(few, known_share=np.array([1.0]))
    assert estimate([known], ONE).interval_factor[0] == pytest.approx(1.960, abs=1e-3)


@pytest.fixture(scope="module")
def watched():
    rng = np.random.default_rng(5)
    night = hard_night(rng, ((-70.0, -30.0),), (25.0, -40.0), 6.0, 2.0, 48.0)
    return night.stars[0], Site(48.0, night.site.longitude_deg, night.site.elevation_m), night.air


def rate_of(leg, site, air, axis):
    prepared = PreparedLeg.of(leg, site, air)
    return leg_rate(prepared, axis, NoiseGrid.for_durations([360.0]), USUAL)


def test_the_slopes_of_a_leg_by_the_axis_are_its_differences(watched):
    star, site, air = watched
    at = np.array([30.0, -20.0]) / ARCMIN_PER_RAD
    rate = rate_of(star.leg(star.north), site, air, at)
    here = rate.evidence(at, SCALE, with_flexure=False)
    assert here.names == AXIS
    for one in range(2):
        moved = at + np.eye(2)[one] / SCALE / ARCMIN_PER_RAD  # by one arcmin on the sky
        there = rate.evidence(moved, SCALE, with_flexure=False)
        change = (there.measured - here.measured)[:, 0]
        np.testing.assert_allclose(-change, here.shows[:, 0, one], rtol=2e-3, atol=1e-5)


def test_the_slopes_of_a_leg_by_flexure_are_what_a_yielding_tube_does(watched):
    star, site, air = watched
    at = np.array([25.0, -40.0]) / ARCMIN_PER_RAD
    rate = rate_of(star.leg(star.north), site, air, at)
    here = rate.evidence(at, SCALE, with_flexure=True)
    assert here.names == AXIS + FLEXURE
    for one in range(3):
        alone = star.leg(gravity_in_tube(star)[:, one])  # by another library's places
        change = rate.functional @ group(alone, rate.prepared.kept, ()).north_arcsec
        np.testing.assert_allclose(change, here.shows[:, 0, 2 + one], rtol=5e-3, atol=2e-5)


def test_a_yielding_tube_feigns_its_flexure_times_the_cosine_of_the_latitude(watched):
    # In the tube gravity turns about the pole with the sky, at ω cos φ across any fixed direction.
    star, site, air = watched
    at = np.zeros(2)
    found = rate_of(star.leg(star.north), site, air, at).evidence(at, SCALE, with_flexure=True)
    axis, yields = found.shows[0, 0, :2], found.shows[0, 0, 2:]
    feigned = np.linalg.norm(yields) / np.linalg.norm(axis)  # arcmin of axis by arcsec per g
    assert feigned == pytest.approx(np.cos(np.deg2rad(48.0)) / 60.0, rel=0.02)


def test_two_noise_candidates_are_averaged_with_their_disagreement():
    both = Evidence(
        "test", "", ("a",), np.array([[1.0], [3.0]]), np.ones((2, 1, 1)),
        np.array([[[1.0]], [[4.0]]]), np.full(2, np.inf), np.zeros(2),
    )  # fmt: skip
    found = estimate([both], np.array([0.5, 0.5]))
    assert found.values[0] == pytest.approx(2.0)
    assert found.covariance[0, 0] == pytest.approx(0.5 * (1.0 + 4.0) + 1.0)
