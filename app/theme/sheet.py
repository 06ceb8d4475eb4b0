"""The style sheet of a look at a text size."""

from __future__ import annotations

from string import Template

from app.theme.look import Look

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
