"""The load section: does the mount carry the set in use, and where does everything go?"""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.mount.beampanel import BeamPanel
from app.pages.mount.cautions import Cautions, ShortCaution
from app.pages.mount.loadpanel import LoadPanel
from app.pages.mount.loadwords import lever_lines, polar_beam, tube_beam
from app.session.equipment import Equipment
from app.theme.theme import Theme
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text
from app.widgets.tick import Tick
from core.mount.balance import PolarBalance, polar_balance, tube_balance
from core.mount.equipment import EquipmentSet, Mount, Record
from core.mount.payload import LoadVerdict, judge_load


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
