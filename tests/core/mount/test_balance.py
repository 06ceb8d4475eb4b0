"""Load and balance against levers worked out by hand from elementary statics (stated beside)."""

from dataclasses import replace

import numpy as np
import pytest

from core.mount import payload
from core.mount.balance import (
    PolarState,
    TubeState,
    about_polar_axis,
    head_lever,
    inertia_kg_m2,
    polar_balance,
    total_torque_n_m,
    tube_balance,
)
from core.mount.equipment import Accessory, MountingPlace, MountKind, Purpose
from core.mount.payload import LoadPractice, LoadStanding, judge_load
from tests.core.mount.invented import BOX, CAMERA, GUIDER, MOUNT, TUBE, WEIGHT, WHEEL

LOAD = (TUBE, CAMERA, GUIDER, BOX)


def test_the_counterweight_by_hand():
    # Load side: (4.0 + 1.0) kg × (150 + 70) mm + 0.8 kg × (150 + 180) mm = 1364 kg mm.
    # Bar: 1.2 kg × (120 + 300/2) mm = 324 kg mm. Weight: (1364 − 324) / 5 kg = 208 mm.
    # From the end of the bar, at 420 mm: 212 mm.
    found = polar_balance(MOUNT, LOAD, (WEIGHT,))
    assert found.state is PolarState.BALANCES
    assert found.position_mm == pytest.approx(208.0)
    assert found.from_bar_end_mm == pytest.approx(212.0)
    assert found.remaining_n_m == pytest.approx(0.0, abs=1e-12)
    # Its middle can go from 140 to 400 mm: 1040/400 = 2.6 kg to 1040/140 = 7.43 kg.
    assert found.least_kg == pytest.approx(2.6)
    assert found.most_kg == pytest.approx(7.42857, abs=1e-5)
    assert "208 mm from the polar axis, 212 mm from the end" in found.sentence


def test_the_law_of_the_lever():
    # 2 kg at 300 mm against 6 kg at 100 mm (Archimedes' law of the lever), a bar of no weight.
    mount = replace(MOUNT, saddle_distance_mm=300.0, bar_start_mm=10.0, bar_mass_kg=0.001)
    load = (Accessory(key="a", name="A", mass_kg=2.0, height_mm=0.0),)
    found = polar_balance(mount, load, (replace(WEIGHT, mass_kg=6.0, thickness_mm=None),))
    assert found.position_mm == pytest.approx(100.0, abs=0.05)


def test_too_light_a_weight_says_what_would_do():
    # 2 kg at 400 mm hold 800 of the 1040 kg mm: 2.6 kg are needed.
    found = polar_balance(MOUNT, LOAD, (replace(WEIGHT, mass_kg=2.0),))
    assert found.state is PolarState.TOO_LIGHT
    assert found.remaining_n_m == pytest.approx(0.240 * 9.80665)
    assert "at least 2.6 kg" in found.sentence
    # A bar x longer: 1364 = 324 + 0.004 x (420 + x/2) + 2 (400 + x), so x = 63.1 mm.
    longer = float(found.sentence.split("a bar ")[1].split(" mm")[0])
    x = np.roots([0.002, 0.004 * 420 + 2.0, -240.0]).max()
    assert longer == pytest.approx(x, abs=0.51)
    made = replace(MOUNT, bar_length_mm=300.0 + x, bar_mass_kg=1.2 + 0.004 * x)
    again = polar_balance(made, LOAD, (replace(WEIGHT, mass_kg=2.0),))
    assert again.from_bar_end_mm == pytest.approx(20.0, abs=1e-6)


def test_too_heavy_a_weight_says_what_would_do():
    found = polar_balance(MOUNT, LOAD, (WEIGHT, replace(WEIGHT, key="w2", mass_kg=10.0)))
    # Two weights, 80 mm together, go no nearer than 160 mm: 1040/160 = 6.5 kg at most.
    assert found.state is PolarState.TOO_HEAVY
    assert found.remaining_n_m < 0.0
    assert "at most 6.5 kg" in found.sentence


def test_without_a_weight_it_says_which():
    found = polar_balance(MOUNT, LOAD, ())
    assert found.state is PolarState.NO_WEIGHT
    assert "between 2.5 and 8.7 kg" in found.sentence  # 1040/420, 1040/120
    assert found.position_mm is None


def test_a_bar_heavier_than_the_load_needs_no_weight():
    light = (replace(CAMERA, mass_kg=0.5),)
    assert polar_balance(MOUNT, light, (WEIGHT,)).state is PolarState.TOO_HEAVY
    found = polar_balance(MOUNT, light, ())
    # 324 − 0.5 × 220 = 214 kg mm = 2.1 N m.
    assert "outweighs the load by 2.1 N m" in found.sentence


def test_the_head_counts_where_its_imbalance_is_known():
    mount = replace(MOUNT, head_imbalance_kg_m=0.2)
    # 200 kg mm more on the telescope's side: (1040 + 200) / 5 = 248 mm.
    assert polar_balance(mount, LOAD, (WEIGHT,)).position_mm == pytest.approx(248.0)
    assert total_torque_n_m(head_lever(mount)) == pytest.approx(0.2 * 9.80665)


def test_a_fork_has_no_counterweight_to_place():
    fork = replace(MOUNT, kind=MountKind.FORK_ON_WEDGE, bar_mass_kg=None)
    found = polar_balance(fork, LOAD, ())
    assert found.state is PolarState.NOT_NEEDED
    assert "no counterweight bar" in found.sentence
    load = judge_load(fork, LOAD, Purpose.DEEP_SKY)
    assert load.standing is LoadStanding.FITS
    assert load.moment_kg_m is None
    assert any("German equatorial mounts only" in one for one in load.not_judged)


def test_missing_figures_are_named():
    found = polar_balance(
        replace(MOUNT, bar_mass_kg=None), (replace(TUBE, mass_kg=None),), (WEIGHT,)
    )
    assert found.state is PolarState.UNKNOWN
    assert "the mass of “Short refractor”" in found.sentence
    assert "the bar's mass of “Garden mount”" in found.sentence


def test_the_balance_of_the_tube_by_hand():
    # 4.0 kg × 0 + 1.0 kg × (−320) + 0.8 kg × 50 = −280 kg mm over 5.8 kg: 48.3 mm forward.
    found = tube_balance(MOUNT, LOAD)
    assert found.state is TubeState.SLIDE
    assert found.shift_mm == pytest.approx(280.0 / 5.8)
    assert found.centre_of_gravity_mm == pytest.approx(-280.0 / 5.8)
    assert found.reach_mm == 90.0  # (300 − 120) / 2
    assert "rear-heavy: slide it 48 mm forward" in found.sentence


def test_what_stays_on_the_saddle_does_not_slide():
    # −280 kg mm as before, but only 5.0 kg slide: 56 mm.
    saddle = replace(GUIDER, place=MountingPlace.SADDLE)
    assert tube_balance(MOUNT, (TUBE, CAMERA, saddle)).shift_mm == pytest.approx(56.0)


def test_too_short_a_dovetail_says_what_to_change():
    # With the wheel: −280 − 3.5 × 280 = −1260 kg mm over 9.3 kg: 135 mm, the dovetail lets 90.
    # Left over: 1260 − 9.3 × 90 = 423 kg mm, at the front end 275 + 90 mm away: 1.16 kg.
    found = tube_balance(MOUNT, (*LOAD, WHEEL))
    assert found.state is TubeState.TOO_SHORT
    assert "slide it 135 mm forward, but the dovetail lets it only 90 mm" in found.sentence
    assert "add 1.2 kg at the front end" in found.sentence


def test_a_tube_in_balance_and_one_that_cannot_be_told():
    assert tube_balance(MOUNT, (TUBE,)).state is TubeState.BALANCES
    unknown = tube_balance(MOUNT, (TUBE, replace(CAMERA, along_mm=None)))
    assert unknown.state is TubeState.UNKNOWN
    assert "the position along the tube of “Cooled camera”" in unknown.sentence
    front = tube_balance(MOUNT, (replace(TUBE, along_mm=20.0),))
    assert "front-heavy: slide it 20 mm back" in front.sentence


def test_the_load_now_and_later():
    now = judge_load(MOUNT, LOAD, Purpose.DEEP_SKY)
    assert now.mass_kg == pytest.approx(5.8)  # the box stands on the ground
    assert (now.standing, now.practice_kg) == (LoadStanding.FITS, pytest.approx(9.0))
    assert "within 60 % of the listed capacity (common practice, no source)" in now.sentence
    later = judge_load(MOUNT, (*LOAD, WHEEL), Purpose.DEEP_SKY)
    assert later.standing is LoadStanding.ABOVE_PRACTICE
    observing = judge_load(MOUNT, (*LOAD, WHEEL), Purpose.OBSERVING)
    assert observing.standing is LoadStanding.FITS
    own = judge_load(MOUNT, LOAD, Purpose.DEEP_SKY, LoadPractice(deep_sky=0.3))
    assert own.standing is LoadStanding.ABOVE_PRACTICE
    assert "your own figure" in own.sentence


def test_an_overload_warns_of_what_may_happen():
    found = judge_load(MOUNT, (replace(TUBE, mass_kg=16.0),), Purpose.OBSERVING)
    assert found.standing is LoadStanding.OVERLOADED
    assert "slip" in found.warning
    assert "fall" in found.warning
    assert judge_load(MOUNT, LOAD, Purpose.OBSERVING).warning == ""


def test_the_moment_counts_beside_the_mass():
    # 10 kg of the 15 listed, but at 150 + 250 mm: 4.0 kg m against 15 × 0.2 = 3.0.
    high = judge_load(MOUNT, (replace(TUBE, mass_kg=10.0, height_mm=250.0),), Purpose.OBSERVING)
    assert high.moment_kg_m == pytest.approx(4.0)
    assert high.moment_capacity_kg_m == pytest.approx(3.0)
    assert high.standing is LoadStanding.OVERLOADED
    assert "at this distance from the axis" in high.sentence


def test_a_long_tube_loads_more_than_a_short_one_of_the_same_mass():
    # Thin-walled tube across: m (r²/2 + L²/12); r 55 mm, L 550 or 1200 mm, at 220 mm, 4 kg.
    long = replace(TUBE, length_mm=1200.0)
    by_hand = [4.0 * (0.220**2 + 0.055**2 / 2 + length**2 / 12) for length in (0.55, 1.2)]
    assert inertia_kg_m2(150.0, (TUBE,)) == pytest.approx(by_hand[0])
    found = [judge_load(MOUNT, (tube,), Purpose.DEEP_SKY) for tube in (TUBE, long)]
    assert [one.inertia_kg_m2 for one in found] == pytest.approx(by_hand)
    assert found[1].stretch == pytest.approx(by_hand[1] / (4.0 * 0.220**2))
    assert found[1].stretch > 2.0 * found[0].stretch - 1.0


def test_what_is_not_known_is_not_judged_and_said():
    found = judge_load(MOUNT, (TUBE, replace(CAMERA, mass_kg=None)), Purpose.DEEP_SKY)
    assert found.standing is LoadStanding.UNKNOWN
    assert "at least 4.0 kg" in found.sentence
    assert "without the mass of “Cooled camera”" in found.sentence
    certain = judge_load(
        MOUNT, (replace(TUBE, mass_kg=16.0), replace(CAMERA, mass_kg=None)), Purpose.DEEP_SKY
    )
    assert certain.standing is LoadStanding.OVERLOADED
    bare = replace(MOUNT, capacity_kg=None, saddle_distance_mm=None)
    nothing = judge_load(bare, LOAD, Purpose.DEEP_SKY)
    assert nothing.standing is LoadStanding.UNKNOWN
    assert nothing.moment_kg_m is None
    assert any("data sheet" in sentence for sentence in nothing.not_judged)
    assert any("distance from the polar axis" in sentence for sentence in nothing.not_judged)
    assert "Nothing is on the mount yet." in judge_load(MOUNT, (), Purpose.DEEP_SKY).not_judged


@pytest.mark.parametrize("share", [0.0, -0.6, 1.2, float("nan")])
def test_a_practice_that_cannot_be_is_refused(share):
    with pytest.raises(ValueError, match="between 5 and 100 %"):
        LoadPractice(deep_sky=share)


def test_levers_are_given_for_a_drawing_to_scale():
    levers, _ = about_polar_axis(MOUNT, LOAD)
    assert [(one.name, one.arm_mm) for one in levers][:2] == [
        ("Short refractor", 220.0),
        ("Cooled camera", 220.0),
    ]
    drawn = polar_balance(MOUNT, LOAD, (WEIGHT,)).levers
    assert [one.arm_mm for one in drawn[-2:]] == pytest.approx([-270.0, -208.0])


def test_the_cautions_say_the_order():
    on, off = " ".join(payload.PUTTING_ON), " ".join(payload.TAKING_OFF)
    assert on.index("Counterweight on first") < on.index("telescope")
    assert off.index("Telescope off before the counterweight") < off.index("Counterweight off last")
    assert "toe stop" in on
    assert "Lock both axes" in on
    assert any("fingers" in one for one in payload.BALANCING)
    assert any("two people" in one for one in payload.LIFTING)
