"""A computation and a log of nights that do what a test tells them."""

from __future__ import annotations

from collections.abc import Callable
from threading import Event
from types import SimpleNamespace
from typing import Any

import numpy as np

from app.night.question import AxisAnswer, AxisQuestion
from core.alignment.axis.evidence import PriorAxis

PATIENCE_S = 5.0
FIGURES = (
    *("azimuth_error_arcmin", "azimuth_sigma_arcmin", "azimuth_interval_factor"),
    *("altitude_error_arcmin", "altitude_sigma_arcmin", "altitude_interval_factor"),
    *("altitude_error_refracted_arcmin", "correlation", "latitude_deg"),
)
NOTHING_KNOWN: dict[str, Any] = {
    **dict.fromkeys(FIGURES, float("nan")),
    "legs": (),
    "notes": (),
    "altitude_error_from": lambda _aim: float("nan"),
    "determined": False,
    "information_arcmin2": (),
    "before_information_arcmin2": np.zeros((2, 2)),
    "knowledge": PriorAxis.about_the_pole(2.0),
}


def counting_answer(question: AxisQuestion) -> AxisAnswer:
    """An answer that tells what it was asked about, in place of real results."""
    counts = {leg.label: leg.utc_s.size for leg in question.legs}
    solution: Any = SimpleNamespace(counts=counts, site=question.site, **NOTHING_KNOWN)
    advice: Any = SimpleNamespace(aim=question.aim)
    forecast: Any = SimpleNamespace(label=question.watching, target=question.target_arcmin)
    return AxisAnswer(question.revision, solution, advice, forecast if question.watching else None)


class HeldComputation:
    """Waits in the worker until `release`; remembers every question it got."""

    def __init__(self) -> None:
        self.questions: list[AxisQuestion] = []
        self.entered = Event()
        self.release = Event()

    def __call__(self, question: AxisQuestion) -> AxisAnswer:
        self.questions.append(question)
        self.entered.set()
        assert self.release.wait(PATIENCE_S)
        return counting_answer(question)


class ScriptedLog:
    """Remembers every call; from `fails_from` on (counted in calls) each raises instead.

    What is read back, or kept beside the legs, is remembered apart: `settings` and `entries`.
    """

    axis_state_id = 7

    def __init__(self, fails_from: int | None = None) -> None:
        self.calls: list[tuple[str, tuple[Any, ...]]] = []
        self._fails_from = fails_from
        self._legs = 0
        self.settings: dict[str, Any] = {}
        self.entries: list[tuple[str, Any]] = []

    def get_setting(self, key: str, default: Any = None) -> Any:
        return self.settings.get(key, default)

    def put_setting(self, key: str, value: Any) -> None:
        self.settings[key] = value

    def put_entry(self, kind: str, content: Any) -> int:
        self.entries.append((kind, content))
        return len(self.entries)

    def __getattr__(self, name: str) -> Callable[..., Any]:
        return lambda *args: self._note(name, args)

    def _note(self, name: str, args: tuple[Any, ...]) -> int:
        self.calls.append((name, tuple(_plain(arg) for arg in args)))
        if self._fails_from is not None and len(self.calls) > self._fails_from:
            raise OSError("no space left on device")
        self._legs += name == "add_leg"
        return self._legs

    def names(self) -> list[str]:
        return [name for name, _ in self.calls]


def _plain(value: Any) -> Any:
    return value.tolist() if isinstance(value, np.ndarray) else value
