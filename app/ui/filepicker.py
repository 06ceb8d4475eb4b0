"""Choosing a file without leaving the look of the program."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path

from PySide6.QtCore import QFileInfo, QRect, Qt
from PySide6.QtGui import QAbstractFileIconProvider, QColor, QIcon, QPainter, QPen, QPixmap
from PySide6.QtWidgets import QFileDialog, QLineEdit, QToolButton, QWidget

from app.ui.form import colour_caret
from app.ui.style import Theme

# Object names Qt gives the tool buttons of its own dialog, and the words shown instead of icons
# whose colours would not fit the look.
BUTTONS = {
    "backButton": "←",
    "forwardButton": "→",
    "toParentButton": "↑",
    "newFolderButton": "+",
    "listModeButton": "≡",
    "detailModeButton": "☰",
}


class _Icons(QAbstractFileIconProvider):
    """A folder or a sheet, drawn in one colour of the look."""

    def __init__(self, theme: Theme) -> None:
        super().__init__()
        colour = QColor(theme.look.text)
        self._folder = _drawn(colour, QRect(1, 4, 14, 10), QRect(1, 2, 6, 3))
        self._file = _drawn(colour, QRect(3, 1, 10, 14), QRect(5, 4, 6, 1))

    def icon(self, what: QAbstractFileIconProvider.IconType | QFileInfo) -> QIcon:
        if isinstance(what, QFileInfo):
            return self._folder if what.isDir() else self._file
        plain = what == QAbstractFileIconProvider.IconType.File
        return self._file if plain else self._folder


def _drawn(colour: QColor, *boxes: QRect) -> QIcon:
    picture = QPixmap(16, 16)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setPen(QPen(colour, 1))
    for box in boxes:
        painter.drawRect(box)
    painter.end()
    return QIcon(picture)


def log_dialog(parent: QWidget, theme: Theme, chosen: Callable[[Path], None]) -> QFileDialog:
    """A dialog for one drift log, to be opened with `open`; `chosen` gets the path."""
    filters = [parent.tr("Drift logs (*.csv *.txt *.tsv)"), parent.tr("All files (*)")]
    return file_dialog(parent, theme, dialog_title(parent), filters, chosen)


def file_dialog(
    parent: QWidget,
    theme: Theme,
    title: str,
    filters: Sequence[str],
    chosen: Callable[[Path], None],
    is_saving: bool = False,
) -> QFileDialog:
    """A dialog for one file, to be opened with `open`; `chosen` gets the path.

    Whoever saves asks before a file is replaced, since the dialog's own question would not be in
    the look of the program.
    """
    dialog = QFileDialog(parent, title)
    theme.dress_once(dialog)
    if is_saving:
        dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
        dialog.setOption(QFileDialog.Option.DontConfirmOverwrite)
    dialog.setFileMode(
        QFileDialog.FileMode.AnyFile if is_saving else QFileDialog.FileMode.ExistingFile
    )
    dialog.setNameFilters(filters)
    dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
    dialog.fileSelected.connect(lambda path: chosen(Path(path)))
    if theme.look.red_only:
        _keep_dark(dialog, theme)
    return dialog


def dialog_title(parent: QWidget) -> str:
    return parent.tr("Choose a drift log")


def _keep_dark(dialog: QFileDialog, theme: Theme) -> None:
    """The system's own dialog would shine white; Qt's one obeys the look but for its icons."""
    dialog.setOption(QFileDialog.Option.DontUseNativeDialog)
    dialog.setOption(QFileDialog.Option.ReadOnly)  # no renaming, no new folders
    dialog.setSizeGripEnabled(False)
    for line in dialog.findChildren(QLineEdit):
        colour_caret(line)
    icons = _Icons(theme)
    dialog.setIconProvider(icons)
    dialog.setProperty("icons", icons)  # the dialog does not keep them alive itself
    for name, words in BUTTONS.items():
        button = dialog.findChild(QToolButton, name)
        if isinstance(button, QToolButton):
            button.setIcon(QIcon())
            button.setText(words)
            button.setToolButtonStyle(Qt.ToolButtonStyle.ToolButtonTextOnly)
