"""What training the drive would bring, and the curve to train it with."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.pages.tracking import pictures
from app.pages.tracking.bench import Bench
from app.pages.tracking.job import Job
from app.pages.tracking.section import Section
from app.theme.theme import Theme
from app.widgets.asking import Asking
from app.widgets.facts import Fact, Facts
from app.widgets.filepicker import file_dialog
from app.widgets.key import Key
from app.widgets.text import Panel, Text
from core.language import say

if TYPE_CHECKING:
    from core.tracking.periodic import PeriodicError


class TrainingSection(Section):
    def __init__(self, theme: Theme, bench: Bench, parent: QWidget | None = None) -> None:
        super().__init__(theme, bench, parent=parent)
        self.sentence = Text("", "side")
        self.facts = Facts(
            self.tr("What repeats and what does not"),
            (
                self.tr("Repeats from turn to turn"),
                self.tr("Changes from turn to turn"),
                self.tr("Left after training"),
            ),
        )
        self.export_key = Key(self.tr("Export the mean curve (CSV) …"))
        self.export_key.clicked.connect(self._choose)
        self.asking = Asking()
        self.asking.answered.connect(self._replace)
        self._said = Text("", "quiet")
        self._said.hide()
        self._path: Path | None = None
        self._job = Job(self)
        self._job.done.connect(self._written)
        self.arrange((self.sentence, self.facts, self.plot), (self._export_panel(),))

    def _export_panel(self) -> Panel:
        panel = Panel(self.tr("Training"))
        words = self.tr(
            "A mount that can be trained plays a recorded curve back against its worm. It takes "
            "out what repeats from turn to turn, no more. Sign and phase are said in the head of "
            "the file: the curve is the lead of the drive at the equator, positive ahead."
        )
        for part in (Text(words), self.export_key, self.asking, self._said):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        study = self.bench.study
        found = None if study is None else study.drive.periodic.value
        trained = None if study is None else study.drive.training.value
        self.export_key.setEnabled(found is not None)
        self.plot.setVisible(found is not None)
        self.facts.setVisible(trained is not None)
        waiting = self.tr("Needs an unguided run: bring one in under Periodic error.")
        if study is not None and found is not None:
            waiting = study.drive.training.words(lambda one: one.sentence)
            self.plot.show_picture(pictures.after_training(found))
        self.sentence.say(waiting)
        if trained is not None:
            sigma = 1.96 * trained.residual_sigma_arcsec
            rms = self.tr("rms")
            self.facts.show_facts(
                (
                    Fact(f"{trained.repeating_rms_arcsec:.1f}″", rms),
                    Fact(f"{trained.changing_rms_arcsec:.1f}″", rms),
                    Fact(f"{trained.residual_rms_arcsec:.1f}″", f"± {sigma:.1f}″ {rms}"),
                )
            )

    def said(self) -> str:
        return self._said.text()

    def export_to(self, path: Path) -> None:
        """Asks before a file is replaced."""
        self._path = path if path.suffix else path.with_suffix(".csv")
        if self._path.exists():
            question = self.tr("“{file}” is there already. Replace it?")
            self.asking.ask(
                question.format(file=self._path.name), self.tr("Replace it"), self.tr("Leave it")
            )
        else:
            self._replace(True)

    def close_jobs(self) -> None:
        self._job.close()

    def _choose(self) -> None:
        filters = [self.tr("Curves (*.csv)"), self.tr("All files (*)")]
        title = self.tr("Export the mean curve")
        file_dialog(self, self.theme, title, filters, self.export_to, is_saving=True).open()

    def _replace(self, yes: bool) -> None:
        study, path = self.bench.study, self._path
        found = None if study is None else study.drive.periodic.value
        if yes and path is not None and found is not None:
            self._job.send(lambda _keep_going: _write(path, found))

    def _written(self, sentence: object) -> None:
        self._said.say(str(sentence))


def _write(path: Path, found: PeriodicError) -> str:
    """A file that cannot be finished is not left behind in the place of an older one."""
    from core.tracking.training import training_csv

    fresh = path.with_name(f"{path.name}.new")
    try:
        fresh.write_text(training_csv(found), encoding="utf-8")
        fresh.replace(path)
    except OSError as error:
        return say(
            "“{path}” cannot be written ({why}): choose another place.",
            path=path,
            why=error.strerror,
        )
    return say("Written to “{path}”.", path=path)
