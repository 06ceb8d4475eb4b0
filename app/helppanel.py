"""Help beside or in place of the page in view: this page, words, keys."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app import translation
from app.helptexts import glossary, keys, page_help
from app.widgets.choice import Choice
from app.widgets.key import Key
from app.widgets.scrolled import Scrolled
from app.widgets.sections import Section, Sections
from app.widgets.text import Text
from core.language import spoken

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
