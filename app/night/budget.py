"""What is to be photographed tonight, kept at every change, and the task it makes."""

from __future__ import annotations

import math
from dataclasses import asdict, dataclass, fields, replace
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QObject, Signal

from app.night.equipment import Equipment
from app.night.places import Settings
from app.workers.latest import LatestOnly
from core.language import say
from core.mount.equipment import Camera, ImpossibleValue, Telescope
from core.mount.examples import INVENTED_SET, invented_inventory

if TYPE_CHECKING:  # brings scipy along
    from app.night.plan import Plans
    from app.night.session import Session
    from app.night.snapshot import Snapshot
    from core.alignment.goal import Allowed
    from core.imaging.task import Optics, Task
    from core.sky.site import Air, Site
    from core.sky.targets import Target


EXAMPLE_DECLINATION_DEG = 35.0
KEY = "budget"
VERSION = 1


@dataclass(frozen=True)
class Wanted:
    """As typed; None where a figure is missing. `declination_deg` of date.

    `guide_star_arcmin`: guide star to the farthest corner; None takes the middle of the field.
    The optics are those of the set in use unless `has_own_optics`; `telescope` and `camera` are
    keys, for a set with several. `axis_error_arcmin`: one to try out.
    """

    name: str = ""
    declination_deg: float | None = None
    first_hour_angle_h: float | None = -3.0
    last_hour_angle_h: float | None = 3.0
    exposure_s: float | None = 300.0
    is_guided: bool = True
    guide_star_arcmin: float | None = None
    limit_px: float | None = 0.5
    telescope: str = ""
    camera: str = ""
    seeing_arcsec: float | None = 3.0
    axis_error_arcmin: float | None = 5.0
    binning: int = 1
    focal_factor: float | None = 1.0
    has_own_optics: bool = False
    focal_length_mm: float | None = None
    pixel_um: float | None = None
    width_px: int | None = None
    height_px: int | None = None


class Budget(QObject):
    """Raises nothing by itself: `task` says in a sentence what is missing."""

    changed = Signal()

    def __init__(
        self, settings: Settings, equipment: Equipment, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._settings = settings
        self._equipment = equipment
        self._wanted = _read(settings.get_setting(KEY))
        equipment.changed.connect(self.changed)

    @property
    def wanted(self) -> Wanted:
        return self._wanted

    def want(self, wanted: Wanted) -> None:
        """Keep what the person typed."""
        self._wanted = wanted
        self._settings.put_setting(KEY, {"version": VERSION, **asdict(wanted)})
        self.changed.emit()

    def take_example(self, name: str) -> None:
        """An invented target of this name; an invented set too where none can be used."""
        telescopes, cameras = telescopes_and_cameras(self._wanted, self._equipment)
        if not telescopes or not cameras:
            self._equipment.take(invented_inventory())
            self._equipment.use(INVENTED_SET.key)
        self.want(replace(Wanted(), name=name, declination_deg=EXAMPLE_DECLINATION_DEG))

    def optics(self) -> Optics:
        """Raises `ImpossibleValue` with a sentence that names what is missing."""
        return optics_of_wanted(self._wanted, self._equipment)

    def optics_of_set(self) -> Optics:
        """As `optics`, but of the set in use even when others are typed."""
        return optics_of_wanted(replace(self._wanted, has_own_optics=False), self._equipment)

    def task(self) -> Task:
        """Tonight's task; a ValueError whose text is a sentence when something is missing."""
        from core.imaging.task import ImagedTarget, Task

        wanted = self._wanted
        hours = wanted.first_hour_angle_h, wanted.last_hour_angle_h
        optics = self.optics()
        target = ImagedTarget(
            _given(wanted.declination_deg, say("The target is not entered yet.")),
            15.0 * _given(hours[0], say("The hour angle to begin at is not entered yet.")),
            15.0 * _given(hours[1], say("The hour angle to end at is not entered yet.")),
            wanted.name,
        )
        guide = _half_diagonal_arcmin(optics) if wanted.is_guided else None
        if wanted.is_guided and wanted.guide_star_arcmin is not None:
            guide = wanted.guide_star_arcmin
        return Task(
            target,
            optics,
            _given(wanted.exposure_s, say("The exposure is not entered yet.")),
            guide,
            _given(wanted.limit_px, say("The smear allowed is not entered yet.")),
        )


def telescopes_and_cameras(
    wanted: Wanted, equipment: Equipment
) -> tuple[list[Telescope], list[Camera]]:
    """Those of the set in use, the wanted ones first, planned ones last; empty without a set."""
    chosen = equipment.set_in_use()
    parts = () if chosen is None else equipment.inventory.parts_of(chosen, with_planned=True)
    first = (wanted.telescope, wanted.camera)
    ordered = sorted(parts, key=lambda part: (part.key not in first, part.is_planned))
    telescopes = [one for one in ordered if isinstance(one, Telescope)]
    return telescopes, [one for one in ordered if type(one) is Camera]


def optics_of_wanted(wanted: Wanted, equipment: Equipment) -> Optics:
    """Raises `ImpossibleValue` with a sentence."""
    from core.imaging.sampling import optics_of

    factor = _given(wanted.focal_factor, say("The reducer or Barlow factor is not entered yet."))
    if wanted.has_own_optics:
        return optics_of(*_typed_optics(wanted), wanted.binning, factor)
    telescopes, cameras = telescopes_and_cameras(wanted, equipment)
    if not telescopes or not cameras:
        raise ImpossibleValue(
            say(
                "The set in use has no telescope and camera to go with it: choose such a "
                "set on the Mount page, or type the optics on the Budget page."
            )
        )
    return optics_of(telescopes[0], cameras[0], wanted.binning, factor)


def _typed_optics(wanted: Wanted) -> tuple[Telescope, Camera]:
    name = say("the optics typed")
    return (
        Telescope(key="typed", name=name, focal_length_mm=wanted.focal_length_mm),
        Camera(
            key="typed",
            name=name,
            pixel_um=wanted.pixel_um,
            width_px=wanted.width_px,
            height_px=wanted.height_px,
        ),
    )


def _half_diagonal_arcmin(optics: Optics) -> float:
    from core.units import ARCMIN_PER_RAD

    return optics.half_diagonal_rad * ARCMIN_PER_RAD


def _given(value: float | None, else_sentence: str) -> float:
    if value is None:
        raise ImpossibleValue(else_sentence)
    return value


def _read(kept: Any) -> Wanted:
    """The usual figures where what was kept cannot be used."""
    if not isinstance(kept, dict) or kept.get("version") != VERSION:
        return Wanted()
    usual = Wanted()
    taken = {}
    for one in fields(Wanted):
        value = kept.get(one.name, getattr(usual, one.name))
        if _fits(value, one.name, usual):
            taken[one.name] = value
    return Wanted(**taken)


def _fits(value: Any, name: str, usual: Wanted) -> bool:
    default = getattr(usual, name)
    if isinstance(default, bool | str):
        return type(value) is type(default)
    if name == "binning":
        return type(value) is int and 1 <= value <= 16
    is_whole = name in ("width_px", "height_px")
    number = int if is_whole else (int | float)
    return value is None or (isinstance(value, number) and not isinstance(value, bool))


# What tonight's budget allows, worked out beside the window and told to the session.

ALIKE_DEG = 2.0  # of declination: the smear of such targets is the same in practice


class BudgetGoal(QObject):
    """Follows budget, target, place and aim. Call `close` before letting go."""

    def __init__(
        self, session: Session, budget: Budget, plans: Plans, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._session, self._budget, self._plans = session, budget, plans
        self._asked: object = None
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._take)
        for signal in (budget.changed, plans.changed):
            signal.connect(self.refresh)
        session.follow(self._follow)

    def close(self) -> None:
        """Nothing more is worked out."""
        self._errand.close()

    def _follow(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot
        self.refresh()

    def refresh(self) -> None:
        """Asks only when something it depends on is different."""
        snapshot = self._tonight
        task = self._task()
        question = (task, snapshot.site, snapshot.air, snapshot.aim)
        if question == self._asked:
            return
        self._asked = question
        site, air, share = snapshot.site, snapshot.air, snapshot.aim.share
        if task is None or site is None or air is None:
            self._session.follow_budget(None)
            return
        self._errand.send(lambda: (question, _allowed(task, site, air, share)))

    def _task(self) -> Task | None:
        if self._budget.wanted.declination_deg is None:
            return None
        if not is_for(self._plans.target(), self._budget):
            return None
        try:
            return self._budget.task()
        except ValueError:
            return None

    def _take(self, answer: object) -> None:
        if isinstance(answer, tuple) and answer[0] == self._asked:
            self._session.follow_budget(answer[1])


def is_for(target: Target | None, budget: Budget) -> bool:
    """Whether the budget is one for tonight's target; while none is chosen it is for the night."""
    wanted = budget.wanted
    if target is None or wanted.declination_deg is None or target.name == wanted.name:
        return True
    dec_deg = target.dec_deg
    return math.isfinite(dec_deg) and abs(dec_deg - wanted.declination_deg) < ALIKE_DEG


def _allowed(task: Task, site: Site, air: Air, share: float) -> Allowed | None:
    """Slow; for the worker. None where the budget page says why there is no answer."""
    from core.imaging.task import UnusableTask, Vantage
    from core.imaging.tolerance import allowed_by

    vantage = Vantage.of(site, air)
    try:
        return allowed_by(task, vantage, share * vantage.pole_lift_rad)
    except UnusableTask:
        return None
