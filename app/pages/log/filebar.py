"""Files written and read beside the window's thread: asked about first, and told what became."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.session.errand import Errand
from app.storage.records import UnusableFile
from app.theme.theme import Theme
from app.widgets.asking import Asking
from app.widgets.filepicker import file_dialog
from app.widgets.text import Text

Work = Callable[[], object]


class FileBar(QWidget):
    """`done` carries what the work gave back, a sentence when it failed. Call `stop` at the end."""

    done = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._waiting: Work | None = None  # for a yes
        self._errand = Errand(self)
        self._errand.done.connect(self._take)
        self._asking = Asking()
        self._asking.answered.connect(self._answered)
        self._said = Text()
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        for part in (self._asking, self._said):
            column.addWidget(part)
        self._said.hide()

    def asking(self) -> Asking:
        return self._asking

    def said(self) -> str:
        return self._said.text()

    def say(self, sentence: str) -> None:
        self._said.say(sentence)

    def stop(self) -> None:
        self._errand.close()

    def run(self, work: Work) -> None:
        """Without asking."""
        self.say(self.tr("Working on the file …"))
        self._errand.send(lambda: _told(work))

    def run_when_free(self, path: Path, write: Work) -> None:
        """Asks first where a file of that name is there."""
        if not path.exists():
            self.run(write)
            return
        question = self.tr("“{file}” is there already. Replace it?").format(file=path.name)
        self.ask(question, self.tr("Yes, replace it"), self.tr("No, keep it"), write)

    def ask(self, question: str, yes: str, no: str, work: Work) -> None:
        """Does the work after a yes."""
        self._waiting = work
        self._asking.ask(question, yes, no)
        self._asking.no().setFocus()

    def choose(
        self,
        title: str,
        patterns: Sequence[str],
        chosen: Callable[[Path], None],
        name: str = "",
    ) -> None:
        """A dialog for one file; with a `name`, for one to write."""
        filters = [self.tr("These files ({pattern})").format(pattern=" ".join(patterns))]
        if not name:
            filters.append(self.tr("All files (*)"))
        dialog = file_dialog(self, self._theme, title, filters, chosen, bool(name))
        if name:
            dialog.selectFile(name)
        dialog.open()

    def _answered(self, is_yes: bool) -> None:
        waiting, self._waiting = self._waiting, None
        if is_yes and waiting is not None:
            self.run(waiting)
        else:
            self.say(self.tr("Nothing was changed."))

    def _take(self, answer: object) -> None:
        if isinstance(answer, str):
            self.say(answer)
        elif answer is None:
            self.say(self.tr("This could not be done because of a fault in the program."))
        self.done.emit(answer)


def _told(work: Work) -> object:
    """What came of it, in a sentence where it failed."""
    try:
        return work()
    except UnusableFile as reason:
        return str(reason)
