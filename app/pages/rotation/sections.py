"""The sections of the Field rotation page: over the sky, while exposing, what the drive must do."""

from __future__ import annotations

import numpy as np
from PySide6.QtCore import Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.night.plan import Plans
from app.pages.rotation import pictures
from app.pages.rotation.study import (
    FIGURES,
    PLATFORM,
    STEP_S,
    WEDGE,
    RotationMap,
    RotationStudy,
    Stacked,
    Way,
    rate_words,
)
from app.pages.rotation.words import never_seen
from app.pages.shared import PlanAmounts
from app.ui.drawings import CropDrawing
from app.ui.form import Choice
from app.ui.skydisc import Dome, DomePicture, Sign, SkyMark, SkyPath, SkyZone
from app.ui.skyview import FROM_ZENITH_DEG
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Text, limit_words, span_words
from app.ui.timeline import NightView, clock_words, steps
from core.imaging.rotation import rate_deg_per_hour
from core.imaging.rotationdrive import Loss
from core.imaging.rotationexposure import LONGEST_S, longest_map_s
from core.language import say
from core.sky.clocks import Zone

# The pictures of the sky on the Field rotation page: maps with the way of the target.

MOST_MARKS = 7
CLOSE_DEG, SPARSE = 10.0, 4
RATE, EXPOSURE, ZENITH = "rate", "exposure", "zenith"


def dome(kind: str, study: RotationStudy, zone: Zone) -> DomePicture:
    """`kind`: RATE, EXPOSURE or ZENITH, the same as RATE enlarged."""
    shown: dict[str, RotationMap] = {RATE: study.rates, EXPOSURE: study.exposures}
    sky = shown.get(kind, study.zenith_rates)
    rim = study.zenith_rim_deg if kind == ZENITH else FROM_ZENITH_DEG
    outline = SkyZone(*study.zone_outline_deg, say("too fast for the drive"))
    return DomePicture(
        rim_deg=rim,
        rings_deg=(0.0, 30.0, 60.0) if kind != ZENITH else _rings(rim),
        contours=sky.contours,
        bands=sky.bands,
        horizon=study.question.around.horizon,
        path=_path(study.way),
        marks=_marks(study, zone, kind == ZENITH),
        zone=outline,
    )


def _rings(rim_deg: float) -> tuple[float, ...]:
    return tuple(90.0 - step for step in steps(0.0, rim_deg, 4) if step > 0.0)


def _path(way: Way | None) -> SkyPath | None:
    if way is None:
        return None
    # Sparse where it is slow, every minute near the zenith, where it is seen enlarged.
    high = way.track.altitude_deg > 90.0 - CLOSE_DEG
    kept = high | (np.arange(len(high)) % SPARSE == 0)
    kept &= way.track.altitude_deg > -1.0
    return SkyPath(way.track.azimuth_deg[kept], way.track.altitude_deg[kept])


def _marks(study: RotationStudy, zone: Zone, is_near: bool) -> tuple[SkyMark, ...]:
    way = study.way
    if way is None:
        return ()
    times = way.track.utc_s
    step = _minutes(study, way) * 60.0 if is_near else 3600.0
    marks = []
    for utc_s in np.arange(np.ceil(times[0] / step) * step, times[-1], step).tolist():
        civil = zone.civil(utc_s)
        words = f"{civil:%H:%M}" if is_near else f"{civil.hour}"
        marks.append(_mark(way, utc_s, words if is_near or civil.minute == 0 else f"{civil:%H:%M}"))
    at = study.moment_utc_s
    moment = _mark(way, at, clock_words(zone, at), Sign.DIAMOND, True)
    return (*(mark for mark in marks if mark.altitude_deg > 0.0), moment)


def _minutes(study: RotationStudy, way: Way) -> float:
    """Between marks of the way where it is enlarged: no more than a handful of them."""
    near = float(np.sum(90.0 - way.track.altitude_deg <= study.zenith_rim_deg)) * STEP_S / 60.0
    return next((step for step in (1.0, 2.0, 5.0, 10.0, 30.0) if near / step <= MOST_MARKS), 60.0)


def _mark(
    way: Way, utc_s: float, words: str, sign: Sign = Sign.DOT, is_loud: bool = False
) -> SkyMark:
    unwrapped = np.unwrap(np.radians(way.track.azimuth_deg))
    azimuth = float(np.degrees(np.interp(utc_s, way.track.utc_s, unwrapped))) % 360.0
    return SkyMark(azimuth, way.at(way.track.altitude_deg, utc_s), words, sign, is_loud)


# The sky as a map of field rotation, with the night of the target beside it.


class SkySection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._study: RotationStudy | None = None
        self._zone: Zone | None = None
        self._maps = Choice(
            self.tr("Map"),
            [
                (RATE, self.tr("Rate")),
                (EXPOSURE, self.tr("Exposure")),
                (ZENITH, self.tr("Zenith enlarged")),
            ],
        )
        self._maps.show_choice(RATE)
        self._dome = Dome(self.tr("Map of the sky above"), theme)
        self._told = Text("", "small")
        self._key = Text("", "small")
        self._night = NightView(self.tr("Field rotation through the night"), theme)
        self._maps.chosen.connect(lambda _map: self._show_map())
        self._dome.told.connect(self._tell)
        self._night.picked.connect(self.picked)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(Reflow((self._map_panel(), self._night_panel()), 900, (5, 6)))

    def _map_panel(self) -> Panel:
        panel = Panel()
        panel.column.addWidget(self._maps)
        panel.column.addWidget(self._dome, 1)
        panel.column.addWidget(self._told)
        panel.column.addWidget(self._key)
        return panel

    def _night_panel(self) -> Panel:
        panel = Panel()
        self._empty = Text("", "side")
        panel.column.addWidget(self._empty)
        panel.column.addWidget(self._night, 1)
        return panel

    def dome(self) -> Dome:
        return self._dome

    def maps(self) -> Choice:
        return self._maps

    def night(self) -> NightView:
        return self._night

    def told(self) -> str:
        return self._told.text()

    def show_study(self, study: RotationStudy, zone: Zone) -> None:
        self._study, self._zone = study, zone
        self._night.show_picture(pictures.turning(study, zone))
        self._night.show_moment(study.moment_utc_s)
        self._empty.say(self._why_empty(study))
        self._night.setVisible(not self._empty.text())
        self._show_map()

    def _why_empty(self, study: RotationStudy) -> str:
        if study.way is None:
            return self.tr(
                "Choose a target above: its path, and how the field turns along it, show here."
            )
        return never_seen(study, study.way)

    def _show_map(self) -> None:
        if self._study is None or self._zone is None:
            return
        kind = self._maps.choice()
        reader = self._exposure_at if kind == EXPOSURE else self._rate_at
        self._dome.show_picture(dome(kind, self._study, self._zone), reader)
        self._key.say(f"{self._lines(kind)} {self._way_round()}")
        self._tell("")

    def _tell(self, sentence: str) -> None:
        """The line stays where it is, so that nothing jumps under the pointer."""
        self._told.setText(sentence or self.tr("Point into the map to read it."))

    def _way_round(self) -> str:
        return self.tr(
            "North is up and east on the right, as on a map of the ground. Hatched at the rim: "
            "obstructions; crossed: too fast for the drive."
        )

    def _lines(self, kind: str) -> str:
        assert self._study is not None
        if kind == EXPOSURE:
            return self.tr(
                "Lines of equal longest exposure for {smear:g} px of smear in the corner."
            ).format(smear=self._study.question.smear_px)
        if not self._study.rates.levels:
            return self.tr("At a pole of the Earth the field does not turn at all.")
        return self.tr(
            "Lines of equal field rotation: whole where the parallactic angle grows (+), broken "
            "where it falls (−)."
        )

    def _rate_at(self, azimuth_deg: float, altitude_deg: float) -> str:
        assert self._study is not None
        around = self._study.question.around
        rate = rate_deg_per_hour(around.site.latitude_deg, azimuth_deg, altitude_deg, around.air)
        return self.tr("the field turns {rate}").format(rate=rate_words(float(rate)))

    def _exposure_at(self, azimuth_deg: float, altitude_deg: float) -> str:
        assert self._study is not None
        latitude = self._study.question.around.site.latitude_deg
        longest = longest_map_s(latitude, azimuth_deg, altitude_deg, self._study.allowed_deg)
        return self.tr("expose {time} at most").format(time=limit_words(float(longest)))


# How long to expose, how often, and what is left after stacking.

EXPOSURE_FIELDS = (
    *("frame_width_px", "frame_height_px", "smear_px"),
    *("stack_min", "rotation_exposure_s", "rotation_between_s"),
)


class RotationExposureSection(QWidget):
    """`picked` carries the moment at which the series begins, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._amounts = PlanAmounts(
            plans,
            FIGURES,
            EXPOSURE_FIELDS,
            {"rotation_exposure_s": self.tr("empty: the longest possible")},
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

    def show_study(self, study: RotationStudy, zone: Zone) -> None:
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

    def _doubt_words(self, study: RotationStudy, plan: Stacked, zone: Zone) -> str:
        said = []
        if plan.hidden_utc_s is not None:
            time = clock_words(zone, plan.hidden_utc_s)
            said.append(self.tr("From {time} on the target is not seen.").format(time=time))
        if plan.smear_px > 1.01 * study.question.smear_px:
            said.append(self.tr("The exposure is too long for the smear allowed."))
        return " ".join(said)


# What the drive cannot follow near the zenith, and what a derotator has to do.

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

    def show_study(self, study: RotationStudy, zone: Zone) -> None:
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

    def _zone_words(self, study: RotationStudy) -> str:
        return self.tr(
            "At {limit:g}° a second the drive loses stars within {south:.2f}° south and "
            "{north:.2f}° north of the zenith."
        ).format(
            limit=study.question.drive_deg_per_s,
            south=study.zone.south_deg,
            north=study.zone.north_deg,
        )

    def _losses_words(self, study: RotationStudy, zone: Zone) -> str:
        if study.way is None:
            return self.tr("Choose a target above to see whether it passes there.")
        if unseen := never_seen(study, study.way):
            return unseen
        if not study.way.losses:
            return self.tr(
                "{target} comes within {distance:.1f}° of the zenith tonight and is never lost."
            ).format(target=self._name(study), distance=90.0 - study.way.highest_deg)
        return " ".join(self._loss_words(study, loss, zone) for loss in study.way.losses)

    def _loss_words(self, study: RotationStudy, loss: Loss, zone: Zone) -> str:
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

    def _name(self, study: RotationStudy) -> str:
        target = study.question.target
        return "" if target is None else target.name

    def _verdict_words(self, study: RotationStudy) -> str:
        if study.way is None:
            return self.tr("Choose a target above to see what its derotator must do.")
        if study.way.derotation is None:
            return study.way.derotator_problem
        return study.way.derotation.sentence.replace(" -", " −")

    def _rewind_words(self, study: RotationStudy, zone: Zone) -> str:
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


# A fork on a wedge, or a Dobsonian on a platform, that is set for another latitude.

TILT_FIELDS = ("set_latitude_deg", "set_azimuth_deg")


class TiltedSection(QWidget):
    """`picked` carries a moment, Unix seconds."""

    picked = Signal(float)

    def __init__(self, plans: Plans, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._plans = plans
        self._kinds = Choice(
            self.tr("On what the mount stands"),
            [
                (WEDGE, self.tr("Fork on a wedge")),
                (PLATFORM, self.tr("Dobsonian on a platform")),
            ],
        )
        self._kinds.chosen.connect(lambda kind: plans.set_word("tilted", kind))
        self._amounts = PlanAmounts(
            plans,
            FIGURES,
            TILT_FIELDS,
            {"set_latitude_deg": self.tr("empty: the latitude of the site")},
        )
        self._left = Text("", "side")
        self._beside = Text("")
        self._assumed = Text("", "small")
        self._night = NightView(self.tr("Rotation that is left through the night"), theme)
        self._night.picked.connect(self.picked)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(Reflow((self._settings(), self._result()), 900, (5, 6)))

    def _settings(self) -> Panel:
        panel = Panel(self.tr("Wedge or platform"))
        panel.column.addWidget(self._kinds)
        panel.column.addWidget(self._amounts)
        for part in (self._left, self._beside, self._assumed):
            panel.column.addWidget(part)
        panel.column.addStretch()
        return panel

    def _result(self) -> Panel:
        panel = Panel(self.tr("What is left of the rotation"))
        panel.column.addWidget(self._night, 1)
        return panel

    def kinds(self) -> Choice:
        return self._kinds

    def amounts(self) -> PlanAmounts:
        return self._amounts

    def night(self) -> NightView:
        return self._night

    def said(self) -> str:
        return f"{self._left.text()} {self._beside.text()}".strip()

    def show_study(self, study: RotationStudy, zone: Zone) -> None:
        self._amounts.show_plans()
        self._kinds.show_choice(study.question.tilted.kind)
        unseen = "" if study.way is None else never_seen(study, study.way)
        self._night.setVisible(study.way is not None and not unseen)
        self._assumed.say(self._assumed_words(study))
        if study.way is None or unseen:
            self._left.say(unseen or self.tr("Choose a target above to see what is left on it."))
            self._beside.say("")
            return
        self._left.say(self._left_words(study, study.way))
        self._beside.say(self._beside_words(study, study.way))
        self._night.show_picture(pictures.residual(study, zone))
        self._night.show_moment(study.moment_utc_s)

    def _left_words(self, study: RotationStudy, way: Way) -> str:
        left = way.at(way.residual_deg_per_hour, study.moment_utc_s)
        if abs(left) < 1e-4:
            return self.tr("Set for this latitude and this pole, nothing is left.")
        longest = min(study.allowed_deg / abs(left) * 3600.0, LONGEST_S)
        return self.tr(
            "At the moment picked {left:.2g}° an hour are left: the corner smears by {smear:g} px "
            "after {time}."
        ).format(left=abs(left), smear=study.question.smear_px, time=limit_words(longest))

    def _beside_words(self, study: RotationStudy, way: Way) -> str:
        plain = abs(way.at(way.track.rate_deg_per_hour, study.moment_utc_s))
        left = abs(way.at(way.residual_deg_per_hour, study.moment_utc_s))
        if left < 1e-4 or plain < 1e-4:
            return ""
        return self.tr(
            "On its own, the mount would let the field turn {plain:.2g}° an hour."
        ).format(plain=plain)

    def _assumed_words(self, study: RotationStudy) -> str:
        tilted = study.question.tilted
        latitude = study.question.around.site.latitude_deg
        set_for = latitude if np.isnan(tilted.latitude_deg) else tilted.latitude_deg
        said = self.tr("Set for {set:.1f}°, used at {here:.1f}°.").format(
            set=set_for, here=latitude
        )
        if tilted.kind == PLATFORM:
            said += " " + self.tr("The platform is taken to stand level at the moment picked.")
        return said
