"""The window: pages down the left, the place and time along the top, one page in the middle."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtCore import QMimeData, Qt, Signal
from PySide6.QtGui import QCloseEvent, QDragEnterEvent, QDropEvent, QResizeEvent
from PySide6.QtWidgets import (
    QApplication,
    QHBoxLayout,
    QMainWindow,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from app.helppanel import HelpPanel
from app.idle import AGAIN
from app.rail import Rail, RailPane
from app.strip import Strip
from app.theme.theme import Theme
from app.widgets.asking import Asking
from app.widgets.key import Key
from app.widgets.notice import Notice
from app.widgets.text import Text
from core.sky.site import Site

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
        self._rail = Rail()
        self._rail.chosen.connect(self.show_page)
        self._strip = Strip(theme, now)
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
        row.addWidget(RailPane(self._rail))
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
