"""The window: navigation down the left, place and time along the top, one page in the middle."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import UTC, datetime
from functools import partial
from pathlib import Path

from PySide6.QtCore import QByteArray, QEvent, QMimeData, QObject, QSettings, QSize, Qt, Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QMainWindow,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.ui.form import Asking, Choice, Key
from app.ui.help import HelpPanel
from app.ui.redraw import Ticking
from app.ui.style import SCALES, Theme
from app.ui.text import Reflow, Scrolled, Text
from app.workers.yielding import AGAIN
from core.sky.coordinates import format_latitude, format_longitude
from core.sky.site import Site

# A sentence across the window that stays until it is read.

MOST = 3  # more would push the page away


class Notice(QFrame):
    """The newest sentences not read yet, oldest first; one on the same subject takes its place."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("kind", "panel")
        self._unread: dict[str, str] = {}
        self._text = Text("", "alarm")
        self._done = Key(self.tr("Read"))
        self._done.setAccessibleName(self.tr("Close this message"))
        self._done.clicked.connect(self.clear)
        row = QHBoxLayout(self)
        row.addWidget(self._text, 1)
        row.addWidget(self._done)
        self.hide()

    def say(self, sentence: str, subject: str = "") -> None:
        """Without a subject the sentence is its own."""
        self._unread.pop(subject or sentence, None)
        self._unread[subject or sentence] = sentence
        for oldest in list(self._unread)[:-MOST]:
            del self._unread[oldest]
        self._text.setText("\n".join(self._unread.values()))
        self.setAccessibleName(" ".join(self._unread.values()))
        self.show()

    def clear(self) -> None:
        self._unread.clear()
        self._text.setText("")
        self.hide()

    def sentence(self) -> str:
        return self._text.text()


# The date and time in UTC, ticking while it is seen.


class UtcClock(Text):
    def __init__(self, now: Callable[[], float], parent: QWidget | None = None) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__("", "quiet", parent)
        self.setWordWrap(False)
        self.setAccessibleName(self.tr("Time in UTC"))
        self._ticking = Ticking(self, now, self._show_time)
        self._show_time(now())

    def _show_time(self, utc_s: float) -> None:
        shown = datetime.fromtimestamp(utc_s, UTC).strftime("%Y-%m-%d  %H:%M:%S")
        self.setText(self.tr("{time} UTC").format(time=shown))


# The list of pages down the left side of the window.


class Navigation(QWidget):
    """Reached by Alt and the number of the page as well."""

    chosen = Signal(str)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setObjectName("rail")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(self.tr("Pages"))
        self._buttons: dict[str, Key] = {}
        self._group = QButtonGroup(self)
        mark = Text("Poleward", "mark")
        mark.setWordWrap(False)
        mark.setContentsMargins(16, 14, 16, 14)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._column.addWidget(mark)
        self._column.addStretch()

    def offer(self, pages: Sequence[tuple[str, str]]) -> None:
        """`pages`: name and title of each, from the top."""
        for number, (name, title) in enumerate(pages, start=1):
            button = Key(title, "rail")
            button.setCheckable(True)
            digit = number % 10  # the tenth has Alt+0
            button.setShortcut(f"Alt+{digit}")
            button.setToolTip(self.tr("{title} (Alt+{number})").format(title=title, number=digit))
            button.setAccessibleName(self.tr("Page {title}").format(title=title))
            button.clicked.connect(lambda _down, name=name: self.chosen.emit(name))
            self._group.addButton(button)
            self._buttons[name] = button
            self._column.insertWidget(self._column.count() - 1, button)

    def show_choice(self, name: str) -> None:
        button = self._buttons[name]
        button.setChecked(True)
        viewport = self.parentWidget()
        pane = None if viewport is None else viewport.parentWidget()
        if isinstance(pane, Scrolled):
            pane.ensureWidgetVisible(button, 0, 0)

    def button(self, name: str) -> Key:
        return self._buttons[name]


class NavigationPane(Scrolled):
    """The rail where the window is too low for all of it: it scrolls, and keeps its width."""

    def __init__(self, rail: Navigation, parent: QWidget | None = None) -> None:
        super().__init__(rail, parent)
        rail.setObjectName("rail")
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Ignored)
        self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        handled = super().eventFilter(watched, event)
        if watched is self.widget() and event.type() in (
            QEvent.Type.LayoutRequest,
            QEvent.Type.Resize,
        ):
            self._fit()
        return handled

    def _fit(self) -> None:
        rail = self.widget()
        wanted = 0 if rail is None else rail.minimumSizeHint().width()
        bar = self.verticalScrollBar()
        if rail is not None and rail.minimumSizeHint().height() > self.height():
            wanted += bar.sizeHint().width()
        if wanted != self.minimumWidth():
            self.setFixedWidth(wanted)


# The strip along the top: where, when, and how it looks.


class TopBar(QWidget):
    """`help_wanted`: on the page in view, or no longer."""

    help_wanted = Signal()

    def __init__(
        self, theme: Theme, now: Callable[[], float], parent: QWidget | None = None
    ) -> None:
        """`now`: seconds since 1970-01-01 UTC."""
        super().__init__(parent)
        self.setObjectName("strip")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._theme = theme
        self._place = Text()
        self._looks = Choice(
            self.tr("Look"),
            [("day", self.tr("Day")), ("dark", self.tr("Dark")), ("night", self.tr("Night"))],
        )
        self._size = Key()
        self._size.setToolTip(self.tr("Larger text; after the largest comes the usual size again"))
        self._help = Key(self.tr("Help"))
        self._help.setToolTip(self.tr("Help on this page, words and keys (F1)"))
        self._help.setShortcut("F1")
        self._help.clicked.connect(self.help_wanted)
        self._looks.chosen.connect(theme.choose)
        self._size.clicked.connect(self._next_size)
        theme.changed.connect(self._show_theme)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 6, 12, 6)
        column.addWidget(Reflow((self._where_when(now), self._looking()), 860, (1, 0)))
        self.show_site(None)
        self._show_theme()

    def _where_when(self, now: Callable[[], float]) -> QWidget:
        part = QWidget()
        row = QHBoxLayout(part)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(16)
        row.addWidget(self._place, 1)
        row.addWidget(UtcClock(now))
        return part

    def _looking(self) -> QWidget:
        part = QWidget()
        row = QHBoxLayout(part)
        row.setContentsMargins(0, 0, 0, 0)
        row.addStretch()
        row.addWidget(self._looks)
        row.addSpacing(8)
        row.addWidget(self._size)
        row.addWidget(self._help)
        return part

    def help_button(self) -> Key:
        return self._help

    def show_site(self, site: Site | None) -> None:
        if site is None:
            self._place.setText(self.tr("No place yet"))
            return
        where = f"{format_latitude(site.latitude_deg)}, {format_longitude(site.longitude_deg)}"
        self._place.setText(f"{site.name}\n{where}" if site.name else where)

    def _next_size(self) -> None:
        after = SCALES.index(self._theme.scale) + 1
        self._theme.enlarge(SCALES[after % len(SCALES)])

    def _show_theme(self) -> None:
        self._looks.show_choice(self._theme.look.name)
        words = self.tr("Text {percent} %").format(percent=round(self._theme.scale * 100))
        self._size.setText(words)
        self._size.setAccessibleName(words)


# Where the window stood and how large it was, from one night to the next.

KEY = "window"
FIRST_SIZE = QSize(1280, 800)  # pixels: every page shows its answer without scrolling
OF_THE_SCREEN = 0.92  # the rest is for the frame, which is not known before it is drawn


def first_size(screen: QSize) -> QSize:
    """How large the window is before anyone has said: as wanted, or what the screen has room for.

    Left to itself, the toolkit would take two thirds of a small screen.
    """
    return FIRST_SIZE.boundedTo(screen * OF_THE_SCREEN)


class WindowGeometry:
    """Puts the window where it was; `keep` remembers where it is."""

    def __init__(self, window: QWidget, settings: QSettings) -> None:
        self._window = window
        self._settings = settings
        kept = settings.value(KEY)
        if not (isinstance(kept, QByteArray) and window.restoreGeometry(kept)):
            window.resize(first_size(window.screen().availableSize()))

    def keep(self) -> None:
        self._settings.setValue(KEY, self._window.saveGeometry())


# The window: pages down the left, the place and time along the top, one page in the middle.

HELP_BESIDE_PX = 1500  # from here on the help stands beside the page, at the usual text size
DRESSED = "dressed"


@dataclass(frozen=True)
class PageEntry:
    """`build` makes the page, when it is first looked at or before."""

    name: str
    title: str
    build: Callable[[], QWidget]


class Window(QMainWindow):
    """Knows pages by name alone; whoever puts the program together hands the builders in."""

    closing = Signal()
    file_dropped = Signal(object)  # a Path
    language_wanted = Signal(str)  # its code

    def __init__(self, theme: Theme, now: Callable[[], float]) -> None:
        super().__init__()
        self.setWindowTitle("Poleward")
        self.setMinimumSize(720, 480)
        self.setAcceptDrops(True)
        self._entries: dict[str, PageEntry] = {}
        self._pages: dict[str, QWidget] = {}
        self._undressed: dict[str, Iterator[None]] = {}  # what is left to do, by page
        self._begins: dict[str, QWidget] = {}
        self._rail = Navigation()
        self._rail.chosen.connect(self.show_page)
        self._strip = TopBar(theme, now)
        self._strip.help_wanted.connect(self._turn_help)
        self._help: HelpPanel | None = None
        self._notice = Notice()
        self._asking = Asking()
        self.may_close: Callable[[], bool] = lambda: True
        self._stack = QStackedWidget()
        waiting = self._waiting()
        self._stack.addWidget(waiting)
        self._beside = QHBoxLayout()
        self._theme = theme
        for part in (self._rail, self._strip, self._notice, self._asking, waiting):
            theme.dress(part)
        self.setCentralWidget(self._arranged())
        app = QApplication.instance()
        assert isinstance(app, QApplication)
        app.focusChanged.connect(self._keep_by_the_page)

    def _waiting(self) -> QWidget:
        """What stands where the pages will be: a slow computer needs some seconds for them."""
        text = Text(self.tr("Opening tonight as it was left…"), "quiet")
        text.setAlignment(Qt.AlignmentFlag.AlignCenter)
        return text

    def _arranged(self) -> QWidget:
        column = QVBoxLayout()
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self._strip, self._notice, self._asking):
            column.addWidget(part)
        self._above = QVBoxLayout()
        column.addLayout(self._above)
        self._beside.addWidget(self._stack, 3)
        column.addLayout(self._beside, 1)
        whole = QWidget()
        row = QHBoxLayout(whole)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(NavigationPane(self._rail))
        row.addLayout(column, 1)
        return whole

    def offer(self, entries: Sequence[PageEntry]) -> None:
        """The pages, in the order of the rail. None is built yet."""
        self._entries = {entry.name: entry for entry in entries}
        self._rail.offer([(entry.name, entry.title) for entry in entries])

    def titles(self) -> dict[str, str]:
        """Of the pages, by their names."""
        return {name: entry.title for name, entry in self._entries.items()}

    def show_page(self, name: str) -> None:
        self.build_page(name)
        self._rail.show_choice(name)
        self._stack.setCurrentWidget(self._pages[name])
        if self._help is None or not self._help.isVisible() or self._stack.isVisible():
            self._focus(name)

        self._show_help_of(name)

    def _focus(self, name: str) -> None:
        """To where the page wants to begin.

        The page gives its proxy up for that: Tab, coming from outside, would jump to the proxy and
        leave out whatever stands above it.
        """
        page = self._pages[name]
        begin = page.focusProxy()
        if begin is not None:
            self._begins[name] = begin
            page.setFocusProxy(None)  # type: ignore[arg-type]
        self._begins.get(name, page).setFocus()

    def _keep_by_the_page(self, left: QWidget | None, now: QWidget | None) -> None:
        """What had the focus is gone, and Qt went on beyond the page.

        The next Space might then choose a bright look at night; the page's own key does no harm.
        """
        if left is None or now is None:
            return
        name = self._name_in_view()
        page = self._pages.get(name)
        if page is None or not page.isAncestorOf(left) or page.isAncestorOf(now):
            return
        if not left.isVisibleTo(page):
            self._rail.button(name).setFocus()

    def show_above(self, part: QWidget) -> None:
        """Something that stands above the page for a while."""
        self._theme.dress(part)
        self._above.addWidget(part)

    def help(self) -> HelpPanel | None:
        """Once it was asked for."""
        return self._help

    def help_button(self) -> Key:
        return self._strip.help_button()

    def _turn_help(self) -> None:
        """Opens it for the page in view, or closes it."""
        if self._help is not None and self._help.isVisible():
            self._close_help()
            return
        if self._help is None:
            self._help = HelpPanel()
            self._help.closed.connect(self._close_help)
            self._help.language_wanted.connect(self.language_wanted)
            self._theme.dress(self._help)
            self._beside.addWidget(self._help, 2)
        name = self._name_in_view()
        if name:
            self._help.show()
            self._show_help_of(name)
            self._make_room()
            self._help.setFocus()

    def _close_help(self) -> None:
        if self._help is not None:
            self._help.hide()
        self._stack.show()
        if self._name_in_view():
            self._focus(self._name_in_view())

    def _show_help_of(self, name: str) -> None:
        if self._help is not None and self._help.isVisible():
            self._help.show_page(name, self._entries[name].title)

    def _name_in_view(self) -> str:
        current = self._stack.currentWidget()
        return next((name for name, page in self._pages.items() if page is current), "")

    def _make_room(self) -> None:
        """Beside the page where both have room, else in its place."""
        if self._help is not None and self._help.isVisible():
            self._stack.setVisible(self.width() >= HELP_BESIDE_PX * self._theme.scale)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_room()

    def build_page(self, name: str) -> None:
        """Makes a page without showing it, unless it is there already."""
        for step in self.building(name):
            while step() == AGAIN:
                pass

    def building(self, name: str) -> list[Callable[[], str | None]]:
        """As `build_page`, in short steps to be taken when there is time."""
        return [partial(step, name) for step in (self._make, self._take_in, self._dress)]

    def unbuilt(self) -> list[Callable[[], str | None]]:
        """Steps for all pages."""
        return [step for name in self._entries for step in self.building(name)]

    def _make(self, name: str) -> None:
        if name not in self._pages:
            page = self._entries[name].build()
            page.setAccessibleName(self._entries[name].title)
            self._pages[name] = page
            self._undressed[name] = self._theme.dress_page(page)

    def _take_in(self, name: str) -> None:
        page = self._pages[name]
        if self._stack.indexOf(page) < 0:
            self._stack.addWidget(page)

    def _dress(self, name: str) -> str | None:
        """A slice of it."""
        if name in self._undressed and next(self._undressed[name], DRESSED) is not DRESSED:
            return AGAIN
        self._undressed.pop(name, None)
        return None

    def page(self, name: str) -> QWidget | None:
        """The page if it is built."""
        return self._pages.get(name)

    def show_site(self, site: Site | None) -> None:
        self._strip.show_site(site)

    def say(self, sentence: str, subject: str = "") -> None:
        """A sentence that must not be missed, until it is read or another tells of its subject."""
        self._notice.say(sentence, subject)

    def asking(self) -> Asking:
        """A question to the person, above the page."""
        return self._asking

    def notice(self) -> str:
        return self._notice.sentence()

    def rail_button(self, name: str) -> Key:
        return self._rail.button(name)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if _dropped_files(event.mimeData()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        """One file at a time, so that nobody wonders which of them was taken."""
        files = _dropped_files(event.mimeData())
        if len(files) > 1:
            self.say(self.tr("Drop one file at a time: none of these was taken."), "drop")
        elif files:
            event.acceptProposedAction()
            self.file_dropped.emit(files[0])

    def closeEvent(self, event: QCloseEvent) -> None:
        """`may_close` is asked first: it may have a reason for the window to stay."""
        if not self.may_close():
            event.ignore()
            return
        self.closing.emit()
        super().closeEvent(event)


def _dropped_files(dropped: QMimeData) -> list[Path]:
    return [Path(url.toLocalFile()) for url in dropped.urls() if url.isLocalFile()]


# Closing the window while something that was measured is not on disk.


class CloseGuard(QObject):
    """Asks before anything measured is lost; otherwise the window closes without a word.

    `is_kept` tells whether all is on disk and must not take long. `readings` gives what was
    measured as a drift log.
    """

    def __init__(
        self, window: Window, is_kept: Callable[[], bool], readings: Callable[[], str]
    ) -> None:
        super().__init__(window)
        self._window = window
        self._is_kept = is_kept
        self._readings = readings
        self._gives_up = False
        window.asking().answered.connect(self._answered)

    def may_close(self) -> bool:
        """Whether the window may go now; if not, it has asked."""
        if self._gives_up or self._is_kept():
            return True
        self._window.asking().ask(
            self.tr(
                "What you measured or wrote tonight is not on disk, because the log of nights "
                "cannot be written. If you close now, it is lost. Copied as a drift log, you can "
                "paste your readings into a text file and import them again."
            ),
            self.tr("Copy the readings and stay"),
            self.tr("Close and lose them"),
        )
        return False

    def _answered(self, copies: bool) -> None:
        if copies:
            QApplication.clipboard().setText(self._readings())
            return
        self._gives_up = True
        self._window.close()
