"""Cautions where loads are handled: the shortest form never leaves the screen."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.night.equipment import Equipment
from app.pages.mount.words import (
    figure_words,
    lever_lines,
    load_of,
    moment_words,
    polar_beam,
    tube_beam,
)
from app.ui.bars import LoadBar
from app.ui.beam import Beam, BeamDrawing
from app.ui.form import Figure, Tick
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from core.language import marked, say
from core.mount import payload
from core.mount.balance import PolarBalance, polar_balance, tube_balance
from core.mount.equipment import EquipmentSet, Mount, Quantity, Record
from core.mount.payload import LoadStanding, LoadVerdict, judge_load


class ShortCaution(Panel):
    """The few words that must not be missed."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Caution"))
        self.words = Text(
            self.tr(
                "Caution: axes locked. Counterweight on first and off last, toe stop in. "
                "Fingers clear. Lift with two people."
            ),
            "alarm",
        )
        self.column.addWidget(self.words)


class Cautions(Panel):
    """All of them, in the order in which things are done."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("Handling the load"), parent)
        self.column.addWidget(Text(say(payload.FIRST)))
        for title, lines in (
            (self.tr("Putting on"), payload.PUTTING_ON),
            (self.tr("Balancing"), payload.BALANCING),
            (self.tr("Taking off"), payload.TAKING_OFF),
            (self.tr("Lifting"), payload.LIFTING),
        ):
            self.column.addWidget(Text(title, "title"))
            numbered = (f"{n}.  {say(one)}" for n, one in enumerate(lines, 1))
            self.column.addWidget(Text("\n".join(numbered)))
        self.column.addWidget(Text(self.tr("Common practice, no source."), "small"))
        self.column.addStretch()


# A balance: the sentence that says what to do, a drawing to scale, and the masses in it.


class BeamPanel(Panel):
    def __init__(self, theme: Theme, title: str, parent: QWidget | None = None) -> None:
        super().__init__(title, parent)
        self.sentence = Text("", "side")
        self.more = Text("", "quiet")
        self.drawing = BeamDrawing(theme, title)
        self.lines = Text()
        for part in (self.sentence, self.more, self.drawing, self.lines):
            self.column.addWidget(part)

    def show_balance(self, sentence: str, more: str, beam: Beam, lines: list[str]) -> None:
        """Without masses there is nothing to draw."""
        self.sentence.say(sentence)
        self.more.say(more)
        self.drawing.setVisible(bool(beam.blocks))
        self.drawing.show_beam(beam)
        self.lines.say("\n".join(lines))


# Load against capacity: now, and with what is still to be bought.


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

    def _words(self, standing: LoadStanding) -> str:
        return {
            LoadStanding.FITS: self.tr("The mount carries it"),
            LoadStanding.ABOVE_PRACTICE: self.tr("More than is good for it"),
            LoadStanding.OVERLOADED: self.tr("Too heavy"),
            LoadStanding.UNKNOWN: self.tr("Cannot be judged yet"),
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


# The load section: does the mount carry the set in use, and where does everything go?


class LoadSection(QWidget):
    """Follows the equipment; the balance is drawn with planned gear when that is ticked."""

    def __init__(self, theme: Theme, equipment: Equipment, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._equipment = equipment
        self.load = LoadPanel(theme)
        self.count_planned = Tick(self.tr("Balance with what is still to be bought"))
        self.polar = BeamPanel(theme, self.tr("Counterweight"))
        self.tube = BeamPanel(theme, self.tr("Balance along the tube"))
        self.missing = Text("", "alarm")
        self.no_mount = Text("", "side")
        self._judged = QWidget()
        self._arrange()
        self._redraw = Redraw(self, self._show)
        self.load.share_chosen.connect(self._adjust_share)
        self.count_planned.ticked.connect(lambda _down: self._redraw.mark())
        equipment.changed.connect(self._redraw.mark)
        self._show()

    def _arrange(self) -> None:
        judged = QVBoxLayout(self._judged)
        judged.setContentsMargins(0, 0, 0, 0)
        judged.setSpacing(12)
        judged.addWidget(self.load)
        judged.addWidget(self.count_planned, 0, Qt.AlignmentFlag.AlignLeft)
        judged.addWidget(self.polar)
        judged.addWidget(self.tube)
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for text in (self.missing, self.no_mount, self._judged):
            column.addWidget(text)
        column.addStretch()
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(16, 0, 16, 12)
        inner.addWidget(Reflow((left, Cautions()), 900, (5, 3)))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.setSpacing(12)
        short = QVBoxLayout()
        short.setContentsMargins(16, 0, 16, 0)
        short.addWidget(ShortCaution())
        outer.addLayout(short)
        outer.addWidget(Scrolled(content), 1)

    def _show(self) -> None:
        chosen = self._equipment.set_in_use()
        mount = None if chosen is None else self._equipment.inventory.mount_of(chosen)
        self._judged.setVisible(mount is not None)
        if chosen is None or mount is None:
            self.missing.say("")
            self.no_mount.say(self._why_not(chosen))
            return
        self.no_mount.say("")
        gone = self._equipment.inventory.missing_from(chosen)
        words = self.tr("The set names things that are not there any more: {keys}.")
        self.missing.say(words.format(keys=", ".join(gone)) if gone else "")
        self._show_load(chosen, mount)
        self._show_balance(chosen, mount)

    def _why_not(self, chosen: EquipmentSet | None) -> str:
        if chosen is None:
            return self.tr("There is no set yet: under Equipment, add a set with a mount in it.")
        words = self.tr("The set “{name}” has no mount: give it one under Equipment.")
        return words.format(name=chosen.name)

    def _show_load(self, chosen: EquipmentSet, mount: Mount) -> None:
        own = self._equipment.adjusted(chosen.purpose)
        practice = own.practice(chosen.purpose)
        inventory = self._equipment.inventory
        owned = inventory.parts_of(chosen, with_planned=False)
        wanted = inventory.parts_of(chosen, with_planned=True)
        now = judge_load(mount, owned, chosen.purpose, practice)
        later: LoadVerdict | None = None
        if wanted != owned:
            later = judge_load(mount, wanted, chosen.purpose, practice)
        self.load.show_verdicts(now, later, own.share, practice.words(chosen.purpose))
        self.count_planned.setVisible(any(one.is_planned for one in self._named(chosen)))

    def _named(self, chosen: EquipmentSet) -> list[Record]:
        inventory = self._equipment.inventory
        return [
            *inventory.parts_of(chosen, with_planned=True),
            *inventory.counterweights_of(chosen, with_planned=True),
        ]

    def _show_balance(self, chosen: EquipmentSet, mount: Mount) -> None:
        planned = self.count_planned.isChecked() and self.count_planned.isVisibleTo(self)
        inventory = self._equipment.inventory
        parts = inventory.parts_of(chosen, with_planned=planned)
        weights = inventory.counterweights_of(chosen, with_planned=planned)
        polar = polar_balance(mount, parts, weights)
        self.polar.show_balance(
            polar.sentence,
            self._weight_range(polar),
            polar_beam(mount, polar),
            lever_lines(polar.levers),
        )
        tube = tube_balance(mount, parts)
        self.tube.show_balance(tube.sentence, "", tube_beam(parts, tube), lever_lines(tube.levers))

    def _weight_range(self, polar: PolarBalance) -> str:
        if polar.least_kg is None or polar.most_kg is None or polar.most_kg <= 0.0:
            return ""
        words = self.tr("On this bar anything from {least:.1f} to {most:.1f} kg would balance.")
        return words.format(least=polar.least_kg, most=polar.most_kg)

    def _adjust_share(self, share: float) -> None:
        chosen = self._equipment.set_in_use()
        if chosen is not None:
            own = self._equipment.adjusted(chosen.purpose)
            self._equipment.adjust(chosen.purpose, replace(own, share=share))
