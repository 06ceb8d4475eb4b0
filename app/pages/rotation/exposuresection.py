"""How long to expose, how often, and what is left after stacking."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.planamounts import PlanAmounts
from app.pages.rotation import pictures
from app.pages.rotation.figures import FIGURES
from app.pages.rotation.stacked import Stacked
from app.pages.rotation.study import Study
from app.pages.rotation.verdictwords import never_seen
from app.session.plans import Plans
from app.theme.theme import Theme
from app.widgets.cropdrawing import CropDrawing
from app.widgets.nightpicture import clock_words
from app.widgets.nightview import NightView
from app.widgets.reflow import Reflow
from app.widgets.spans import span_words
from app.widgets.text import Panel, Text
from core.sky.clocks import Zone

FIELDS = (
    *("frame_width_px", "frame_height_px", "smear_px"),
    *("stack_min", "rotation_exposure_s", "rotation_between_s"),
)


class ExposureSection(QWidget):
    """`picked` carries the moment at which the series begins, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._amounts = PlanAmounts(
            plans, FIGURES, FIELDS, {"rotation_exposure_s": self.tr("empty: the longest possible")}
        )
        self._night = NightView(self.tr("Longest exposure through the night"), theme)
        self._night.picked.connect(self.picked)
        self._drawing = CropDrawing(theme)
        self._series = Text("", "side")
        self._left = Text("", "side")
        self._doubt = Text("", "alarm")
        self._legend = Text(
            self.tr(
                "Thin: the first frame; broken: the last one. Filled: what all frames saw. Thick: "
                "the largest crop of the same shape."
            ),
            "small",
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._left_side(), self._right_side()), 900, (6, 5)))

    def _left_side(self) -> Panel:
        panel = Panel(self.tr("Camera and series"))
        panel.column.addWidget(self._amounts)
        panel.column.addWidget(self._night, 1)
        return panel

    def _right_side(self) -> Panel:
        panel = Panel(self.tr("The stack"))
        for part in (self._series, self._left, self._doubt):
            panel.column.addWidget(part)
        panel.column.addWidget(self._drawing, 1)
        panel.column.addWidget(self._legend)
        return panel

    def amounts(self) -> PlanAmounts:
        return self._amounts

    def said(self) -> str:
        return " ".join((self._series.text(), self._left.text(), self._doubt.text())).strip()

    def night(self) -> NightView:
        return self._night

    def show_study(self, study: Study, zone: Zone) -> None:
        self._amounts.show_plans()
        self._night.setVisible(study.way is not None and bool(study.way.is_seen.any()))
        self._night.show_picture(pictures.exposures(study, zone))
        self._night.show_moment(study.moment_utc_s)
        if study.way is None:
            self._show_nothing(self.tr("Choose a target above to plan a series on it."))
            return
        plan = study.way.stacked
        if plan.hidden_utc_s is not None and plan.hidden_utc_s <= plan.begin_utc_s:
            self._show_nothing(never_seen(study, study.way) or self._hidden_words(plan, zone))
            return
        if plan.problem or plan.field is None:
            self._show_nothing(plan.problem)
            return
        frame = study.question.frame
        self._series.say(self._series_words(plan, zone))
        self._left.say(self._left_words(plan))
        self._doubt.say(self._doubt_words(study, plan, zone))
        field = plan.field
        turned = study.way.track.rotation_deg(plan.begin_utc_s, plan.end_utc_s)
        self._legend.show()
        outlines = field.common_outline_px, field.crop_outline_px
        self._drawing.show_stack((frame.width_px, frame.height_px), turned, *outlines)
        self._drawing.setAccessibleDescription(self._left.text())

    def _show_nothing(self, sentence: str) -> None:
        self._series.say(sentence)
        self._left.say("")
        self._doubt.say("")
        self._drawing.show_stack((1.0, 1.0), 0.0, None, None)
        self._legend.hide()

    def _hidden_words(self, plan: Stacked, zone: Zone) -> str:
        return self.tr(
            "At {time} the target is not seen: pick a moment in the picture when it is."
        ).format(time=clock_words(zone, plan.begin_utc_s))

    def _series_words(self, plan: Stacked, zone: Zone) -> str:
        return self.tr(
            "{count:,} exposures of {one}, from {begin} to {end}. The corner smears by {smear:.2g} "
            "px at most."
        ).format(
            count=plan.count,
            one=span_words(plan.exposure_s),
            begin=clock_words(zone, plan.begin_utc_s),
            end=clock_words(zone, plan.end_utc_s),
            smear=plan.smear_px,
        )

    def _left_words(self, plan: Stacked) -> str:
        assert plan.field is not None
        return self.tr(
            "Across the stack the field turns {turn:.1f}°. All frames share {common:.0f} % of the "
            "picture; cropped to its shape {crop:.0f} % is left, {lost:.0f} % is lost."
        ).format(
            turn=plan.field.rotation_deg,
            common=plan.field.common_percent,
            crop=plan.field.crop_percent,
            lost=100.0 - plan.field.crop_percent,
        )

    def _doubt_words(self, study: Study, plan: Stacked, zone: Zone) -> str:
        said = []
        if plan.hidden_utc_s is not None:
            time = clock_words(zone, plan.hidden_utc_s)
            said.append(self.tr("From {time} on the target is not seen.").format(time=time))
        if plan.smear_px > 1.01 * study.question.smear_px:
            said.append(self.tr("The exposure is too long for the smear allowed."))
        return " ".join(said)
