"""The few figures that answer a page's question, large, side by side where there is room."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.widgets.columns import Columns
from app.widgets.text import Panel, Text

LEAST_PX = 210


@dataclass(frozen=True)
class Fact:
    """`figure` large, `words` below it."""

    figure: str
    words: str = ""


class _One(QWidget):
    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self._figure = Text("", "figure")
        self._words = Text("", "side")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (Text(name, "quiet"), self._figure, self._words):
            column.addWidget(part)

    def show_fact(self, fact: Fact) -> None:
        self._figure.say(fact.figure)
        self._words.say(fact.words)
        self.setAccessibleDescription(f"{fact.figure} {fact.words}".strip())


class Facts(Panel):
    """`names`: what each figure tells; a sentence about all of them may stand below."""

    def __init__(self, name: str, names: Sequence[str], parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(name)
        self._ones = [_One(one) for one in names]
        self._below = Text("", "quiet")
        self.column.addWidget(Columns(self._ones, LEAST_PX, most=len(names), are_rows=True))
        self.column.addWidget(self._below)
        self._below.hide()

    def show_facts(self, facts: Sequence[Fact], below: str = "") -> None:
        for one, fact in zip(self._ones, facts, strict=True):
            one.show_fact(fact)
        self._below.say(below)

    def told(self) -> list[str]:
        """What each figure says, for those who cannot see it and for tests."""
        return [one.accessibleDescription() for one in self._ones]

    def below(self) -> str:
        return self._below.text()
