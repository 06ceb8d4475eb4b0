"""The parts of a form that are not figures: one of several, yes or no, a text."""

from __future__ import annotations

from enum import Enum
from typing import Any, Protocol

from PySide6.QtWidgets import QWidget

from app.widgets.choice import Choice
from app.widgets.field import Field
from app.widgets.figure import Figure
from app.widgets.named import Named


class Answer(Protocol):
    """Holds one field of a record while it is edited."""

    def widget(self) -> QWidget: ...

    def show_value(self, value: Any) -> None: ...

    def value(self) -> Any: ...

    def is_wrong(self) -> bool: ...


class FigureAnswer:
    """A figure, or None."""

    def __init__(self, figure: Figure) -> None:
        self.figure = figure

    def widget(self) -> QWidget:
        return self.figure

    def show_value(self, value: Any) -> None:
        self.figure.show_figure(value)

    def value(self) -> Any:
        return self.figure.read()

    def is_wrong(self) -> bool:
        return self.figure.is_wrong()


class TextAnswer:
    """Any text."""

    def __init__(self, field: Field) -> None:
        self.field = field

    def widget(self) -> QWidget:
        return self.field

    def show_value(self, value: Any) -> None:
        self.field.show_text(str(value))

    def value(self) -> Any:
        return self.field.text()

    def is_wrong(self) -> bool:
        return self.field.is_wrong()


class EnumAnswer:
    """One member of an enumeration, by keys."""

    def __init__(self, name: str, kind: type[Enum], words: dict[str, str]) -> None:
        self._kind = kind
        self.choice = Choice(name, [(one.name, words[one.name]) for one in kind])
        self._named = Named(name, self.choice)

    def widget(self) -> QWidget:
        return self._named

    def show_value(self, value: Any) -> None:
        self.choice.show_choice(value.name)

    def value(self) -> Any:
        return self._kind[self.choice.choice()]

    def is_wrong(self) -> bool:
        return False


YES_NO = {"yes": True, "no": False, "unknown": None}


class YesNoAnswer:
    """True, False, or None when it is not known."""

    def __init__(self, name: str, words: tuple[str, str, str]) -> None:
        self.choice = Choice(name, list(zip(YES_NO, words, strict=True)))
        self._named = Named(name, self.choice)

    def widget(self) -> QWidget:
        return self._named

    def show_value(self, value: Any) -> None:
        names = {given: name for name, given in YES_NO.items()}
        self.choice.show_choice(names[value])

    def value(self) -> Any:
        return YES_NO[self.choice.choice()]

    def is_wrong(self) -> bool:
        return False
