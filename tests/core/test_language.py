"""Sentences in the person's language."""

from __future__ import annotations

import pytest

from core import language
from core.language import marked, say


@pytest.fixture
def backwards():
    language.use(
        "de", lambda template: {"{n} stars, {who}": "{who}: {n} Sterne"}.get(template, template)
    )
    yield
    language.use_english()


def test_english_is_spoken_unless_someone_says_otherwise():
    assert say("{n:.1f} stars, {who}", n=2.04, who="you") == "2.0 stars, you"


@pytest.mark.usefixtures("backwards")
def test_a_translation_may_put_the_fields_in_another_order():
    assert say("{n} stars, {who}", n=2, who="you") == "you: 2 Sterne"


@pytest.mark.usefixtures("backwards")
def test_an_unknown_sentence_stays_english():
    assert say("no such sentence") == "no such sentence"


def test_braces_in_a_sentence_without_fields_are_left_alone():
    assert say("type {leg}") == "type {leg}"


@pytest.mark.usefixtures("backwards")
def test_what_is_marked_is_translated_only_when_it_is_said():
    assert marked("{n} stars, {who}") == "{n} stars, {who}"
