"""What is best placed tonight."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.plan.question import ALL, MESSIER
from app.pages.plan.study import Study
from app.pages.planamounts import PlanAmounts
from app.session.planfigures import FIGURES
from app.session.plans import Plans
from app.widgets.choice import Choice
from app.widgets.key import Key
from app.widgets.nightpicture import clock_words
from app.widgets.reflow import Reflow
from app.widgets.text import Panel, Text
from core.language import say
from core.night.plan import Placed
from core.sky.clocks import Zone

ROLE = Qt.ItemDataRole.UserRole


class BestSection(QWidget):
    """`picked` is there for the page's sake; choosing an object makes it the target."""

    picked = Signal(float)

    def __init__(self, plans: Plans, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plans = plans
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Best placed tonight"))
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._list.setWordWrap(True)
        self._list.setMinimumHeight(300)
        self._list.itemActivated.connect(self._choose)
        self._take = Key(self.tr("Take it as target"), "primary")
        self._take.clicked.connect(lambda: self._choose(self._list.currentItem()))
        self._nothing = Text("", "side")
        self._lists = Choice(
            self.tr("From which list"),
            [(MESSIER, self.tr("Messier's list")), (ALL, self.tr("All to magnitude 9"))],
        )
        self._lists.chosen.connect(lambda name: plans.set_word("list_of", name))
        self._amounts = PlanAmounts(plans, FIGURES, ("lowest_deg",))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._list_panel(), self._wish_panel()), 900, (5, 3)))

    def _list_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._nothing, 0, Qt.AlignmentFlag.AlignTop)
        panel.column.addWidget(self._list, 1)
        panel.column.addWidget(self._take, 0, Qt.AlignmentFlag.AlignLeft)
        return panel

    def _wish_panel(self) -> Panel:
        panel = Panel(self.tr("Which objects"))
        panel.column.addWidget(self._lists)
        panel.column.addWidget(self._amounts)
        panel.column.addWidget(
            Text(
                self.tr(
                    "In order of the hours in which they are clear in the dark, each hour counted "
                    "more the higher the object stands and less the nearer and brighter the Moon. "
                    "The order is our own."
                ),
                "small",
            )
        )
        panel.column.addStretch()
        return panel

    def listed(self) -> QListWidget:
        return self._list

    def lists(self) -> Choice:
        return self._lists

    def take_button(self) -> Key:
        return self._take

    def nothing(self) -> str:
        return self._nothing.text()

    def show_study(self, study: Study, zone: Zone) -> None:
        self._amounts.show_plans()
        self._lists.show_choice(study.question.list_of)
        lines = [self._line(placed, zone) for placed in study.best]
        if lines != [self._list.item(row).text() for row in range(self._list.count())]:
            self._fill(study.best, lines)
        for part in (self._list, self._take):
            part.setVisible(bool(lines))
        self._nothing.say("" if lines else self._why(study))

    def _fill(self, best: tuple[Placed, ...], lines: list[str]) -> None:
        self._list.clear()
        for placed, line in zip(best, lines, strict=True):
            item = QListWidgetItem(line)
            item.setData(ROLE, placed.target)
            self._list.addItem(item)
        self._list.setCurrentRow(0)

    def _line(self, placed: Placed, zone: Zone) -> str:
        target = placed.target
        size = (
            ""
            if target.magnitude is None
            else say(", magnitude {magnitude:.1f}", magnitude=target.magnitude)
        )
        return self.tr(
            "{name}   {kind}{size}\n{height:.0f}° high at {time}, clear for {hours:.1f} h, Moon "
            "{moon:.0f}° away"
        ).format(
            name=target.name,
            kind=target.kind,
            size=size,
            height=placed.highest_deg,
            time=clock_words(zone, placed.highest_utc_s),
            hours=placed.clear_hours,
            moon=placed.moon_apart_deg,
        )

    def _why(self, study: Study) -> str:
        if study.best_problem:
            return study.best_problem
        if not study.night.usable_spans:
            return self.tr("It does not get dark enough tonight for clusters and nebulae.")
        return self.tr("Nothing of this list rises high enough: try a lower altitude.")

    def _choose(self, item: QListWidgetItem | None) -> None:
        if item is not None:
            self._plans.set_target(item.data(ROLE))
