"""The stars round the pole, to be recognised by eye, in binoculars or in a finder."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QListWidget, QListWidgetItem, QVBoxLayout, QWidget

from app.pages.pole import words
from app.pages.pole.charts import field_chart
from app.pages.pole.standing import Standing
from app.pages.pole.turns import Turns
from app.pages.pole.viewchoice import ViewChoice
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.named import Named
from app.widgets.reflow import Reflow
from app.widgets.roundchart import RoundChart
from app.widgets.text import Panel, Text
from core.alignment.polarscope.view import View, clock_text, in_sight

REACHES_ARCMIN = {"180": "3°", "60": "1°", "10": "10′"}
MOST_STARS = 15
HIP = Qt.ItemDataRole.UserRole
LIST_EVERY_S = 10  # the places in it change by half a minute of the clock face in a minute


class FieldView(QWidget):
    """`view_chosen` carries a View."""

    view_chosen = Signal(object)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._standing: Standing | None = None
        self._view = View.ERECT
        self._listed: tuple[object, ...] = ()
        self._chart = RoundChart(theme, self.tr("Stars around the pole"))
        self._pointed = Text("", "small")
        self._views = ViewChoice(self.tr("You look"))
        self._reach = Choice(self.tr("Shown around the pole"), list(REACHES_ARCMIN.items()))
        self._reach.show_choice("180")
        self._list = QListWidget()
        self._list.setAccessibleName(self.tr("Brightest stars around the pole"))
        self._list.setMinimumHeight(220)
        self._list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._turns = Turns()
        self._connect()
        self._arrange()

    def _connect(self) -> None:
        self._views.view_chosen.connect(self.view_chosen)
        self._reach.chosen.connect(lambda _reach: self._draw())
        self._list.currentRowChanged.connect(lambda _row: self._draw())
        self._chart.pointed.connect(self._pointed.setText)

    def _arrange(self) -> None:
        drawing, side = QWidget(), QWidget()
        left, right = QVBoxLayout(drawing), QVBoxLayout(side)
        for column in (left, right):
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(12)
        left.addWidget(self._chart, 1)
        left.addWidget(self._pointed)
        left.addStretch()
        panel = Panel(self.tr("The field"))
        panel.column.addWidget(Named(self.tr("Shown around the pole"), self._reach))
        panel.column.addWidget(self._views)
        panel.column.addWidget(self._list)
        right.addWidget(panel)
        right.addWidget(self._turns)
        right.addStretch()
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(Reflow((drawing, side), 760, (1, 1)))

    def show_standing(self, standing: Standing, view: View) -> None:
        self._standing, self._view = standing, view
        self._views.show_view(view)
        self._turns.show_standing(standing)
        self._show_list(standing)
        self._draw()

    def chart(self) -> RoundChart:
        return self._chart

    def reach(self) -> Choice:
        return self._reach

    def views(self) -> Choice:
        return self._views.choice()

    def star_list(self) -> QListWidget:
        return self._list

    def turns(self) -> Turns:
        return self._turns

    def _show_list(self, standing: Standing) -> None:
        """The rows stay the same while the clock ticks; only their words are renewed."""
        stars = standing.field.stars[:MOST_STARS]
        state = (standing.site, self._view, int(standing.utc_s) // LIST_EVERY_S)
        if state == self._listed:
            return
        self._listed = state
        if self._list.count() != len(stars) or self._hips() != [star.hip for star in stars]:
            self._list.clear()
            for star in stars:
                item = QListWidgetItem()
                item.setData(HIP, star.hip)
                self._list.addItem(item)
        about = standing.pole.azimuth_deg, standing.pole.true_altitude_deg
        seen = in_sight(standing.field.azimuth_deg, standing.field.altitude_deg, *about, self._view)
        for row, star in enumerate(stars):
            clock = clock_text(float(seen.clock_angle_deg[row]))
            away = words.distance(float(standing.field.polar_distance_arcmin[row]))
            title = self.tr("{star}   magnitude {magnitude:.1f}").format(
                star=star.name, magnitude=star.magnitude
            )
            place = self.tr("{clock}, {away} from the true pole").format(clock=clock, away=away)
            self._list.item(row).setText(f"{title}\n{place}")

    def _hips(self) -> list[int]:
        return [self._list.item(row).data(HIP) for row in range(self._list.count())]

    def _draw(self) -> None:
        if self._standing is None:
            return
        item = self._list.currentItem()
        hip = 0 if item is None else int(item.data(HIP))
        radius = float(self._reach.choice())
        self._chart.show_chart(field_chart(self._standing, self._view, radius, hip))
