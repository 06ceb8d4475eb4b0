"""Handing everything at once to the log of nights, whatever state the disk is in."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any, Protocol, TypeVar

import numpy as np
from numpy.typing import NDArray

from app.sources.source import Reading
from core.alignment.driftlog.records import Leg
from core.language import say
from core.night.record import Kind, Purpose, adjustment_content, goal_content, result_content
from core.sky.site import Air, Site

if TYPE_CHECKING:  # brings scipy along, which the first window must not wait for
    from core.alignment.aim import Aim
    from core.alignment.axis.solution import Solution
    from core.alignment.guide.bolts import Turn
    from core.alignment.guide.goal import Goal

Floats = NDArray[np.float64]
T = TypeVar("T")


class LogOfNight(Protocol):
    """What the session needs of `app.storage.nights.NightLog`; every call returns at once."""

    def add_leg(
        self, label: str, star_name: str, ra_deg: float, dec_deg: float, purpose: str = ...
    ) -> int: ...

    def add_samples(
        self,
        leg_id: int,
        utc_s: Floats,
        north_arcsec: Floats,
        east_arcsec: Floats | None = None,
        sigma_arcsec: Floats | None = None,
    ) -> None: ...

    def delete_last_sample(self, leg_id: int) -> None: ...

    def end_leg(self, leg_id: int) -> None: ...

    def discard_leg(self, leg_id: int) -> None: ...

    def begin_axis_state(self) -> int: ...

    def set_site(self, site: Site, air: Air) -> None: ...

    def set_aim(self, aim: Aim) -> None: ...

    def set_target(self, arcmin: float) -> None: ...

    def put_setting(self, key: str, value: Any) -> None: ...

    def get_setting(self, key: str, default: Any = None) -> Any: ...

    def put_entry(self, kind: str, content: Mapping[str, Any]) -> int: ...

    @property
    def axis_state_id(self) -> int: ...


def failure_sentence(error: Exception) -> str:
    """What the person reads when the log of nights refuses."""
    return say(
        "The log of nights could not be written ({reason}). What you measure "
        "stays in memory only: export it as a drift log before you close the "
        "program.",
        reason=error or type(error).__name__,
    )


class Keeper:
    """Passes every step on to the log. A log that fails costs a sentence, never the night.

    Without a log (None) nothing is kept. `failed` gets one sentence per failure.
    """

    def __init__(self, log: LogOfNight | None, failed: Callable[[str], None]) -> None:
        self._log = log
        self._failed = failed

    @property
    def keeps(self) -> bool:
        """Whether there is a log at all."""
        return self._log is not None

    def add_leg(self, label: str, star_name: str, ra_deg: float, dec_deg: float) -> int | None:
        """The number the log gives the leg; None when it is not kept."""
        return self._try(lambda log: log.add_leg(label, star_name, ra_deg, dec_deg))

    def add_run(self, label: str, ra_deg: float, dec_deg: float, purpose: Purpose) -> int | None:
        """Likewise of a run that is watched for the drive."""
        return self._try(lambda log: log.add_leg(label, "", ra_deg, dec_deg, purpose))

    def add_reading(self, leg_id: int | None, reading: Reading) -> None:
        """Keep one reading."""
        east, sigma = reading.east_arcsec, reading.sigma_arcsec
        if leg_id is not None:
            self._try(
                lambda log: log.add_samples(
                    leg_id,
                    np.array([reading.utc_s]),
                    np.array([reading.north_arcsec]),
                    None if east is None else np.array([east]),
                    None if sigma is None else np.array([sigma]),
                )
            )

    def add_readings(self, leg_id: int | None, leg: Leg) -> None:
        """Keep all readings of a leg."""
        if leg_id is not None:
            columns = (leg.utc_s, leg.north_arcsec, leg.east_arcsec, leg.sigma_arcsec)
            self._try(lambda log: log.add_samples(leg_id, *columns))

    def delete_last_reading(self, leg_id: int | None) -> None:
        """Take the newest reading of a leg back."""
        if leg_id is not None:
            self._try(lambda log: log.delete_last_sample(leg_id))

    def end_leg(self, leg_id: int | None) -> None:
        """Mark a leg as ended."""
        if leg_id is not None:
            self._try(lambda log: log.end_leg(leg_id))

    def discard_leg(self, leg_id: int | None) -> None:
        """Mark a leg as discarded; its readings stay on disk."""
        if leg_id is not None:
            self._try(lambda log: log.discard_leg(leg_id))

    def begin_axis_state(self) -> None:
        """Mark that the bolts were turned."""
        self._try(lambda log: log.begin_axis_state())

    def put_site(self, site: Site, air: Air) -> None:
        """Keep where the mount stands."""
        self._try(lambda log: log.set_site(site, air))

    def put_aim(self, aim: Aim) -> None:
        """Keep which pole to align on."""
        self._try(lambda log: log.set_aim(aim))

    def put_target(self, arcmin: float) -> None:
        """Keep how small the error bars should become."""
        self._try(lambda log: log.set_target(arcmin))

    def put_setting(self, key: str, value: Any) -> None:
        """Keep anything JSON can hold."""
        self._try(lambda log: log.put_setting(key, value))

    def get_setting(self, key: str, default: Any = None) -> Any:
        """What was kept under a key, else `default`."""
        return default if self._log is None else self._log.get_setting(key, default)

    def put_result(
        self, solution: Solution, aim: Aim, goal: Goal, chance_within: float | None
    ) -> None:
        """Keep what was found of the axis, and the verdict on it."""
        self._put_entry(
            Kind.RESULT,
            lambda state: {
                **result_content(solution, aim, state),
                **goal_content(goal, chance_within),
            },
        )

    def put_adjustment(self, turn: Turn | None, counted: tuple[float | None, float | None]) -> None:
        """Keep how the bolts were turned, before the axis state that follows begins."""
        meant: tuple[float | None, float | None] = (None, None)
        if turn is not None:
            meant = turn.azimuth_arcmin, turn.altitude_arcmin
        self._put_entry(
            Kind.ADJUSTMENT, lambda state: adjustment_content(state, *meant, counted[0], counted[1])
        )

    def _put_entry(self, kind: Kind, made: Callable[[int], dict[str, Any]]) -> None:
        """`made` gives the content for the key of the axis state; its faults are not the disk's."""
        state = self._try(lambda log: log.axis_state_id)
        if state is not None:
            content = made(state)
            self._try(lambda log: log.put_entry(kind, content))

    def _try(self, step: Callable[[LogOfNight], T]) -> T | None:
        if self._log is None:
            return None
        try:
            return step(self._log)
        except Exception as error:
            self._failed(failure_sentence(error))
            return None
