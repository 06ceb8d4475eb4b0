"""What the drive cannot follow near the zenith, and what a derotator has to do."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QVBoxLayout, QWidget

from app.pages.planamounts import PlanAmounts
from app.pages.rotation import pictures
from app.pages.rotation.figures import FIGURES
from app.pages.rotation.study import Study
from app.pages.rotation.verdictwords import never_seen
from app.session.plans import Plans
from app.theme.theme import Theme
from app.widgets.nightpicture import clock_words
from app.widgets.nightview import NightView
from app.widgets.reflow import Reflow
from app.widgets.spans import span_words
from app.widgets.text import Panel, Text
from core.imaging.rotationdrive import Loss
from core.sky.clocks import Zone

DRIVE = ("drive_deg_per_s",)
DEROTATOR = ("derotator_low_deg", "derotator_high_deg", "derotator_deg_per_s")


class DriveSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._drive = PlanAmounts(plans, FIGURES, DRIVE)
        self._derotator = PlanAmounts(plans, FIGURES, DEROTATOR)
        self._zone = Text("", "side")
        self._losses = Text("", "")
        self._verdict = Text("", "side")
        self._rewinds = Text("")
        self._night = NightView(self.tr("Angle of the derotator through the night"), theme)
        self._night.picked.connect(self.picked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._zenith_panel(), self._derotator_panel()), 900, (5, 6)))

    def _zenith_panel(self) -> Panel:
        panel = Panel(self.tr("Near the zenith"))
        panel.column.addWidget(self._drive)
        panel.column.addWidget(self._zone)
        panel.column.addWidget(self._losses)
        panel.column.addWidget(
            Text(
                self.tr(
                    "Near the zenith a star's azimuth changes faster than a drive can turn. The "
                    "map “Zenith enlarged” shows the zone enlarged. Keep cables and hands clear "
                    "of a mount that turns at full speed."
                ),
                "small",
            )
        )
        panel.column.addStretch()
        return panel

    def _derotator_panel(self) -> Panel:
        panel = Panel(self.tr("Derotator"))
        panel.column.addWidget(self._derotator)
        panel.column.addWidget(self._verdict)
        panel.column.addWidget(self._rewinds)
        panel.column.addWidget(self._night, 1)
        return panel

    def drive(self) -> PlanAmounts:
        return self._drive

    def derotator(self) -> PlanAmounts:
        return self._derotator

    def night(self) -> NightView:
        return self._night

    def said(self) -> tuple[str, str]:
        """Of the zenith, and of the derotator."""
        zenith = f"{self._zone.text()} {self._losses.text()}"
        return zenith.strip(), f"{self._verdict.text()} {self._rewinds.text()}".strip()

    def show_study(self, study: Study, zone: Zone) -> None:
        self._drive.show_plans()
        self._derotator.show_plans()
        self._zone.say(self._zone_words(study))
        self._losses.say(self._losses_words(study, zone))
        self._verdict.say(self._verdict_words(study))
        self._rewinds.say(self._rewind_words(study, zone))
        turned = study.way is not None and study.way.derotation is not None
        self._night.setVisible(turned)
        if turned:
            self._night.show_picture(pictures.derotator(study, zone))
            self._night.show_moment(study.moment_utc_s)

    def _zone_words(self, study: Study) -> str:
        return self.tr(
            "At {limit:g}° a second the drive loses stars within {south:.2f}° south and "
            "{north:.2f}° north of the zenith."
        ).format(
            limit=study.question.drive_deg_per_s,
            south=study.zone.south_deg,
            north=study.zone.north_deg,
        )

    def _losses_words(self, study: Study, zone: Zone) -> str:
        if study.way is None:
            return self.tr("Choose a target above to see whether it passes there.")
        if unseen := never_seen(study, study.way):
            return unseen
        if not study.way.losses:
            return self.tr(
                "{target} comes within {distance:.1f}° of the zenith tonight and is never lost."
            ).format(target=self._name(study), distance=90.0 - study.way.highest_deg)
        return " ".join(self._loss_words(study, loss, zone) for loss in study.way.losses)

    def _loss_words(self, study: Study, loss: Loss, zone: Zone) -> str:
        said = self.tr(
            "{target} enters the zone at {enters} and the drive has caught up at {leaves}, after "
            "{span}."
        ).format(
            target=self._name(study),
            enters=zone.civil(loss.enters_utc_s).strftime("%H:%M:%S"),
            leaves=zone.civil(loss.leaves_utc_s).strftime("%H:%M:%S"),
            span=span_words(loss.leaves_utc_s - loss.enters_utc_s),
        )
        speed = self.tr("The star's azimuth changes by up to {speed:.2g}° a second.")
        return f"{said} {speed.format(speed=loss.fastest_azimuth_deg_per_s)}"

    def _name(self, study: Study) -> str:
        target = study.question.target
        return "" if target is None else target.name

    def _verdict_words(self, study: Study) -> str:
        if study.way is None:
            return self.tr("Choose a target above to see what its derotator must do.")
        if study.way.derotation is None:
            return study.way.derotator_problem
        return study.way.derotation.sentence.replace(" -", " −")

    def _rewind_words(self, study: Study, zone: Zone) -> str:
        turned = None if study.way is None else study.way.derotation
        if turned is None:
            return ""
        fastest = self.tr("Needed: {range:.0f}° of range, up to {speed:.3g}° a minute.").format(
            range=turned.needed_range_deg, speed=60.0 * turned.fastest_deg_per_s
        )
        if not turned.rewind_utc_s:
            return fastest
        times = ", ".join(clock_words(zone, utc_s) for utc_s in turned.rewind_utc_s)
        return f"{fastest} " + self.tr("Turn it back at {times}.").format(times=times)
