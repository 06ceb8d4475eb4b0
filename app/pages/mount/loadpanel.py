"""Load against capacity: now, and with what is still to be bought."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.mount.loadwords import figure_words, load_of, moment_words
from app.theme.theme import Theme
from app.widgets.figure import Figure
from app.widgets.loadbar import LoadBar
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.language import marked
from core.mount.equipment import Quantity
from core.mount.payload import LoadVerdict, Standing


class _Total(QWidget):
    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.figure = Text("", "figure")
        self.standing = Text("", "turn")
        self.sentence = Text("", "quiet")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (Text(name, "quiet"), self.figure, self.standing, self.sentence):
            column.addWidget(part)
        column.addStretch()

    def show_verdict(self, verdict: LoadVerdict) -> None:
        self.figure.say(figure_words(verdict))
        self.standing.say(self._words(verdict.standing))
        self.sentence.say(verdict.sentence)
        self.setAccessibleDescription(verdict.sentence)

    def _words(self, standing: Standing) -> str:
        return {
            Standing.FITS: self.tr("The mount carries it"),
            Standing.ABOVE_PRACTICE: self.tr("More than is good for it"),
            Standing.OVERLOADED: self.tr("Too heavy"),
            Standing.UNKNOWN: self.tr("Cannot be judged yet"),
        }[standing]


class LoadPanel(Panel):
    """`share_chosen` carries the part of the capacity to use, 0 to 1."""

    share_chosen = Signal(float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Does the mount carry it?"), parent)
        self.now = _Total(self.tr("Now"))
        self.planned = _Total(self.tr("With what is still to be bought"))
        self.bar = LoadBar(theme)
        self.warning = Text("", "alarm")
        self.moment = Text()
        self.not_judged = Text("", "small")
        limits = Quantity(marked("The part of the capacity to use"), " %", 5.0, 100.0)
        self.share = Figure(limits)
        self.share.submitted.connect(self._take_share)
        self.share.left.connect(self._take_share)
        for part in (
            Reflow((self.now, self.planned), 560),
            self.bar,
            self.warning,
            self.moment,
            self.share,
            self.not_judged,
        ):
            self.column.addWidget(part)
        self._shown_share = ""

    def show_verdicts(
        self, now: LoadVerdict, with_planned: LoadVerdict | None, share: float, practice: str
    ) -> None:
        """`with_planned` None when nothing is planned. `practice`: where the share comes from."""
        self.now.show_verdict(now)
        self.planned.setVisible(with_planned is not None)
        if with_planned is not None:
            self.planned.show_verdict(with_planned)
        self.bar.show_load(load_of(now, with_planned))
        last = with_planned or now
        warnings = [now.warning] if now.warning else []
        if last.warning and not now.warning:
            warnings = [self.tr("With what is to be bought: {w}").format(w=last.warning)]
        self.warning.say(" ".join(warnings))
        self.moment.say(moment_words(last))
        self.not_judged.say(self._missing(last))
        self._shown_share = f"{100.0 * share:g}"
        self.share.show_text(self._shown_share)
        self.share.hint(self.tr("Now {practice}.").format(practice=practice))

    def _missing(self, verdict: LoadVerdict) -> str:
        return "\n".join([self.tr("Not judged:"), *(f"–  {one}" for one in verdict.not_judged)])

    def _take_share(self) -> None:
        value = self.share.read()
        if value is not None and self.share.text() != self._shown_share:
            self.share_chosen.emit(value / 100.0)
