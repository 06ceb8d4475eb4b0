"""Values of a file from elsewhere, each taken for what it should be or refused in words."""

from __future__ import annotations

import math
from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.language import say

Floats = NDArray[np.float64]

MAX_KEY = 2**53


def array(given: Any) -> Floats:
    values = [math.nan if value is None else finite(value) for value in list_of(given)]
    return np.array(values, dtype=np.float64)


def array_or_none(given: Any) -> Floats | None:
    return None if given is None else array(given)


def list_of(given: Any) -> list[Any]:
    if not isinstance(given, list):
        raise TypeError(say("a list is missing"))
    return given


def text(given: Any) -> str:
    if not isinstance(given, str):
        raise TypeError(say("{given!r:.40} stands where a text belongs", given=given))
    given.encode("utf-8")  # half a surrogate cannot be kept
    return given


def flag(given: Any) -> bool:
    if not isinstance(given, bool):
        raise TypeError(say("{given!r:.40} stands where true or false belongs", given=given))
    return given


def key(given: Any) -> int:
    if isinstance(given, bool) or not isinstance(given, int) or not 0 <= given <= MAX_KEY:
        raise ValueError(say("{given!r:.40} is no key", given=given))
    return given


def number(given: Any) -> float:
    if isinstance(given, bool) or not isinstance(given, (int, float)):
        raise TypeError(say("{given!r:.40} stands where a number belongs", given=given))
    return float(given)


LARGEST = 1e15  # of anything a night holds; beyond it sums and pictures overflow


def finite(given: Any) -> float:
    value = number(given)
    if not abs(value) < LARGEST:
        raise ValueError(say("{given!r:.40} is no number that can be used", given=given))
    return value


def finite_or_none(given: Any) -> float | None:
    return None if given is None else finite(given)
