"""The texts of the help, the glossary, the list of keys and the first-run guide."""

from __future__ import annotations

import json
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from PySide6.QtCore import QCoreApplication

from core.language import say

TABLE = Path(__file__).parents[1] / "resources" / "help.json"
CONTEXT = "Help"


@dataclass(frozen=True)
class PageHelp:
    """Of one page: what it is, how it is computed, from which source, and with which signs."""

    what: str
    how: str
    source: str
    sign: str


@dataclass(frozen=True)
class Screen:
    """One of the first-run guide."""

    title: str
    text: str


def page_help(name: str) -> PageHelp:
    """Translated. KeyError for a page without help, which a test rules out."""
    texts = _table()["pages"][name]
    return PageHelp(*(tr(texts[part]) for part in ("what", "how", "source", "sign")))


def glossary() -> list[tuple[str, str]]:
    """Words and what they mean, in alphabetical order of the language."""
    words = [(tr(word), tr(meaning)) for word, meaning in _table()["glossary"]]
    return sorted(words, key=lambda entry: entry[0].casefold())


def keys() -> list[tuple[str, str]]:
    """Keys and what they do."""
    return [(tr(key), tr(does)) for key, does in _table()["keys"]]


def screens() -> list[Screen]:
    """Of the first-run guide, in order."""
    return [Screen(tr(one["title"]), tr(one["text"])) for one in _table()["firstrun"]]


def source_texts() -> tuple[str, ...]:
    """Every text there is, once each, for translators."""
    table = _table()
    texts = [text for page in table["pages"].values() for text in page.values()]
    texts += [text for entry in (*table["glossary"], *table["keys"]) for text in entry]
    texts += [text for one in table["firstrun"] for text in one.values()]
    return tuple(dict.fromkeys(texts))


def tr(text: str) -> str:
    return QCoreApplication.translate(CONTEXT, text)


@cache
def _table() -> dict[str, Any]:
    try:
        table: dict[str, Any] = json.loads(TABLE.read_text(encoding="utf-8"))
    except (OSError, ValueError) as error:
        raise RuntimeError(
            say(
                "The texts of the help {file} cannot be read ({reason}). Install Poleward again.",
                file=TABLE,
                reason=error,
            )
        ) from error
    return table
