"""Sentences in the person's language: a literal template is looked up, then its fields filled."""

from __future__ import annotations

from collections.abc import Callable

Lookup = Callable[[str], str]  # from an English template to the person's; unknown ones come back


def _english(template: str) -> str:
    return template


ENGLISH = "en"

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
