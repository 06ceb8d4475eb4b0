"""Every text a person can come upon in a widget and its parts, and which of them nobody said."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from string import Formatter

import pyqtgraph as pg
from PySide6.QtGui import QPainter
from PySide6.QtWidgets import (
    QAbstractButton,
    QGraphicsTextItem,
    QLabel,
    QLineEdit,
    QListView,
    QPlainTextEdit,
    QWidget,
)

from app.ui import translation
from core.sky import catalogues

OPEN, CLOSE = "⟦", "⟧"
LETTERS = re.compile(r"[^\W\d_]{2,}")  # a letter alone is a key, a unit or a wind of the compass
# The same in every language: the program's own name, languages in their own words, the time scale.
NAMES = ("Poleward", "UTC", *translation.NAMES.values())


def bracketed(template: str) -> str:
    """What a person reads instead of the template. Fields stay outside the brackets: what fills
    them is a number, a name, or has to be said itself.
    """
    said = ""
    try:
        parts = list(Formatter().parse(template))
    except ValueError:  # a text with braces of its own
        return f"{OPEN}{template}{CLOSE}"
    for words, name, form, conversion in parts:
        if words:
            said += OPEN + words.replace("{", "{{").replace("}", "}}") + CLOSE
        if name is not None:
            turned = f"!{conversion}" if conversion else ""
            said += f"{{{name}{turned}{f':{form}' if form else ''}}}"
    return said


def unsaid(text: str) -> str:
    """What of a text lies outside all brackets.

    A text may be a piece of a said one, as where a list shows its first words alone: a bracket
    without its fellow reaches to the end of the text.
    """
    opened = text.count(OPEN) - text.count(CLOSE)
    text = OPEN * max(-opened, 0) + text + CLOSE * max(opened, 0)
    depth, outside = 0, []
    for sign in text:
        depth -= sign == CLOSE
        outside.append(sign if depth == 0 and sign not in (OPEN, CLOSE) else " ")
        depth += sign == OPEN
    return "".join(outside)


class Allowed:
    """Words that nobody translates: names of things in the sky and of languages, and the `names`
    a test gives: what was typed, the time zone, columns of files. Numbers, signs and single letters
    need no leave.
    """

    def __init__(self, names: Iterable[str]) -> None:
        kept = [*NAMES, *names]
        for star in catalogues.load_stars().stars:
            kept += [star.name, star.constellation]
        for target in catalogues.load_deep_sky().objects:
            kept += [target.name, *target.other_names]
        self._words = {word for name in kept for word in LETTERS.findall(name)}

    def left(self, text: str) -> list[str]:
        """The words outside the brackets that are none of these."""
        return [word for word in LETTERS.findall(unsaid(text)) if word not in self._words]


def texts_of(root: QWidget) -> Iterator[tuple[str, str]]:
    """Where each text stands, and the text; only what is in view."""
    for widget in (root, *root.findChildren(QWidget)):
        if not widget.isVisible():
            continue
        kind = f"{type(widget).__module__}.{type(widget).__name__}"
        for where, text in _of_widget(widget):
            if text:
                yield f"{kind} {where}", text


def _of_widget(widget: QWidget) -> Iterator[tuple[str, str]]:
    yield "tool tip", widget.toolTip()
    yield "accessible name", widget.accessibleName()
    yield "accessible description", widget.accessibleDescription()
    if isinstance(widget, QLabel | QAbstractButton):
        yield "text", widget.text()
    if isinstance(widget, QLineEdit):
        yield "placeholder", widget.placeholderText()
    if isinstance(widget, QPlainTextEdit) and widget.isReadOnly():
        yield "text", widget.toPlainText()
    if isinstance(widget, QListView):
        rows = widget.model()
        yield from (("line", rows.index(row, 0).data()) for row in range(rows.rowCount()))
    if isinstance(widget, pg.PlotWidget):
        for item in widget.scene().items():
            if isinstance(item, QGraphicsTextItem) and item.isVisible():
                yield "in the plot", item.toPlainText()


class Painted:
    """Texts that widgets paint themselves, gathered while a test looks."""

    def __init__(self, monkeypatch) -> None:
        self.texts: list[str] = []
        draw = QPainter.drawText

        def drawn(painter: QPainter, *args: object) -> object:
            self.texts += [one for one in args if isinstance(one, str)]
            return draw(painter, *args)

        monkeypatch.setattr(QPainter, "drawText", drawn)
