"""The person's language: the catalogue of translations on disk, and who looks a sentence up."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QObject, QTranslator

from core import language
from core.language import ENGLISH, say

FOLDER = Path(__file__).parents[2] / "resources" / "language"
CONTEXT = "Poleward"  # one for all: a sentence means the same wherever it is said
NAMES = {ENGLISH: "English", "de": "Deutsch"}  # in their own words


class SentenceTranslator(QTranslator):
    """Finds a sentence whatever part of the program asks; an unknown one stays English."""

    def translate(self, _context: str, source: str, *_more: str | int | None) -> str:
        return super().translate(CONTEXT, source) or source


SETTING = "language"


def chosen(setting: object) -> str:
    """The language of a setting; without one that of the system, where there is a catalogue."""
    if isinstance(setting, str) and setting in NAMES:
        return setting
    system = QLocale.system().name().split("_")[0]
    return system if system in NAMES else ENGLISH


def speak(code: str, parent: QObject) -> None:
    """Let the program speak this language from now on; what was said already stays as it is.

    Raises RuntimeError with a sentence when the catalogue cannot be read.
    """
    if code == ENGLISH:
        return
    catalogue = SentenceTranslator(parent)
    if not catalogue.load(f"poleward_{code}", str(FOLDER)):
        raise RuntimeError(
            say(
                "The words for “{language}” cannot be read from {folder}: the program "
                "speaks English. Install Poleward again.",
                language=NAMES.get(code, code),
                folder=FOLDER,
            )
        )
    QCoreApplication.installTranslator(catalogue)
    language.use(code, lambda template: catalogue.translate(CONTEXT, template))
    own = QTranslator(parent)  # the words of the toolkit itself, asked first
    if own.load(f"qtbase_{code}", QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)):
        QCoreApplication.installTranslator(own)
