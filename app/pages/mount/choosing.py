"""The choosing section: mounts side by side for a purpose."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.mount.candidatecard import CandidateCard
from app.pages.mount.wishform import WishForm
from app.session.adjusted import Adjusted
from app.session.equipment import Equipment
from app.theme.theme import Theme
from app.widgets.columns import Columns
from app.widgets.key import Key
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Text
from core.mount.balance import carried
from core.mount.choice import choose
from core.mount.equipment import ImpossibleValue, Inventory, Mount, Purpose
from core.mount.examples import INVENTED_MOUNTS, said_example

CARD_PX = 236


class ChoosingSection(QWidget):
    """Follows the equipment. The purpose starts as that of the set in use."""

    def __init__(self, theme: Theme, equipment: Equipment, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._theme = theme
        self._equipment = equipment
        chosen = equipment.set_in_use()
        self._purpose = Purpose.DEEP_SKY if chosen is None else chosen.purpose
        self.form = WishForm()
        self.cards = Columns([], CARD_PX, are_rows=True)
        self.problem = Text("", "side")
        self.examples_key = Key(self.tr("Compare three invented mounts"), "primary")
        self._redraw = Redraw(self, self._show)
        self._arrange()
        self.form.purpose_chosen.connect(self._choose_purpose)
        self.form.adjusted.connect(self._adjust)
        self.examples_key.clicked.connect(self._take_examples)
        equipment.changed.connect(self._redraw.mark)
        theme.changed.connect(self._redraw.mark)
        self._show()

    def _arrange(self) -> None:
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(12)
        for part in (self.problem, self.examples_key, self.cards):
            column.addWidget(part)
        column.addStretch()
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(16, 0, 16, 12)
        inner.addWidget(Reflow((left, self.form), 900, (7, 3)))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def candidate_cards(self) -> list[CandidateCard]:
        """Best first."""
        return [one for one in self.cards.parts() if isinstance(one, CandidateCard)]

    def _show(self) -> None:
        own = self._equipment.adjusted(self._purpose)
        set_kg = self._set_kg()
        self.form.show_figures(self._purpose, own, set_kg)
        mounts = self._equipment.inventory.of_kind(Mount)
        self.examples_key.setVisible(len(mounts) < 2)
        few = self.tr("Enter two mounts or more under Equipment, owned or planned, to compare.")
        self.problem.say(few if len(mounts) < 2 else "")
        try:
            found = choose(mounts, own.wishes(self._purpose, set_kg)) if mounts else ()
        except ImpossibleValue as reason:
            self.form.problem.say(str(reason))
            return
        self.form.problem.say("")
        self.cards.show_parts([CandidateCard(self._theme, one) for one in found])

    def _set_kg(self) -> float | None:
        """Load of the set in use with what is planned; None when a mass is missing."""
        chosen = self._equipment.set_in_use()
        parts = () if chosen is None else self._equipment.inventory.parts_of(chosen, True)
        masses = [part.mass_kg for part in carried(parts)]
        known = [mass for mass in masses if mass is not None]
        return sum(known) if known and len(known) == len(masses) else None

    def _choose_purpose(self, purpose: Purpose) -> None:
        self._purpose = purpose
        self._show()  # at once: what is typed next belongs to it

    def _adjust(self, own: Adjusted) -> None:
        """Impossible wishes are shown with their reason and not kept."""
        try:
            own.wishes(self._purpose, self._set_kg())
        except ImpossibleValue as reason:
            self.form.problem.say(str(reason))
            return
        self._equipment.adjust(self._purpose, own)

    def _take_examples(self) -> None:
        mine = {one.key for one in self._equipment.inventory.records}
        fresh = tuple(said_example(one) for one in INVENTED_MOUNTS if one.key not in mine)
        self._equipment.take(Inventory(fresh))
