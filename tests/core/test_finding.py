"""Codes and their sentences: each has one, and none is left over."""

from __future__ import annotations

import importlib
import pkgutil
from types import SimpleNamespace

import pytest

import core
from core import finding
from core.finding import Code, Finding, Refused
from core.language import marked

for _one in pkgutil.walk_packages(core.__path__, "core."):
    if not _one.name.endswith("__main__"):
        importlib.import_module(_one.name)


class Weather(Code):
    """As if it stood in `core.trial`."""

    WIND = "wind"
    GUST = "gust"
    STORMS = "storms"


Weather.__module__ = "core.trial.weather"
SENTENCES = {
    Weather.WIND: marked("The wind blows at {speed:.1f} m/s."),
    Weather.GUST: marked("Left out: {reason}"),
    Weather.STORMS: lambda count: f"{count} storms" if count != 1 else "one storm",
}


@pytest.fixture(autouse=True)
def trial(monkeypatch):
    monkeypatch.setitem(
        __import__("sys").modules, "core.trial.words", SimpleNamespace(SENTENCES=SENTENCES)
    )
    finding._sentences.cache_clear()
    yield
    finding._sentences.cache_clear()


def test_a_finding_is_worded_with_its_numbers():
    assert str(Finding.of(Weather.WIND, speed=4.26)) == "The wind blows at 4.3 m/s."


def test_a_finding_within_a_finding_is_worded_too():
    inner = Finding(Weather.WIND, {"speed": 2})
    assert str(Finding.of(Weather.GUST, reason=inner)) == "Left out: The wind blows at 2.0 m/s."


def test_what_one_template_cannot_say_a_function_says():
    assert str(Finding.of(Weather.STORMS, count=1)) == "one storm"
    assert str(Finding.of(Weather.STORMS, count=3)) == "3 storms"


def test_a_refusal_is_a_value_error_with_a_finding():
    with pytest.raises(ValueError, match="The wind blows") as refusal:
        raise Refused(Weather.WIND, speed=9.0)
    assert refusal.value.finding == Finding.of(Weather.WIND, speed=9.0)


def _codes() -> list[type[Code]]:
    left, found_ones = [Code], []
    while left:
        one = left.pop()
        left += one.__subclasses__()
        found_ones.append(one)
    return [one for one in found_ones if one.__module__.startswith("core.") and one is not Code]


def test_no_two_codes_of_a_kind_have_the_same_value():
    aliased = [kind for kind in _codes() if len(kind.__members__) != len(kind)]
    assert not aliased


def test_every_code_has_its_sentence_and_every_sentence_a_code():
    worded: dict[str, set[Code]] = {}
    for kind in _codes():
        if kind is not Weather:
            worded.setdefault(kind.__module__.split(".")[1], set()).update(kind)
    for subject, codes in worded.items():
        told = importlib.import_module(f"core.{subject}.words").SENTENCES
        assert set(told) == codes, set(told) ^ codes
