"""The catalogues of translations: complete, without leftovers, with the fields of the sentences."""

from __future__ import annotations

import string

import pytest

from language import CODES, sentences, translated


def fields(template: str) -> set[tuple[str, str | None]]:
    """Names and formats of what is filled in."""
    try:
        parts = list(string.Formatter().parse(template))
    except ValueError:  # braces that stand for themselves
        return set()
    return {(name, form) for _, name, form, _ in parts if name is not None}


@pytest.mark.parametrize("code", CODES)
def test_every_sentence_has_its_translation(code):
    """Run packaging/language.py when this fails: it says what is missing."""
    assert sorted(set(sentences()) - set(translated(code))) == []


@pytest.mark.parametrize("code", CODES)
def test_no_translation_is_left_of_a_sentence_that_is_gone(code):
    assert sorted(set(translated(code)) - set(sentences())) == []


@pytest.mark.parametrize("code", CODES)
def test_translations_fill_in_the_same_fields_in_the_same_form(code):
    wrong = [text for text, words in translated(code).items() if fields(text) != fields(words)]
    assert wrong == []


def test_other_fields_are_seen():
    assert fields("{a:.1f} of {b}") == {("a", ".1f"), ("b", "")} != fields("{b} von {a:.2f}")
