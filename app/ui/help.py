"""Help beside the page in view, its texts, and the guide for the first start."""

from __future__ import annotations

import json
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from PySide6.QtCore import QCoreApplication, QSettings, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.ui import translation
from app.ui.form import Choice, Key, KeyRow, Section, Sections
from app.ui.text import Panel, Scrolled, Text
from core.language import say, spoken

# The texts of the help, the glossary, the list of keys and the first-run guide.

TABLE = Path(__file__).parents[2] / "resources" / "help.json"
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


# Help beside or in place of the page in view: this page, words, keys.

PAGE, WORDS, KEYS, LANGUAGE = "page", "words", "keys", "language"


class HelpPanel(QWidget):
    """`closed`: the person is done with it. `language_wanted`: its code, from the next start on."""

    closed = Signal()
    language_wanted = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(self.tr("Help"))
        self._title = Text("", "question")
        self._close = Key(self.tr("Close help"))
        self._close.clicked.connect(self.closed)
        self._parts = {name: Text() for name in ("what", "how", "source", "sign")}
        self._sections = Sections(
            self.tr("Part of the help"),
            [
                Section(PAGE, self.tr("This page"), self._page_section),
                Section(WORDS, self.tr("Words"), lambda: _listed(glossary())),
                Section(KEYS, self.tr("Keys"), lambda: _listed(keys())),
                Section(LANGUAGE, self.tr("Language"), self._language_section),
            ],
        )
        self._scrolled = Scrolled(self._arranged())
        self._scrolled.setFocusPolicy(Qt.FocusPolicy.StrongFocus)  # so that arrow keys scroll it
        self._scrolled.setAccessibleName(self.tr("Text of the help"))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self._scrolled)
        self._sections.show_section(PAGE)
        self.setFocusProxy(self._close)

    def _arranged(self) -> QWidget:
        content = QWidget()
        head = QHBoxLayout()
        head.addWidget(self._title, 1)
        head.addWidget(self._close, 0, Qt.AlignmentFlag.AlignTop)
        column = QVBoxLayout(content)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(12)
        column.addLayout(head)
        column.addWidget(self._sections)
        column.addStretch()
        return content

    def _page_section(self) -> QWidget:
        names = {
            "what": self.tr("What is this?"),
            "how": self.tr("How is it computed?"),
            "source": self.tr("From which source?"),
            "sign": self.tr("Which way is positive?"),
        }
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        for name, text in self._parts.items():
            column.addWidget(Text(names[name], "title"))
            column.addWidget(text)
        return holder

    def _language_section(self) -> QWidget:
        holder = QWidget()
        column = QVBoxLayout(holder)
        column.setContentsMargins(0, 0, 0, 0)
        self._languages = Choice(self.tr("Language"), list(translation.NAMES.items()))
        self._languages.show_choice(spoken())
        self._languages.chosen.connect(self.language_wanted)
        column.addWidget(self._languages)
        column.addWidget(Text(self.tr("Another language is spoken from the next start on.")))
        return holder

    def languages(self) -> Choice:
        """Once the section was opened."""
        return self._languages

    def sections(self) -> Sections:
        return self._sections

    def close_button(self) -> Key:
        return self._close

    def said(self) -> str:
        """What is said of the page."""
        return " ".join(part.text() for part in self._parts.values())

    def show_page(self, name: str, title: str) -> None:
        found = page_help(name)
        self._title.setText(self.tr("Help: {page}").format(page=title))
        for part, text in self._parts.items():
            text.setText(getattr(found, part))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.closed.emit()
        else:
            super().keyPressEvent(event)


def _listed(entries: Sequence[tuple[str, str]]) -> QWidget:
    holder = QWidget()
    column = QVBoxLayout(holder)
    column.setContentsMargins(0, 0, 0, 0)
    column.setSpacing(2)
    for name, meaning in entries:
        column.addWidget(Text(name, "title"))
        column.addWidget(Text(meaning))
        column.addSpacing(8)
    return holder


# The guide for the first start: four screens at most, above the page, skipped with one key.

SEEN = "guide_seen"


class FirstRun(Panel):
    """Hidden once it was read or skipped, for ever. `site_wanted` at the end of it."""

    site_wanted = Signal()

    def __init__(self, settings: QSettings, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self._settings = settings
        self._screens = screens()
        self._at = 0
        self._where = Text("", "small")
        self._title = Text("", "question")
        self._text = Text()
        self._next = Key("", "primary")
        self._back = Key(self.tr("Back"))
        self._skip = Key(self.tr("Skip the guide"))
        self._next.clicked.connect(self._go_on)
        self._back.clicked.connect(lambda: self._show(self._at - 1))
        self._skip.clicked.connect(self._end)
        keys = KeyRow((self._next, self._back, self._skip))
        for part in (self._where, self._title, self._text, keys):
            self.column.addWidget(part)
        self.setAccessibleName(self.tr("Guide for the first start"))
        self._show(0)
        self.setVisible(not settings.value(SEEN, False, bool))

    def title(self) -> str:
        return self._title.text()

    def next_button(self) -> Key:
        return self._next

    def back_button(self) -> Key:
        return self._back

    def skip_button(self) -> Key:
        return self._skip

    def _show(self, number: int) -> None:
        self._at = number
        screen, count = self._screens[number], len(self._screens)
        is_last = number == count - 1
        self._where.setText(self.tr("{n} of {count}").format(n=number + 1, count=count))
        self._title.setText(screen.title)
        self._text.setText(screen.text)
        self._next.setText(self.tr("Enter your site") if is_last else self.tr("Next"))
        self._back.setEnabled(number > 0)

    def _go_on(self) -> None:
        if self._at + 1 < len(self._screens):
            self._show(self._at + 1)
            return
        self._end()
        self.site_wanted.emit()

    def _end(self) -> None:
        self._settings.setValue(SEEN, True)
        self.hide()
