"""What turns of the bolts teach and betray; truth by the exact rotation of the mount."""

from dataclasses import replace
from types import SimpleNamespace

import numpy as np
import pytest

from app.devices.source import Reading
from app.night.bolts import ALTITUDE, AZIMUTH, BoltCalibration, Steering
from app.night.snapshot import How, Mishap, TurnMade, surprise
from core.alignment.axis.evidence import PriorAxis
from core.alignment.axis.solution import AxisNote
from core.alignment.drift.geometry import axis_north_end, observed_direction
from core.alignment.driftlog.records import Leg
from core.alignment.guide.bolts import Base, BoltTurn, moved_errors_arcmin, star_shift_arcsec
from core.mount.equipment import Mount, MountKind
from core.sky.places import hour_angle_and_declination
from core.sky.refraction import Refraction
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

SITE, AIR = Site(48.0, 10.0, 500.0), Air(950.0)
COSINE = np.cos(np.radians(48.0))
SURE = np.eye(2) * 0.3**2


class Memory:
    """Settings that last as long as a test."""

    def __init__(self) -> None:
        self.kept: dict[str, object] = {}

    def get_setting(self, key: str, default: object = None) -> object:
        return self.kept.get(key, default)

    def put_setting(self, key: str, value: object) -> None:
        self.kept[key] = value


def _known(azimuth: float, altitude: float) -> PriorAxis:
    return PriorAxis(np.array([azimuth * COSINE, altitude]), SURE)


def _solution(azimuth: float, altitude: float, *codes: AxisNote) -> SimpleNamespace:
    return SimpleNamespace(
        determined=True,
        knowledge=_known(azimuth, altitude),
        information_arcmin2=(np.linalg.inv(SURE),),
        before_information_arcmin2=np.zeros((2, 2)),
        notes=tuple(SimpleNamespace(code=code) for code in codes),
    )


def _made(
    turn: BoltTurn, azimuth: float = 20.0, altitude: float = -12.0, **counted: float
) -> TurnMade:
    was = _known(azimuth, altitude)
    return TurnMade(1.79e9, How.ADVISED, turn, was=was, base=Base(), **counted)


def _after(made: BoltTurn, azimuth: float = 20.0, altitude: float = -12.0) -> tuple[float, float]:
    return moved_errors_arcmin(SITE, azimuth, altitude, made, Base())


def test_a_turn_as_meant_surprises_nobody() -> None:
    assert (
        surprise(_solution(*_after(BoltTurn(-20.0, 12.0))), _made(BoltTurn(-20.0, 12.0)), SITE)
        is None
    )


def test_the_other_way_is_noticed_with_how_much_the_error_grew() -> None:
    solution = _solution(*_after(BoltTurn(20.0, -12.0)), AxisNote.UNEXPECTED)
    found = surprise(solution, _made(BoltTurn(-20.0, 12.0)), SITE)
    assert found.mishap is Mishap.OTHER_WAY
    # From hypot(20 cos 48°, 12) = 18.0′ to twice that.
    assert found.sentence == "The error grew by 18′: that was the other direction."


def test_one_bolt_the_other_way_is_told_apart() -> None:
    solution = _solution(*_after(BoltTurn(-20.0, -12.0)), AxisNote.UNEXPECTED)
    found = surprise(solution, _made(BoltTurn(-20.0, 12.0)), SITE)
    assert found.sentence == "The altitude error grew by 12′: that was the other direction."


def test_a_kicked_tripod_is_none_of_these() -> None:
    solution = _solution(55.0, 40.0, AxisNote.UNEXPECTED)
    found = surprise(solution, _made(BoltTurn(-20.0, 12.0)), SITE)
    assert found.mishap is Mishap.MOVED
    assert "tripod" in found.sentence


def test_counted_turns_teach_the_bolts_and_are_remembered() -> None:
    settings = Memory()
    book = BoltCalibration(settings)
    assert book.scale(AZIMUTH) is None
    for number, (turns, moved) in enumerate(((1.0, -20.0), (0.5, -10.0)), start=1):
        made = _made(BoltTurn(moved, 0.0), azimuth_turns=turns)
        assert book.note(f"night {number}", made, _solution(*_after(BoltTurn(moved, 0.0))), SITE)
    again = BoltCalibration(settings)
    scale = again.scale(AZIMUTH)
    assert scale.arcmin_per_turn == pytest.approx(-20.0, abs=1.0)
    assert scale.is_known
    assert again.scale(ALTITUDE) is None
    assert again.last_turns(AZIMUTH) == 0.5


def test_the_same_turn_better_measured_replaces_what_was_noted() -> None:
    book = BoltCalibration(None)
    made = _made(BoltTurn(-20.0, 0.0), azimuth_turns=1.0)
    book.note("one", made, _solution(3.0, -12.0), SITE)
    book.note("one", made, _solution(0.0, -12.0), SITE)
    assert book.scale(AZIMUTH).number == 1
    assert book.scale(AZIMUTH).arcmin_per_turn == pytest.approx(-20.0, abs=0.5)


SCREW = Mount(
    key="screw",
    name="Screw",
    kind=MountKind.GERMAN_EQUATORIAL,
    azimuth_bolt_arcmin_per_turn=21.0,
)
WEDGE = Mount(key="wedge", name="Wedge", kind=MountKind.FORK_ON_WEDGE)


def _teach(book: BoltCalibration, name: str, turns: float, moved: float) -> None:
    made = _made(BoltTurn(moved, 0.0), azimuth_turns=turns)
    assert book.note(name, made, _solution(*_after(BoltTurn(moved, 0.0))), SITE)


def test_each_mount_has_a_book_of_its_own_and_keeps_it_by_another_name() -> None:
    settings = Memory()
    book = BoltCalibration(settings)
    book.use(SCREW)
    _teach(book, "one", 1.0, -20.0)
    book.use(WEDGE)
    assert book.scale(AZIMUTH) is None
    _teach(book, "two", 1.0, 50.0)
    again = BoltCalibration(settings)
    again.use(replace(SCREW, name="Old screw"))
    assert again.scale(AZIMUTH).arcmin_per_turn == pytest.approx(-20.0, abs=1.0)
    assert "“Old screw”" in again.sentence()
    again.use(WEDGE)
    assert again.scale(AZIMUTH).arcmin_per_turn == pytest.approx(50.0, abs=2.0)


@pytest.mark.parametrize(("mount", "taught"), [("screw", SCREW), ("", None), (None, WEDGE)])
def test_a_turn_teaches_the_mount_that_was_turned_not_the_one_in_use_by_now(
    mount: str | None, taught: Mount | None
) -> None:
    book = BoltCalibration(Memory())
    book.use(WEDGE)
    made = replace(_made(BoltTurn(-20.0, 0.0), azimuth_turns=1.0), mount=mount)
    assert book.note("one", made, _solution(*_after(BoltTurn(-20.0, 0.0))), SITE)
    for one in (WEDGE, replace(SCREW, azimuth_bolt_arcmin_per_turn=None), None):
        book.use(one)
        found = book.scale(AZIMUTH)
        key = "" if one is None else one.key
        assert (found is not None) == (key == ("" if taught is None else taught.key))


def test_without_a_mount_there_is_a_book_of_its_own_and_a_sentence() -> None:
    settings = Memory()
    book = BoltCalibration(settings)
    book.use(SCREW)
    book.use(None)
    _teach(book, "one", 1.0, 33.0)
    assert "No mount is chosen" in book.sentence()
    book.use(SCREW)
    assert book.scale(AZIMUTH).number == 0
    book.use(None)
    assert book.scale(AZIMUTH).arcmin_per_turn == pytest.approx(33.0, abs=1.0)


def test_the_data_sheet_stands_in_until_turns_have_taught() -> None:
    book = BoltCalibration(Memory())
    book.use(SCREW)
    assert (book.scale(AZIMUTH).number, book.scale(AZIMUTH).arcmin_per_turn) == (0, 21.0)
    assert book.scale(ALTITUDE) is None
    _teach(book, "one", 1.0, -20.0)
    assert book.scale(AZIMUTH).is_known  # the sheet bears the one turn out
    assert book.scale(AZIMUTH).arcmin_per_turn == pytest.approx(-20.0, abs=1.0)


EARLIER = {
    "version": 1,
    "turns": [
        {"name": f"n{number}", "bolt": AZIMUTH, "turns": 1.0, "moved_arcmin": -20.0,
         "sigma_arcmin": 0.4}
        for number in range(3)
    ],
}  # fmt: skip


def test_the_one_book_of_before_goes_to_the_first_mount_in_use() -> None:
    settings = Memory()
    settings.kept["bolts"] = EARLIER
    book = BoltCalibration(settings)
    assert book.scale(AZIMUTH).number == 3  # nobody has chosen a mount yet
    _teach(book, "between", 1.0, 33.0)  # and this one is for no mount
    again = BoltCalibration(settings)
    again.use(SCREW)
    assert again.scale(AZIMUTH).number == 3
    again.use(WEDGE)
    assert again.scale(AZIMUTH) is None
    again.use(None)
    assert again.scale(AZIMUTH).number == 1


def test_a_book_of_a_newer_version_is_set_aside_not_lost() -> None:
    settings = Memory()
    settings.kept["bolts"] = {"version": 9, "x": 1}
    book = BoltCalibration(settings)
    _teach(book, "one", 1.0, 33.0)
    assert settings.kept["bolts"]["set_aside"] == [{"version": 9, "x": 1}]


@pytest.mark.parametrize("kept", [3, {"version": 9}, {"version": 1, "turns": [{"bolt": "x"}, 4]}])
def test_spoilt_turns_are_forgotten(kept: object) -> None:
    settings = Memory()
    settings.kept["bolts"] = kept
    assert BoltCalibration(settings).scale(AZIMUTH) is None


@pytest.fixture
def leg() -> Leg:
    utc_s = 1.79e9 + np.arange(0.0, 60.0, 2.0)
    return Leg("Vega", 40.0, 10.0, utc_s, np.full(30, 4.0), np.full(30, -2.0))


def _shift(leg: Leg, turn: BoltTurn) -> tuple[float, float]:
    """The star's own movement, by the exact rotation."""
    latitude = np.radians(48.0)
    hour_angle, declination = hour_angle_and_declination(
        leg.ra_deg, leg.dec_deg, SITE, leg.utc_s[-1:]
    )
    seen = observed_direction(hour_angle, declination, latitude, Refraction.of(AIR))[0]
    axis = axis_north_end(latitude, 20.0 / ARCMIN_PER_RAD, -12.0 / ARCMIN_PER_RAD)
    return star_shift_arcsec(seen, axis, turn, SITE, Base())


def test_the_star_in_view_tells_how_far_the_bolts_have_gone(leg: Leg) -> None:
    steering = Steering(leg, _known(20.0, -12.0), SITE, AIR, Base())
    assert steering.turned() is None
    north, east = _shift(leg, BoltTurn(-9.0, 4.0))
    for gust in (0.0, 300.0, 0.0):  # one wild reading misleads nobody
        steering.add(Reading(1.79e9 + 100.0, 4.0 + north + gust, -2.0 + east))
    turned = steering.turned()
    assert (turned.azimuth_arcmin, turned.altitude_arcmin) == pytest.approx((-9.0, 4.0), abs=0.05)


def test_without_offsets_to_the_east_it_tells_only_where_the_star_will_go(leg: Leg) -> None:
    plain = Leg(leg.label, leg.ra_deg, leg.dec_deg, leg.utc_s, leg.north_arcsec)
    steering = Steering(plain, _known(20.0, -12.0), SITE, AIR, Base())
    steering.add(Reading(1.79e9 + 100.0, 300.0))
    assert steering.turned() is None
    assert steering.will_move_arcsec(BoltTurn(-9.0, 4.0)) == pytest.approx(
        _shift(leg, BoltTurn(-9.0, 4.0))
    )
