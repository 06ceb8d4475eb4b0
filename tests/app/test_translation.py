"""The program in the person's language: catalogues on disk, and the choice of one."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QCoreApplication, QLocale, QObject

from app.ui import translation
from app.ui.help import LANGUAGE, HelpPanel
from core import language
from core.language import say
from language import CODES, source_of, translated


@pytest.fixture
def german(qapp):
    owner = QObject(qapp)
    translation.speak("de", owner)
    yield
    language.use_english()
    for translator in owner.children():
        QCoreApplication.removeTranslator(translator)


@pytest.mark.parametrize("code", CODES)
@pytest.mark.usefixtures("german")
def test_the_catalogue_the_program_reads_is_that_of_the_translators(code):
    assert source_of(code).exists()
    held = translated(code)
    assert {text: say(text) for text in held} == held


@pytest.mark.usefixtures("german")
def test_every_part_of_the_program_finds_its_sentence():
    class Page(QObject):
        pass

    assert Page().tr("Help") == say("Help") == QCoreApplication.translate("Other", "Help")
    assert say("Help") != "Help"


@pytest.mark.usefixtures("german")
def test_a_sentence_that_is_not_known_stays_english():
    assert say("zzz no such sentence") == "zzz no such sentence"


@pytest.mark.usefixtures("german")
def test_the_toolkit_speaks_the_language_too():
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"


@pytest.mark.parametrize(
    ("setting", "system", "code"),
    [
        ("de", "en_GB", "de"),
        ("en", "de_AT", "en"),
        (None, "de_AT", "de"),
        (None, "fr_FR", "en"),
        ("xx", "C", "en"),
        (7, "de_DE", "de"),
    ],
)
def test_the_language_is_the_persons_choice_else_the_systems(monkeypatch, setting, system, code):
    ours = QLocale(system)
    monkeypatch.setattr(QLocale, "system", staticmethod(lambda: ours))
    assert translation.chosen(setting) == code


def test_a_catalogue_that_cannot_be_read_is_said(qapp, monkeypatch, tmp_path):
    monkeypatch.setattr(translation, "FOLDER", tmp_path)
    with pytest.raises(RuntimeError, match=r"Deutsch.*speaks English"):
        translation.speak("de", qapp)
    assert language.spoken() == language.ENGLISH


def test_the_help_offers_the_languages(qtbot):
    panel = HelpPanel()
    qtbot.addWidget(panel)
    panel.sections().show_section(LANGUAGE)
    with qtbot.waitSignal(panel.language_wanted) as wanted:
        panel.languages().button("de").click()
    assert wanted.args == ["de"]
