"""What is pressed and typed: keys, choices, ticks; lines for text, figures and quantities."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import cache, partial

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import (
    QApplication,
    QBoxLayout,
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QLayout,
    QLayoutItem,
    QLineEdit,
    QPlainTextEdit,
    QProxyStyle,
    QPushButton,
    QSizePolicy,
    QStyle,
    QStyleOption,
    QVBoxLayout,
    QWidget,
)

from app.ui.redraw import lay_out, polish
from app.ui.style import GROWS, TOUCH_PX, tell_grown
from app.ui.text import Text
from core.alignment.goal import Aim
from core.language import marked, say
from core.mount.equipment import Quantity, said_unit

# Widgets in a row that goes on in the next line where the width ends.


class Flow(QLayout):
    """Items keep the size they ask for; lines are as high as their highest item.

    Qt asks for the height at a width some hundred times while a page is laid out, so what was
    found is kept until an item changes.
    """

    def __init__(self, parent: QWidget | None = None, gap_px: int = 2) -> None:
        super().__init__(parent)
        self._gap_px = gap_px
        self._items: list[QLayoutItem] = []
        self._height: dict[int, int] = {}  # by width
        self.setContentsMargins(0, 0, 0, 0)

    def addItem(self, item: QLayoutItem) -> None:
        self._items.append(item)
        self.invalidate()

    def count(self) -> int:
        return len(self._items)

    def itemAt(self, index: int) -> QLayoutItem | None:
        return self._items[index] if 0 <= index < len(self._items) else None

    def takeAt(self, index: int) -> QLayoutItem | None:
        if not 0 <= index < len(self._items):
            return None
        self.invalidate()
        return self._items.pop(index)

    def expandingDirections(self) -> Qt.Orientation:
        return Qt.Orientation(0)

    def hasHeightForWidth(self) -> bool:
        return True

    def invalidate(self) -> None:
        self._height.clear()
        super().invalidate()

    def heightForWidth(self, width: int) -> int:
        if width not in self._height:
            self._height[width] = self._lay(QRect(0, 0, width, 0), only_measure=True)
        return self._height[width]

    def setGeometry(self, where: QRect) -> None:
        super().setGeometry(where)
        self._lay(where, only_measure=False)

    def sizeHint(self) -> QSize:
        """All in one row."""
        sizes = [item.sizeHint() for item in self._shown()]
        width = sum(size.width() for size in sizes) + self._gap_px * max(len(sizes) - 1, 0)
        return QSize(width, max((size.height() for size in sizes), default=0))

    def minimumSize(self) -> QSize:
        sizes = [item.minimumSize() for item in self._shown()]
        return QSize(
            max((size.width() for size in sizes), default=0),
            max((size.height() for size in sizes), default=0),
        )

    def _shown(self) -> list[QLayoutItem]:
        return [item for item in self._items if not item.isEmpty()]

    def _lay(self, where: QRect, only_measure: bool) -> int:
        """Places the items and returns the height they take."""
        x, y, line = where.x(), where.y(), 0
        for item in self._shown():
            size = item.sizeHint()
            if x > where.x() and x + size.width() > where.x() + where.width():
                x, y, line = where.x(), y + line + self._gap_px, 0
            if not only_measure:
                item.setGeometry(QRect(QPoint(x, y), size))
            x += size.width() + self._gap_px
            line = max(line, size.height())
        return y + line - where.y()


# A key to press: never smaller than a cold finger.

MARGIN_PX = 2  # around a key, where the ring of the focus goes
RING_PX = 2
RING_INSET = (6.0, 6.0, -6.0, -6.0)  # within the ring of the style sheet
RING_RADIUS_PX = 3.0
LEAST = QSize(TOUCH_PX + 2 * MARGIN_PX, TOUCH_PX + 2 * MARGIN_PX)


class Key(QPushButton):
    """`kind`: primary for the one action of a page, link for a quiet one; plain when empty."""

    def __init__(self, words: str = "", kind: str = "", parent: QWidget | None = None) -> None:
        super().__init__(words, parent)
        self.setProperty("kind", kind)

    def sizeHint(self) -> QSize:
        return super().sizeHint().expandedTo(LEAST)

    def minimumSizeHint(self) -> QSize:
        """Words are never cut: a key asks for all the room they take."""
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        """On the filled key of a page the ring of the style sheet hardly stands out: at night both
        are red. A second one within it, in the colour of fields, does.
        """
        super().paintEvent(event)
        if self.hasFocus() and self.property("kind") == "primary":
            painter = QPainter(self)
            painter.setRenderHint(QPainter.RenderHint.Antialiasing)
            painter.setPen(QPen(QApplication.palette().base().color(), RING_PX))
            inside = QRectF(self.rect()).adjusted(*RING_INSET)
            painter.drawRoundedRect(inside, RING_RADIUS_PX, RING_RADIUS_PX)


# Keys in a row that goes on in the next line where the width ends.


class KeyRow(QWidget):
    def __init__(self, parts: Sequence[QWidget] = (), parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._flow = Flow(self)
        for part in parts:
            self._flow.addWidget(part)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def add(self, part: QWidget) -> None:
        """At the end."""
        self._flow.addWidget(part)


# Keys of which one is down.


class Choice(QWidget):
    """Arrow keys move between them. `chosen` fires for the person, not for `show_choice`."""

    chosen = Signal(str)

    def __init__(
        self, name: str, options: Sequence[tuple[str, str]], parent: QWidget | None = None
    ) -> None:
        """`options`: pairs of a key and the words on it."""
        super().__init__(parent)
        self.setAccessibleName(name)
        self._keys: dict[str, Key] = {}
        self._group = QButtonGroup(self)
        self._flow = Flow(self)
        for option, words in options:
            self._add(name, option, words)
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        self.setSizePolicy(policy)

    def _add(self, name: str, option: str, words: str) -> None:
        key = Key(words)
        key.setCheckable(True)
        key.setAccessibleName(f"{name}: {words}")
        key.clicked.connect(lambda: self.chosen.emit(option))
        self._group.addButton(key)
        self._keys[option] = key
        self._flow.addWidget(key)

    def choice(self) -> str:
        return next((option for option, key in self._keys.items() if key.isChecked()), "")

    def options(self) -> list[str]:
        """In the order of the keys."""
        return list(self._keys)

    def show_choice(self, option: str) -> None:
        self._keys[option].setChecked(True)

    def show_none(self) -> None:
        """All keys up."""
        self._group.setExclusive(False)
        for key in self._keys.values():
            key.setChecked(False)
        self._group.setExclusive(True)

    def button(self, option: str) -> Key:
        return self._keys[option]


# A choice whose options come and go.


class OptionKeys(QWidget):
    """A name beside or above keys that are rebuilt only when the options are others than before."""

    chosen = Signal(str)

    def __init__(self, name: str, is_beside: bool = False, parent: QWidget | None = None) -> None:
        """`is_beside`: the name stands beside the keys."""
        super().__init__(parent)
        self._name = name
        self._options: list[tuple[str, str]] = []
        self._choice: Choice | None = None
        way = QBoxLayout.Direction.LeftToRight if is_beside else QBoxLayout.Direction.TopToBottom
        self._box = QBoxLayout(way, self)
        self._box.setContentsMargins(0, 0, 0, 0)
        self._box.setSpacing(8 if is_beside else 3)
        title = Text(name, "quiet" if is_beside else "")
        title.setWordWrap(not is_beside)
        self._box.addWidget(title)

    def offer(self, options: Sequence[tuple[str, str]], chosen: str) -> None:
        """`options`: pairs of a key and the words on it."""
        if list(options) != self._options:
            self._options = list(options)
            self._rebuild()
        if self._choice is not None and chosen in self._choice.options():
            self._choice.show_choice(chosen)

    def choice(self) -> str:
        """Empty without options."""
        return "" if self._choice is None else self._choice.choice()

    def keys(self) -> Choice | None:
        return self._choice

    def _rebuild(self) -> None:
        if self._choice is not None:
            self._choice.hide()
            self._box.removeWidget(self._choice)
            self._choice.deleteLater()
            self._choice = None
        if self._options:
            self._choice = Choice(self._name, self._options)
            self._choice.chosen.connect(self.chosen)
            self._box.addWidget(self._choice, 1)


# A key that stays down, with a mark that says so.


class Tick(Key):
    """`ticked` fires for the person, not for `show_tick`."""

    ticked = Signal(bool)

    def __init__(self, words: str, name: str = "", parent: QWidget | None = None) -> None:
        """`name`: for those who cannot see what the key belongs to."""
        super().__init__(parent=parent)
        self._words = words
        self.setCheckable(True)
        self.setAccessibleName(name or words)
        self.toggled.connect(lambda _down: self._show_words())
        self.clicked.connect(self.ticked)
        self._show_words()

    def show_tick(self, down: bool) -> None:
        self.setChecked(down)

    def _show_words(self) -> None:
        self.setText(f"{'☑' if self.isChecked() else '☐'}  {self._words}")


# Keys for the place the axis is brought to: either pole, or one between them.

_BETWEEN = "between"
_POLES = (Aim.TRUE_POLE, Aim.REFRACTED_POLE)


class AimChoice(Choice):
    """`aim_chosen` carries an Aim. The key between the poles shows only where there is such an aim:
    the one in force, or one that was offered."""

    aim_chosen = Signal(object)

    def __init__(self, name: str, between: str, parent: QWidget | None = None) -> None:
        """`name`: what is chosen; `between`: the words on the key between the poles."""
        super().__init__(
            name,
            [
                (Aim.TRUE_POLE.name, self.tr("True pole")),
                (Aim.REFRACTED_POLE.name, self.tr("Refracted pole")),
                (_BETWEEN, between),
            ],
            parent,
        )
        self._between: Aim | None = None
        self._show_between()
        self.chosen.connect(self._choose)

    def offer(self, aim: Aim) -> None:
        """Let an aim between the poles be chosen; one of the poles has its own key already."""
        self._between = None if aim in _POLES else aim
        self._show_between()

    def show_aim(self, aim: Aim) -> None:
        """The aim in force."""
        if aim in _POLES:
            self.show_choice(aim.name)
            return
        self.offer(aim)
        self.show_choice(_BETWEEN)

    def _show_between(self) -> None:
        self.button(_BETWEEN).setVisible(self._between is not None)

    def _choose(self, option: str) -> None:
        if option != _BETWEEN:
            self.aim_chosen.emit(Aim[option])
        elif self._between is not None:
            self.aim_chosen.emit(self._between)


# A small number with a key to lower and one to raise it.


class Stepper(QWidget):
    """Whole steps from 0 to `most`. `stepped` carries the new number, for the person alone."""

    stepped = Signal(float)

    def __init__(self, name: str, most: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._most = most
        self._value = 0.0
        self._number = Text()
        self._number.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self.less, self.more = Key("−"), Key("+")
        self.less.setAccessibleName(self.tr("{name}: less").format(name=name))
        self.more.setAccessibleName(self.tr("{name}: more").format(name=name))
        self.less.clicked.connect(lambda: self._step(-1.0))
        self.more.clicked.connect(lambda: self._step(1.0))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(6)
        row.addWidget(Text(name), 1)
        for part in (self.less, self._number, self.more):
            row.addWidget(part)
        self.show_value(0.0)

    def value(self) -> float:
        return self._value

    def show_value(self, value: float) -> None:
        self._value = value
        self._number.setText(f"{value:g}")
        self._number.setMinimumWidth(2 * self.fontMetrics().horizontalAdvance("00"))
        self.less.setEnabled(value > 0.0)
        self.more.setEnabled(value < self._most)
        for key in (self.less, self.more):
            key.setAccessibleDescription(f"{value:g}")

    def _step(self, way: float) -> None:
        wanted = min(max(self._value + way, 0.0), self._most)
        if wanted != self._value:
            self.show_value(wanted)
            self.stepped.emit(wanted)


# A question with its answers, in its place on the page rather than over it.


class Asking(QFrame):
    """Hidden until something is asked. `answered` carries True for yes, and hides it again;
    `declined` comes instead when neither is the answer, where that is offered."""

    answered = Signal(bool)
    declined = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "asking")
        self._question = Text()
        self._yes, self._no, self._neither = Key(), Key(), Key()
        for key, is_yes in ((self._yes, True), (self._no, False)):
            key.clicked.connect(lambda _down, is_yes=is_yes: self._answer(is_yes))
        self._neither.clicked.connect(self._decline)
        keys = QWidget()
        row = Flow(keys)
        for key in (self._yes, self._no, self._neither):
            row.addWidget(key)
        self._neither.hide()
        policy = QSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        policy.setHeightForWidth(True)
        keys.setSizePolicy(policy)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self._question)
        column.addWidget(keys)
        self.hide()

    def ask(self, question: str, yes: str, no: str, neither: str = "") -> None:
        self._question.setText(question)
        self.setAccessibleName(question)
        for key, words in ((self._yes, yes), (self._no, no), (self._neither, neither)):
            key.setText(words)
            key.setAccessibleName(words)
            key.setAccessibleDescription(question)
        self._neither.setVisible(bool(neither))
        self.show()

    def clear(self) -> None:
        self._question.setText("")
        self.hide()

    def question(self) -> str:
        """Empty when nothing is asked."""
        return self._question.text()

    def yes(self) -> Key:
        return self._yes

    def no(self) -> Key:
        return self._no

    def neither(self) -> Key:
        return self._neither

    def _decline(self) -> None:
        self.clear()
        self.declined.emit()

    def _answer(self, is_yes: bool) -> None:
        self.clear()
        self.answered.emit(is_yes)


# A caret in a colour of the look.
#
# Qt paints its own by inverting what lies beneath, which on black is white.

WIDTH_PX = 2


class _NoCaret(QProxyStyle):
    """Makes Qt's own caret nothing wide."""

    def pixelMetric(
        self,
        metric: QStyle.PixelMetric,
        option: QStyleOption | None = None,
        widget: QWidget | None = None,
    ) -> int:
        if metric == QStyle.PixelMetric.PM_TextCursorWidth:
            return 0
        return super().pixelMetric(metric, option, widget)


@cache
def _no_caret(app: QApplication) -> _NoCaret:
    style = _NoCaret("Fusion")
    style.setParent(app)
    return style


class _Caret(QWidget):
    """Stands where the line types next, while the line has the focus."""

    def __init__(self, line: QLineEdit) -> None:
        super().__init__(line)
        self._line = line
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        line.installEventFilter(self)
        self.follow()

    def follow(self) -> None:
        rect = self._line.inputMethodQuery(Qt.InputMethodQuery.ImCursorRectangle)
        if isinstance(rect, QRect):
            self.setGeometry(rect.center().x(), rect.y(), WIDTH_PX, rect.height())
        self.setVisible(self._line.hasFocus() and not self._line.isReadOnly())

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        # At each painting, since only then does a long text move beneath the caret.
        if event.type() in (QEvent.Type.Paint, QEvent.Type.FocusIn, QEvent.Type.FocusOut):
            self.follow()
        return super().eventFilter(watched, event)

    def paintEvent(self, _event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), self.palette().color(QPalette.ColorRole.Accent))
        painter.end()


def colour_caret(line: QLineEdit) -> None:
    """Gives a line of text a caret in the accent of the look."""
    app = QApplication.instance()
    if isinstance(app, QApplication):
        line.setStyle(_no_caret(app))
    caret = _Caret(line)
    line.cursorPositionChanged.connect(lambda _old, _new: caret.follow())


# A quiet name above a widget that has none of its own.


class Named(QWidget):
    """`below`: a small sentence under it."""

    def __init__(
        self, name: str, part: QWidget, below: str = "", parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        column.addWidget(Text(name))
        column.addWidget(part)
        if below:
            column.addWidget(Text(below, "small"))
        self.setFocusProxy(part)


# A line to type in, with its name above and what is understood or wrong below.


class Field(QWidget):
    """`edited` fires on every change by the person, `left` on leaving, `submitted` on Enter."""

    edited = Signal(str)
    left = Signal()
    submitted = Signal()

    def __init__(
        self,
        name: str,
        example: str = "",
        has_name_above: bool = True,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._name = Text(name)
        self._line = QLineEdit()
        self._line.setPlaceholderText(example)
        colour_caret(self._line)
        self._line.setAccessibleName(name)
        self._below = Text("", "small")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(3)
        for part in (self._name, self._line, self._below):
            column.addWidget(part)
        self._below.hide()
        self._name.setVisible(has_name_above)
        self._line.textEdited.connect(self.edited)
        self._line.editingFinished.connect(self.left)
        self._line.returnPressed.connect(self.submitted)
        self.setFocusProxy(self._line)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Maximum)

    def text(self) -> str:
        return self._line.text().strip()

    def show_text(self, text: str) -> None:
        self._line.setText(text)

    def select_all(self) -> None:
        self._line.selectAll()

    def note(self, sentence: str) -> None:
        """What is understood by the text, quietly; clears a complaint."""
        self._tell(sentence, wrong=False)

    def complain(self, sentence: str) -> None:
        """What is wrong with the text, in words and with a dashed outline."""
        self._tell(sentence, wrong=True)

    def line(self) -> QLineEdit:
        """Where the person types."""
        return self._line

    def is_wrong(self) -> bool:
        return bool(self._line.property("wrong"))

    def is_free(self) -> bool:
        """Nobody is typing here, and nothing typed waits to be put right."""
        return not self._line.hasFocus() and not self.is_wrong()

    def below(self) -> str:
        return self._below.text()

    def _tell(self, sentence: str, wrong: bool) -> None:
        self._below.say(sentence)
        self._line.setAccessibleDescription(sentence)
        if wrong != self.is_wrong():
            self._line.setProperty("wrong", wrong)
            self._below.setProperty("voice", "alarm" if wrong else "small")
            for part in (self._line, self._below):
                part.style().polish(part)


# A line for one figure: its name and unit above, what is wrong with it below.

# Signs too small to be read by themselves.
UNITS = {
    "″": marked("arcseconds"),
    "′": marked("arcminutes"),
    "°": marked("degrees"),
    "°/s": marked("degrees a second"),
    "′/turn": marked("arcminutes a turn"),
    "″ per g": marked("arcseconds per g"),
}
_NUMBER = re.compile(r"[+-]?([0-9]{1,9}(\.[0-9]{0,9})?|\.[0-9]{1,9})")


class UnusableFigure(ValueError):
    """The text is a sentence for the person."""


def figure_of(text: str, quantity: Quantity, is_whole: bool = False) -> float | None:
    """The figure typed, unit allowed, comma or point; None when empty. Raises `UnusableFigure`."""
    plain = text.strip()
    for unit in (quantity.unit, said_unit(quantity)):
        plain = plain.removesuffix(unit.strip()).strip()
    plain = plain.replace("−", "-").replace(",", ".")
    if not plain:
        return None
    if not _NUMBER.fullmatch(plain):
        raise UnusableFigure(_not_a_number(text.strip(), said_unit(quantity)))
    value = float(plain)
    if is_whole and value != int(value):
        raise UnusableFigure(say("{typed} is not a whole number.", typed=plain))
    if quantity.low > 0.0 >= value:
        raise UnusableFigure(say("It must be above zero; {value:g} is not.", value=value))
    if not quantity.low <= value <= quantity.high:
        raise UnusableFigure(
            say(
                "It lies between {low:g} and {high:g}{unit}.",
                low=quantity.low,
                high=quantity.high,
                unit=said_unit(quantity),
            )
        )
    return value


def _not_a_number(text: str, unit: str) -> str:
    shown = f"{text[:20]}…" if len(text) > 20 else text
    if text.count(",") + text.count(".") > 1:
        return say("“{shown}” has two marks; write it without thousands.", shown=shown)
    if not unit.strip():
        return say("“{shown}” is not a number.", shown=shown)
    return say("“{shown}” is not a number of {unit}.", shown=shown, unit=unit.strip())


def heading(quantity: Quantity) -> str:
    """``Mass, in kg``: what stands above the line."""
    words = say(quantity.label)
    for article in say("The ").split("|"):
        words = words.removeprefix(article)
    words = words[:1].upper() + words[1:]
    unit = quantity.unit.strip()
    if not unit:
        return words
    unit_words = say(UNITS[unit]) if unit in UNITS else said_unit(quantity).strip()
    return say("{quantity}, in {unit}", quantity=words, unit=unit_words)


class Figure(Field):
    """Empty means not known. `hint` says how to find the figure out."""

    def __init__(
        self,
        quantity: Quantity,
        hint: str = "",
        example: str = "",
        name: str = "",
        is_whole: bool = False,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(name or heading(quantity), example, parent=parent)
        self._quantity = quantity
        self._is_whole = is_whole
        self._hint = hint
        self.note(hint)
        self.edited.connect(lambda _text: self.note(self._hint))

    def read(self) -> float | None:
        """The figure; None when there is none, and then `is_wrong` tells whether it was refused."""
        try:
            value = figure_of(self.text(), self._quantity, self._is_whole)
        except UnusableFigure as reason:
            self.complain(str(reason))
            return None
        self.note(self._hint)
        return value

    def show_figure(self, value: float | None) -> None:
        self.show_text("" if value is None else f"{value:.10g}".replace("-", "−"))
        self.note(self._hint)

    def hint(self, sentence: str) -> None:
        """Says something else below, now and until the next hint."""
        self._hint = sentence
        if not self.is_wrong():
            self.note(sentence)


# A line for a figure that is taken up as it is typed.


class Amount(Figure):
    """`given` fires with each usable figure typed; NaN when the line is cleared and may be empty.

    Complaints wait until the line is left; until then the last figure holds.
    """

    given = Signal(float)

    def __init__(
        self,
        quantity: Quantity,
        hint: str = "",
        when_empty: str = "",
        parent: QWidget | None = None,
    ) -> None:
        """`when_empty`: what stands for an empty line; without it the line must not be empty."""
        super().__init__(quantity, hint, when_empty, parent=parent)
        self._bounds = quantity
        self._may_be_empty = bool(when_empty)
        self.edited.connect(self._edited)
        self.left.connect(self._left)

    def show_amount(self, value: float) -> None:
        """What is in use; a line that says the same already is left as it was typed."""
        shown = self._typed()
        same = shown == value or (shown is not None and math.isnan(shown) and math.isnan(value))
        if not same and not self.line().hasFocus():
            self.show_figure(None if math.isnan(value) else value)

    def _typed(self) -> float | None:
        """NaN for an empty line that may be so; None for what cannot be used."""
        try:
            value = figure_of(self.text(), self._bounds)
        except UnusableFigure:
            return None
        if value is None:
            return math.nan if self._may_be_empty else None
        return value

    def _edited(self) -> None:
        value = self._typed()
        if value is not None:
            self.given.emit(value)

    def _left(self) -> None:
        if self.read() is None and not self.text() and not self._may_be_empty:
            self.complain(self.tr("A figure is needed here; until then the last one holds."))


# Several lines to type in, with a caret in a colour of the look.


class Lines(QPlainTextEdit):
    """Tab leaves it. `left` fires when the person does."""

    left = Signal()

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self.setTabChangesFocus(True)
        self.setCursorWidth(0)  # Qt's own caret inverts what lies beneath: white at night
        self.cursorPositionChanged.connect(self.viewport().update)

    def text(self) -> str:
        return self.toPlainText()

    def show_text(self, text: str) -> None:
        if text != self.toPlainText():
            self.setPlainText(text)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.left.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        super().paintEvent(event)
        if not self.hasFocus():
            return
        where = self.cursorRect()
        painter = QPainter(self.viewport())
        painter.fillRect(
            QRect(where.x(), where.y(), WIDTH_PX, where.height()),
            self.palette().color(QPalette.ColorRole.Accent),
        )
        painter.end()


# Parts of a page of which one is looked at.


@dataclass(frozen=True)
class Section:
    """`build` makes it, when it is first looked at or before."""

    name: str
    title: str
    build: Callable[[], QWidget]


class Sections(QWidget):
    """Keys along the top, the section chosen below.

    Both signals carry its name each time: `showing` just before it comes into view, when filling it
    costs no layout of its own, `shown` after.
    """

    showing = Signal(str)
    shown = Signal(str)

    def __init__(
        self, name: str, sections: Sequence[Section], parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self.setProperty(GROWS, True)
        self._sections = {section.name: section for section in sections}
        self._built: dict[str, QWidget] = {}
        self._keys = Choice(name, [(section.name, section.title) for section in sections])
        self._keys.chosen.connect(self.show_section)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(10)
        self._column.addWidget(self._keys)

    def unbuilt(self) -> list[Callable[[], None]]:
        """Steps for each section, to be taken when there is time: then showing it is quick."""
        return [
            partial(step, name)
            for name in self._sections
            for step in (self._make, self._dress, self._polish, self._lay_out)
        ]

    def _dress(self, _name: str) -> None:
        tell_grown(self)

    def _polish(self, name: str) -> None:
        polish(self._built[name])

    def _lay_out(self, name: str) -> None:
        lay_out(self._built[name], self.size())

    def _make(self, name: str) -> None:
        if name in self._built:
            return
        widget = self._sections[name].build()
        widget.setAccessibleName(self._sections[name].title)
        widget.hide()
        self._built[name] = widget
        self._column.addWidget(widget, 1)

    def show_section(self, name: str) -> None:
        self._make(name)
        tell_grown(self)
        self._keys.show_choice(name)
        for other, widget in self._built.items():
            if other != name:
                widget.hide()
        self.showing.emit(name)
        self._built[name].show()
        self._built[name].updateGeometry()  # the page has not counted what came in while hidden
        self.shown.emit(name)

    def names(self) -> list[str]:
        """In order."""
        return list(self._sections)

    def current(self) -> str:
        return self._keys.choice()

    def section(self, name: str) -> QWidget | None:
        """The section if it has been looked at."""
        return self._built.get(name)

    def keys(self) -> Choice:
        return self._keys
