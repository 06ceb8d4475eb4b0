"""Sentences in the person's language: a literal template is looked up, then its fields filled."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import cache
from importlib import import_module

from core.finding import Code, Finding, Refused

Lookup = Callable[[str], str]  # from an English template to the person's; unknown ones come back


def _english(template: str) -> str:
    return template


ENGLISH = "en"

# A template, or what makes the sentence of the values where one template is not enough.
Wording = str | Callable[..., str]

_code = ENGLISH
_lookup: Lookup = _english


def use(code: str, lookup: Lookup) -> None:
    """Whoever starts the program says, once and before any sentence is made, how to look up.

    `code`: of the language, as in ISO 639-1 and HTML.
    """
    global _code, _lookup
    _code, _lookup = code, lookup


def use_english() -> None:
    """As long as nobody said otherwise."""
    use(ENGLISH, _english)


def spoken() -> str:
    """The code of the language sentences are said in."""
    return _code


def say(template: str, /, **values: object) -> str:
    """The template in the person's language, its named fields filled as `str.format` does.

    Never called while a module loads: the language is not known then. What a table of a module
    holds is `marked` there and said where it is shown.
    """
    return _lookup(template).format(**values) if values else _lookup(template)


def marked(template: str, /) -> str:
    """The template as it is, marked for the translators."""
    return template


def sentence(told: Finding | Code | Exception) -> str:
    """What was found, in the person's language. Of any other error its own text.

    The words of a code defined anywhere in `core.sky` stand in `core.sky.words.SENTENCES`; so for
    every subject.
    """
    if isinstance(told, Refused):
        told = told.finding
    if isinstance(told, Exception):
        return str(told)
    code, given = (told, {}) if isinstance(told, Code) else (told.code, told.values)
    wording = _sentences(type(code).__module__.split(".")[1])[code]
    values = {name: _worded(value) for name, value in given.items()}
    return say(wording, **values) if isinstance(wording, str) else wording(**values)


def _worded(value: object) -> object:
    return sentence(value) if isinstance(value, Finding | Code) else value


@cache
def _sentences(subject: str) -> Mapping[Code, Wording]:
    found: Mapping[Code, Wording] = import_module(f"core.{subject}.words").SENTENCES
    return found
