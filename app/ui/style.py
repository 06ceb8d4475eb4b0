"""The looks: named colours, the palette and the style sheet made of them, and which is in use."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from string import Template
from time import perf_counter

from PySide6.QtCore import QCoreApplication, QEvent, QObject, QSettings, Qt, QTimer, Signal
from PySide6.QtGui import QColor, QFont, QPalette
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractScrollArea,
    QApplication,
    QComboBox,
    QLabel,
    QLineEdit,
    QScrollArea,
    QScrollBar,
    QStackedWidget,
    QToolTip,
    QWidget,
)
from shiboken6 import isValid

# The named colours of each look. Nothing else in the program spells a colour.

Colour = str  # "#RRGGBB"


@dataclass(frozen=True)
class Look:
    """One set of colours. Palette, style sheet and plots all read from here.

    `ground` lies behind everything, `panel` is raised on it, `well` is sunk for input and plots.
    `line` parts areas, `edge` outlines what can be touched. `accent` marks the one primary action
    and the fitted line, `alarm` what went wrong; neither ever carries meaning without a word.
    `legs` tint the legs of a plot, which are told apart by shape. `red_only`: nothing on the
    screen may shine green or blue, the system's own windows included.
    """

    name: str
    ground: Colour
    panel: Colour
    well: Colour
    line: Colour
    edge: Colour
    text: Colour
    quiet: Colour
    accent: Colour
    on_accent: Colour
    hover: Colour
    chosen: Colour
    alarm: Colour
    legs: tuple[Colour, ...]
    red_only: bool = False


DAY = Look(
    name="day",
    ground="#ECE7DC",
    panel="#F7F4EC",
    well="#FFFDF8",
    line="#D3CBBA",
    edge="#877F6E",
    text="#1C1F23",
    quiet="#54575B",
    accent="#704B0C",
    on_accent="#FFFDF8",
    hover="#E2DAC8",
    chosen="#E0D2B0",
    alarm="#9B1C12",
    legs=("#704B0C", "#22506E", "#4A5A1C", "#6B2F56", "#8A3A12", "#3C3F44"),
)

DARK = Look(
    name="dark",
    ground="#12161A",
    panel="#1B2127",
    well="#0C0F12",
    line="#323A42",
    edge="#6F7880",
    text="#EFE9DC",
    quiet="#A9ACA6",
    accent="#E3B76B",
    on_accent="#17130A",
    hover="#29313A",
    chosen="#463A22",
    alarm="#FF9684",
    legs=("#E3B76B", "#8FC1DE", "#B4C777", "#D9A0C4", "#EE9A6B", "#D3D4D0"),
)

# Red channel only. Pure red on black is the brightest there is (contrast 5.2), so what is loud and
# what is quiet differ in weight and size more than in shade.
NIGHT = Look(
    name="night",
    ground="#080000",
    panel="#170000",
    well="#000000",
    line="#4A0000",
    edge="#BC0000",
    text="#FF0000",
    quiet="#D20000",
    accent="#F40000",
    on_accent="#000000",
    hover="#300000",
    chosen="#380000",
    alarm="#FF0000",
    legs=("#FF0000", "#C40000", "#E60000", "#BC0000", "#D60000", "#CC0000"),
    red_only=True,
)

LOOKS = {look.name: look for look in (DAY, DARK, NIGHT)}


# The Qt palette of a look, so that whatever no style sheet reaches is still in its colours.

Role = QPalette.ColorRole


def palette(look: Look) -> QPalette:
    """Every role is set: a role left out would be derived by Qt, with blue in it at night."""
    made = QPalette()
    for role, colour in _roles(look).items():
        made.setColor(role, QColor(colour))
    for role in (Role.WindowText, Role.Text, Role.ButtonText, Role.HighlightedText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(look.edge))
    made.setColor(QPalette.ColorGroup.Disabled, Role.Highlight, QColor(look.hover))
    return made


def _roles(look: Look) -> dict[QPalette.ColorRole, Colour]:
    return {
        Role.Window: look.ground,
        Role.WindowText: look.text,
        Role.Base: look.well,
        Role.AlternateBase: look.panel,
        Role.Text: look.text,
        Role.PlaceholderText: look.quiet,
        Role.Button: look.panel,
        Role.ButtonText: look.text,
        Role.BrightText: look.alarm,
        Role.ToolTipBase: look.panel,
        Role.ToolTipText: look.text,
        Role.Highlight: look.chosen,
        Role.HighlightedText: look.text,
        Role.Accent: look.accent,
        Role.Link: look.accent,
        Role.LinkVisited: look.accent,
        Role.Light: look.line,
        Role.Midlight: look.line,
        Role.Mid: look.line,
        Role.Dark: look.line,
        Role.Shadow: look.well,
    }


# Tones between two colours of a look.


def between(start: Colour, end: Colour, share: float) -> QColor:
    """`share` 0 gives the start, 1 the end."""
    first, last = QColor(start), QColor(end)
    part = min(max(share, 0.0), 1.0)
    mixed = QColor()
    mixed.setRed(round(first.red() + part * (last.red() - first.red())))
    mixed.setGreen(round(first.green() + part * (last.green() - first.green())))
    mixed.setBlue(round(first.blue() + part * (last.blue() - first.blue())))
    return mixed


# The style sheet of a look at a text size.

TOUCH_PX = 44  # the smallest side of anything that is pressed

# For what holds a page's parts. Colours of the palette, so that it is set once and for all.
FRAMES_SHEET = """
QScrollArea, QWidget#page, QStackedWidget { background: palette(window); }
QScrollArea { border: none; }
QFrame[kind="panel"] {
    background: palette(button); border: 1px solid palette(mid); border-radius: 6px;
}
"""

# Widgets say what they are through two properties: `kind` (what a button or box is for) and
# `voice` (how loud a text is). Sizes in $-names grow with the text, those in px do not.
_SHEET = Template("""
QMainWindow, QDialog, QScrollArea, QWidget#page, QStackedWidget { background: $ground; }
QScrollArea { border: none; }
QWidget#rail, QWidget#strip { background: $panel; }
QFrame[kind="panel"] { background: $panel; border: 1px solid $line; border-radius: 6px; }
QFrame[kind="asking"] {
    background: $well; border: 2px dashed $accent; border-radius: 6px;
}
QFrame[kind="rule"] { background: $line; border: none; max-height: 1px; min-height: 1px; }
QLabel { background: transparent; }
QLabel[voice="figure"] { font-size: ${figure}px; font-weight: 600; }
QLabel[voice="side"] { font-size: ${side}px; }
QLabel[voice="time"] { font-size: ${time}px; font-weight: 600; }
QLabel[voice="turn"] { font-size: ${turn}px; font-weight: 600; color: $accent; }
QLabel[voice="title"] { font-size: ${title}px; font-weight: 600; }
QLabel[voice="question"] { font-size: ${question}px; font-weight: 600; }
QLabel[voice="quiet"] { color: $quiet; }
QLabel[voice="small"] { color: $quiet; font-size: ${small}px; }
QLabel[voice="caution"] { font-weight: 600; }
QLabel[voice="alarm"] { color: $alarm; font-weight: 600; }
QLabel[voice="mark"] { font-size: ${brand}px; font-weight: 600; color: $accent; }

QPushButton, QToolButton {
    background: $panel; color: $text; border: 1px solid $edge; border-radius: 6px;
    padding: 0 ${pad}px; min-height: ${touch}px; margin: 2px;
}
QPushButton:hover, QToolButton:hover { background: $hover; }
QPushButton:pressed, QPushButton:checked, QToolButton:checked {
    background: $chosen; border: 1px solid $accent; border-bottom: 3px solid $accent;
    margin-bottom: 0;
}
QPushButton:focus, QToolButton:focus { border: 3px solid $accent; margin: 0; }
QPushButton:checked:focus { border: 3px solid $text; border-bottom-color: $accent; }
QPushButton:disabled, QToolButton:disabled { color: $edge; border-color: $line; }
QPushButton[kind="primary"] {
    background: $accent; color: $on_accent; border-color: $accent; font-weight: 600;
}
QPushButton[kind="primary"]:hover { border: 2px solid $text; margin: 1px; }
QPushButton[kind="primary"]:focus { border: 3px solid $text; }
QPushButton[kind="primary"]:disabled {
    background: $panel; color: $edge; border-color: $line;
}
QPushButton[kind="rail"] {
    background: transparent; border: none; border-left: 5px solid transparent; border-radius: 0;
    text-align: left; padding: 0 ${pad}px; min-height: ${rail}px; margin: 0;
}
QPushButton[kind="rail"]:hover { background: $hover; }
QPushButton[kind="rail"]:checked {
    background: $chosen; border: none; border-left: 5px solid $accent;
}
QPushButton[kind="rail"]:focus { border: 3px solid $accent; border-left-width: 5px; }

QLineEdit, QPlainTextEdit {
    background: $well; color: $text; border: 1px solid $edge; border-radius: 6px;
    padding: 0 ${half}px; min-height: ${touch}px;
    selection-background-color: $chosen; selection-color: $text;
    placeholder-text-color: $quiet;
}
QPlainTextEdit { padding: ${half}px; }
QLineEdit:focus, QPlainTextEdit:focus { border: 3px solid $accent; }
QLineEdit[wrong="true"] { border: 3px dashed $alarm; }
QComboBox {
    background: $well; color: $text; border: 1px solid $edge; border-radius: 6px;
    padding: 0 ${half}px; min-height: ${touch}px;
}
QComboBox:focus { border: 3px solid $accent; }
QComboBox::drop-down { border: none; width: ${touch}px; }
QListView, QTreeView, QTableView, QListWidget {
    background: $well; color: $text; border: 1px solid $edge; border-radius: 6px;
    alternate-background-color: $panel; gridline-color: $line; outline: none;
    selection-background-color: $chosen; selection-color: $text;
}
QListView:focus, QTreeView:focus, QTableView:focus { border: 3px solid $accent; }
QListView::item, QListWidget::item { min-height: ${touch}px; padding: 4px ${half}px; }
QTreeView::item, QTableView::item { padding: 4px; }
QListView::item:selected, QTreeView::item:selected, QTableView::item:selected {
    background: $chosen; color: $text;
}
QListView::item:hover, QTreeView::item:hover { background: $hover; }
QHeaderView::section {
    background: $panel; color: $quiet; border: none; border-bottom: 1px solid $line;
    padding: 6px ${half}px;
}
QTableCornerButton::section { background: $panel; border: none; }
QMenu { background: $panel; color: $text; border: 1px solid $edge; }
QMenu::item { padding: 10px ${pad}px; }
QMenu::item:selected { background: $chosen; }
QMenu::item:disabled { color: $edge; }
QMenu::separator { background: $line; height: 1px; }
QToolTip { background: $panel; color: $text; border: 1px solid $edge; padding: 6px; }
QProgressBar {
    background: $well; border: 1px solid $edge; border-radius: 6px; text-align: center;
    min-height: ${body}px;
}
QProgressBar::chunk { background: $chosen; }
QScrollBar { background: $ground; border: none; margin: 0; }
QScrollBar:vertical { width: 16px; }
QScrollBar:horizontal { height: 16px; }
QScrollBar::handle { background: $line; border: 1px solid $edge; border-radius: 6px; }
QScrollBar::handle:vertical { min-height: 44px; }
QScrollBar::handle:horizontal { min-width: 44px; }
QScrollBar::add-line, QScrollBar::sub-line { width: 0; height: 0; border: none; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QSplitter::handle { background: $line; }
""")


def sheet(look: Look, scale: float) -> str:
    """Qt style sheet text. `scale` 1.0 to 2.0 enlarges text and what must grow with it."""
    colours = {name: getattr(look, name) for name in Look.__dataclass_fields__}
    return _SHEET.substitute(colours, **_sizes(scale))


def _sizes(scale: float) -> dict[str, int]:
    plain = {"body": 15, "small": 13, "title": 18, "side": 19}
    large = {"question": 23, "turn": 27, "time": 25, "figure": 46}
    sizes = {name: round(size * scale) for name, size in plain.items()}
    # What is large already grows less, so that the answer stays on one screen.
    sizes |= {name: round(size * scale**0.6) for name, size in large.items()}
    # Borders of one pixel on either side complete a target to its full size.
    touch = max(TOUCH_PX, round(30 * scale)) - 2
    return sizes | {
        "brand": round(18 * scale),
        "touch": touch,
        "rail": max(TOUCH_PX + 4, round(36 * scale)),
        "pad": round(8 + 6 * scale),
        "half": round(4 + 4 * scale),
    }


# A page cut into pieces that are dressed one by one, each small enough not to be waited for.

MOST_WIDGETS = 20  # in a piece; dressing one widget takes up to half a millisecond
GROWS = "grows"  # the property of a widget that is given parts of its own later
GROWN = QEvent.Type(QEvent.registerEventType())
FRAMES = (QScrollArea, QStackedWidget)
DRAWN = (QAbstractButton, QAbstractScrollArea, QComboBox, QLabel, QLineEdit, QScrollBar)


@dataclass
class Cut:
    """`frames` only hold others and keep one sheet for good; `pieces` are dressed at a change."""

    frames: list[QWidget] = field(default_factory=list)
    pieces: list[QWidget] = field(default_factory=list)


def cut(widget: QWidget) -> Cut:
    """Pieces as large as may be, in the order in which their widgets were made."""
    made = Cut()
    _take(widget, _counted(widget, {}), made)
    return made


def frame_of(widget: QWidget) -> Cut:
    """As `cut`, with the widget itself as a frame however few it holds by now."""
    made = Cut([widget])
    counts = _counted(widget, {})
    for child in parts(widget):
        _take(child, counts, made)
    return made


def tell_grown(widget: QWidget) -> None:
    """Has what was put into a widget dressed now, before it is polished without a sheet."""
    QCoreApplication.sendEvent(widget, QEvent(GROWN))


def parts(widget: QWidget) -> list[QWidget]:
    """The widgets right inside; not the windows that open over it."""
    inside = (child for child in widget.children() if isinstance(child, QWidget))
    return [child for child in inside if not child.isWindow()]


def _take(widget: QWidget, counts: dict[QWidget, int], made: Cut) -> None:
    if counts[widget] <= MOST_WIDGETS or not _may_be_frame(widget):
        made.pieces.append(widget)
        return
    made.frames.append(widget)
    for child in parts(widget):
        _take(child, counts, made)


def _may_be_frame(widget: QWidget) -> bool:
    """What draws more than a ground and a plain border needs the whole sheet."""
    plain = isinstance(widget, FRAMES) or not isinstance(widget, DRAWN)
    return plain and not any(child.styleSheet() for child in parts(widget))


def _counted(widget: QWidget, counts: dict[QWidget, int]) -> dict[QWidget, int]:
    """Of all widgets inside; what grows counts as more than a piece may hold."""
    for child in parts(widget):
        _counted(child, counts)
    own = MOST_WIDGETS + 1 if widget.property(GROWS) else 1
    counts[widget] = own + sum(counts[child] for child in parts(widget))
    return counts


# Putting the style sheet on the window piece by piece, so that the window never has to wait.
#
# A sheet is laid again on every widget below the one it is set on, all at once. So a page carries
# for good a sheet that holds for its frames alone, in colours of the palette, and the sheet that
# changes is set on small pieces: first on those seen, with the window's picture held until all of
# them have it, then on the rest.

SLICE_S = 0.008  # pieces are dressed for so long before the window answers again


class Dressing(QObject):
    """Whatever is not in one of the parts has the palette alone."""

    settled = Signal()  # all that is seen has the sheet

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._sheet = ""
        self._frames: set[QWidget] = set()
        self._pieces: dict[QWidget, None] = {}  # a set that keeps its order
        self._seen: dict[QWidget, None] = {}  # yet to be dressed
        self._hidden: dict[QWidget, None] = {}  # likewise, when there is time
        self._raw: dict[QWidget, None] = {}  # dressed before they were ever polished
        self._grown: set[QWidget] = set()  # frames
        self._held: set[QWidget] = set()  # windows
        self._idle = QTimer(self)
        self._idle.setInterval(0)
        self._idle.timeout.connect(self._go_on)

    def add(self, part: QWidget) -> None:
        """A part to be dressed from now on as a whole, for as long as it exists."""
        self._take(Cut([], [part]), at_once=True)

    def add_page(self, page: QWidget) -> Iterator[None]:
        """A page, to be dressed piece by piece, with whatever comes into it later.

        In slices, all of which must be taken before the page is shown. It should have its place in
        the window by then: Qt looks at all that a page holds when it is moved with a sheet on it.
        """
        page.setStyleSheet(FRAMES_SHEET)
        yield
        made = frame_of(page)
        self._watch(made)
        until = perf_counter() + SLICE_S
        for piece in made.pieces:
            if perf_counter() > until:
                yield
                until = perf_counter() + SLICE_S
            if isValid(piece):
                self._dress_raw(piece)
        self._idle.start()

    def change(self, sheet: str) -> None:
        """What is seen changes within the next moments, in one picture; the rest after it."""
        self._sheet = sheet
        self._forget_gone()
        every = (*self._frames, *self._pieces)
        self._seen = dict.fromkeys(part for part in every if part.isVisible())
        self._hidden = dict.fromkeys(part for part in every if not part.isVisible())
        self._hold(self._seen)
        self._idle.start()

    def sheet(self) -> str:
        """For a window that opens for a while."""
        return self._sheet

    def is_settled(self) -> bool:
        """Whether all that is seen has the sheet."""
        return not self._seen

    def close(self) -> None:
        """Leaves the rest as it is."""
        self._idle.stop()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        kind = event.type()
        if kind == QEvent.Type.Show and watched in self._hidden:
            self._come_into_view(watched)
        elif kind == QEvent.Type.ChildAdded and watched in self._frames:
            # The child itself may be half made by now.
            self._grown.add(watched)
            self._idle.start()
        elif kind in (QEvent.Type.ChildPolished, GROWN) and watched in self._grown:
            self._catch_up(watched, at_once=True)
        return super().eventFilter(watched, event)

    def _take(self, made: Cut, *, at_once: bool) -> None:
        self._watch(made)
        for piece in made.pieces:
            if at_once or piece.isVisible():
                self._dress_raw(piece)
            else:
                self._hidden[piece] = None

    def _watch(self, made: Cut) -> None:
        self._frames.update(made.frames)
        self._pieces.update(dict.fromkeys(made.pieces))
        for part in (*made.frames, *made.pieces):
            part.installEventFilter(self)

    def _dress_raw(self, piece: QWidget) -> None:
        piece.setStyleSheet(self._sheet)
        self._raw[piece] = None

    def _catch_up(self, frame: QWidget, *, at_once: bool = False) -> None:
        """Dresses what came into a frame: at once when it is about to be shown."""
        self._grown.discard(frame)
        if isValid(frame):
            for child in parts(frame):
                if child not in self._frames and child not in self._pieces:
                    self._take(cut(child), at_once=at_once)

    def _dress(self, part: QWidget) -> None:
        if not isValid(part):
            return
        if part not in self._frames:
            part.setStyleSheet(self._sheet)
        elif part.testAttribute(Qt.WidgetAttribute.WA_WState_Polished):
            part.style().polish(part)  # by itself, in the palette's new colours

    def _come_into_view(self, part: QWidget) -> None:
        del self._hidden[part]
        self._seen[part] = None
        self._hold([part])

    def _hold(self, some: Iterable[QWidget]) -> None:
        """No picture of a window is drawn in which some parts have the old sheet."""
        for window in {part.window() for part in some} - self._held:
            window.setUpdatesEnabled(False)
            self._held.add(window)

    def _let_go(self) -> None:
        for window in self._held:
            if isValid(window):
                window.setUpdatesEnabled(True)
                # Qt drops a request to paint that meets a held window, and waits for it for ever.
                QCoreApplication.postEvent(window, QEvent(QEvent.Type.UpdateRequest))
        self._held.clear()
        self.settled.emit()

    def _go_on(self) -> None:
        until = perf_counter() + SLICE_S
        for frame in tuple(self._grown):
            self._catch_up(frame)
        waiting = self._seen or self._hidden
        while waiting and perf_counter() < until:
            part = next(iter(waiting))
            del waiting[part]
            self._dress(part)
        while self._raw and not waiting and perf_counter() < until:
            part = next(iter(self._raw))
            del self._raw[part]
            if isValid(part):
                part.ensurePolished()  # so that showing it for the first time is quick
        if not self._seen and self._held:
            self._let_go()
        if not (self._seen or self._hidden or self._raw):
            self._idle.stop()

    def _forget_gone(self) -> None:
        self._frames = {frame for frame in self._frames if isValid(frame)}
        self._pieces = {piece: None for piece in self._pieces if isValid(piece)}


# The look in use: applied to everything there is and remembered.

SCALES = (1.0, 1.25, 1.5, 2.0)


class Theme(QObject):
    """Owns look and text size; `changed` tells whoever paints by hand to paint again."""

    changed = Signal()

    def __init__(self, app: QApplication, settings: QSettings) -> None:
        super().__init__()
        self._app = app
        self._settings = settings
        self._look = LOOKS.get(str(settings.value("look", DARK.name)), DARK)
        self._scale = _nearest_scale(settings.value("text_scale", 1.0))
        self._dressing = Dressing(self)
        app.setStyle("Fusion")
        self._apply()

    @property
    def look(self) -> Look:
        return self._look

    @property
    def scale(self) -> float:
        """1.0 is the usual text size, 2.0 twice that."""
        return self._scale

    def choose(self, name: str) -> None:
        self._look = LOOKS[name]
        self._settings.setValue("look", name)
        self._apply()

    def enlarge(self, scale: float) -> None:
        self._scale = _nearest_scale(scale)
        self._settings.setValue("text_scale", self._scale)
        self._apply()

    def dress(self, part: QWidget) -> None:
        """Gives a part of the window, or a window of its own, the style sheet from now on."""
        self._dressing.add(part)

    def dress_page(self, page: QWidget) -> Iterator[None]:
        """As `dress`, piece by piece, so that a change of the look is not waited for.

        In slices, all of which must be taken before the page is shown.
        """
        return self._dressing.add_page(page)

    def dress_once(self, window: QWidget) -> None:
        """For a window that opens for a while and goes."""
        window.setStyleSheet(self._dressing.sheet())

    def is_settled(self) -> bool:
        """Whether all that is seen is in the look chosen last."""
        return self._dressing.is_settled()

    def close(self) -> None:
        """Nothing is dressed any more."""
        self._dressing.close()

    def _apply(self) -> None:
        self._app.setFont(_font(self._scale))
        made = palette(self._look)
        self._app.setPalette(made)
        QToolTip.setPalette(made)
        self._dressing.change(sheet(self._look, self._scale))
        self.changed.emit()


def _font(scale: float) -> QFont:
    font = QFont()
    font.setPixelSize(round(15 * scale))
    # Sub-pixel smoothing tints the edges of letters green and blue.
    font.setStyleStrategy(QFont.StyleStrategy.NoSubpixelAntialias)
    return font


def _nearest_scale(value: object) -> float:
    """A settings file edited by hand may hold anything."""
    try:
        wanted = float(str(value))
    except ValueError:
        return SCALES[0]
    return min(SCALES, key=lambda scale: abs(scale - wanted))
