"""The sections of the Tracking page: periodic error, training, exposure, guiding, shocks."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING

import numpy as np
from PySide6.QtWidgets import QWidget

from app.pages.tracking import pictures
from app.pages.tracking.figures import (
    ALLOWED,
    CAPACITY,
    DECLINATION,
    DELAY,
    DITHER,
    EXPOSURE,
    GUIDED_ALLOWED,
    INTERVAL,
    NOISE,
    PAYLOAD,
    RATE,
    SCALE,
    SEEING,
    SETTLED,
    SHARE,
    SHEET,
    WORM,
    Given,
    Reversal,
    Tap,
    UnusablePairs,
    pairs,
)
from app.pages.tracking.live import LiveBox
from app.pages.tracking.model import TrackingModel
from app.pages.tracking.runs import RunBox, sentences
from app.pages.tracking.section import ModelAmount, TrackingSection
from app.ui.curveplot import CurvePicture, CurvePlot
from app.ui.filepicker import file_dialog
from app.ui.form import Asking, Choice, Key, Lines, Named, Tick
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Fact, Facts, Panel, Rows, Text, limit_words
from app.workers.latest import Job, KeepGoing
from core.language import say
from core.mount import payload

if TYPE_CHECKING:
    from core.tracking.exposure import ChanceCurve
    from core.tracking.guiding import GuidingCheck
    from core.tracking.periodic import PeriodicError


# The periodic error: how far the drive swings in a turn of its worm.

LIVE_MS = 500  # between two pictures of a run that is being recorded
TURN, RUN, PERIODS = "turn", "run", "periods"


class PeriodicSection(TrackingSection):
    """The run comes in here, for the other sections too."""

    def __init__(
        self,
        theme: Theme,
        bench: TrackingModel,
        practise: Callable[[], Given],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, bench, parent=parent)
        self.sentence = Text("", "side")
        self.views = Choice(self.tr("What the plot shows"), self._view_words())
        self.views.show_choice(TURN)
        self.views.chosen.connect(lambda _view: self.show_bench())
        self.waves = Rows(
            self.tr("Parts of the curve that stand out"),
            (
                self.tr("part"),
                self.tr("period"),
                self.tr("amplitude ± 95 %"),
                self.tr("phase ± 95 %"),
            ),
        )
        self.notes = Text("", "quiet")
        self.box = RunBox(
            self.tr("The run"),
            self.tr(
                "Let the mount track one star without guiding for at least three turns of its "
                "worm, better six: half an hour to an hour, any declination below 60°. The drift "
                "of the polar axis and of the air is computed and taken out. Legs of tonight with "
                "east offsets can be chosen here too."
            ),
            theme,
            bench,
            practise,
        )
        self.box.taken.connect(bench.take_run)
        self.box.dropped.connect(bench.leave_run_out)
        self.live = None if bench.live is None else LiveBox(theme, bench, bench.live)
        if bench.live is not None:
            self._live_redraw = Redraw(self, self._draw_live, LIVE_MS)
            bench.live.reading_added.connect(self._live_redraw.mark)
            bench.live.changed.connect(self._redraw.mark)
        self.worm = ModelAmount(
            bench, "worm_period_s", WORM, self.tr("From the data sheet; empty finds it in the run.")
        )
        self.sheet = ModelAmount(bench, "sheet_arcsec", SHEET, self.tr("As the data sheet says."))
        self.plus_minus = Tick(self.tr("The sheet gives it as ±"))
        self.plus_minus.ticked.connect(lambda down: bench.want(sheet_is_plus_minus=down))
        self.compared = Text()
        self.arrange(
            (self.sentence, self.views, self.plot, self.waves, self.notes),
            tuple(part for part in (self.live, self.box, self._worm_panel()) if part is not None),
        )

    def _view_words(self) -> list[tuple[str, str]]:
        return [
            (TURN, self.tr("One turn")),
            (RUN, self.tr("Whole run")),
            (PERIODS, self.tr("Periods")),
        ]

    def _worm_panel(self) -> Panel:
        panel = Panel(self.tr("What the data sheet says"))
        for part in (self.worm, self.sheet, self.plus_minus, self.compared):
            panel.column.addWidget(part)
        return panel

    def _draw_live(self) -> None:
        """The readings as they come, in place of what was found before."""
        live = self.bench.live
        leg = None if live is None else live.leg()
        if leg is not None and leg.utc_s.size > 1:
            self.plot.show_picture(pictures.live_run(leg))

    def _show_recording(self) -> None:
        hidden: tuple[QWidget, ...] = (
            *(self.views, self.waves, self.notes),
            *(self.compared, self.box),
        )
        for one in hidden:
            one.hide()
        self.sentence.say(
            self.tr(
                "A run is being recorded. Leave mount and bolts alone until it is long enough; "
                "then stop the recording, and it is judged."
            )
        )
        self.plot.show()
        self._draw_live()

    def show_bench(self) -> None:
        if self.bench.live is not None and self.bench.live.is_on:
            self._show_recording()
            return
        self.box.show()
        self.box.show_given(self.bench.run)
        self.plus_minus.show_tick(self.bench.typed.sheet_is_plus_minus)
        study = self.bench.study
        drive = None if study is None else study.drive
        found = None if drive is None else drive.periodic.value
        for part in (self.views, self.waves):
            part.setVisible(found is not None)
        is_empty = self.bench.run is None and self.bench.guided is None
        self.box.show_keys(not is_empty)  # until then the verdict above offers them
        if drive is None:
            self.sentence.say(
                self.tr("No run yet. It will show what the drive does in each turn of its worm.")
            )
        else:
            words = drive.run.problem or drive.periodic.words(lambda one: str(one.sentence))
            self.sentence.say(words or self.tr("No run yet."))
        compared = None if drive is None else drive.comparison.value
        self.compared.say("" if compared is None else "\n".join(map(str, compared.findings)))
        self.notes.say("" if found is None else sentences(list(map(str, found.notes))))
        if found is not None:
            self.waves.show_rows(self._rows(found))
            self.plot.show_picture(self._picture(found))
        else:
            self.plot.show_picture(pictures.example_turn())
        self.plot.setVisible(found is not None or self.bench.run is None)

    def _picture(self, found: PeriodicError) -> CurvePicture:
        makers = {RUN: pictures.whole_run, PERIODS: pictures.periods}
        return makers.get(self.views.choice(), pictures.one_turn)(found)

    def _rows(self, found: PeriodicError) -> list[tuple[str, ...]]:
        from core.tracking.wormfolding import INTERVAL_FACTOR

        def size(amplitude: float, sigma: float) -> str:
            return f"{amplitude:.2f}″ ± {INTERVAL_FACTOR * sigma:.2f}″"

        rows: list[tuple[str, ...]] = [
            (
                self._part(wave.order),
                say("{seconds:.1f} s", seconds=wave.period_s),
                size(wave.amplitude_arcsec, wave.amplitude_sigma_arcsec),
                f"{wave.phase_deg:.0f}° ± {INTERVAL_FACTOR * wave.phase_sigma_deg:.0f}°",
            )
            for wave in found.harmonics
            if wave.stands_out
        ]
        beside = self.tr("beside the worm")
        for other in found.other_periods:
            amplitude = size(other.amplitude_arcsec, other.amplitude_sigma_arcsec)
            rows.append((beside, say("{seconds:.1f} s", seconds=other.period_s), amplitude, ""))
        return rows

    def _part(self, order: int) -> str:
        if order == 1:
            return self.tr("one turn of the worm")
        return self.tr("{n} swings a turn").format(n=order)


# What training the drive would bring, and the curve to train it with.


class TrainingSection(TrackingSection):
    def __init__(self, theme: Theme, bench: TrackingModel, parent: QWidget | None = None) -> None:
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
            waiting = study.drive.training.words(lambda one: str(one.sentence))
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


# How long one may expose: unguided, trained and guided.


class LongestExposureSection(TrackingSection):
    """`scale`: where the image scale is typed, for those who lead here."""

    def __init__(self, theme: Theme, bench: TrackingModel, parent: QWidget | None = None) -> None:
        super().__init__(theme, bench, parent=parent)
        self.facts = Facts(
            self.tr("Longest exposures of which nine in ten are sharp"),
            (self.tr("Unguided"), self.tr("Trained"), self.tr("Guided")),
        )
        self.sentence = Text("", "side")
        self.polar = Text("", "quiet")
        self.scale = ModelAmount(
            bench,
            "scale_arcsec_per_px",
            SCALE,
            self.tr("206.265 times the pixel in µm over the focal length in mm."),
        )
        self.arrange(
            (self.sentence, self.facts, self.plot, self.polar),
            (self._exposure_panel(), self._guide_panel()),
        )

    def _exposure_panel(self) -> Panel:
        bench, panel = self.bench, Panel(self.tr("The exposure"))
        for part in (
            self.scale,
            ModelAmount(bench, "allowed_px", ALLOWED),
            ModelAmount(bench, "exposure_s", EXPOSURE, self.tr("The one the verdict is about.")),
            ModelAmount(bench, "declination_deg", DECLINATION),
        ):
            panel.column.addWidget(part)
        return panel

    def _guide_panel(self) -> Panel:
        bench, panel = self.bench, Panel(self.tr("How it would be guided"))
        larger = self.tr("The air moves a guided star too; more than unguided is usual.")
        middle = self.tr("From the middle of a guide exposure to its correction.")
        air = self.tr("What the air does to one measurement.")
        for part in (
            ModelAmount(bench, "guided_allowed_px", GUIDED_ALLOWED, larger),
            ModelAmount(bench, "guide_interval_s", INTERVAL),
            ModelAmount(bench, "guide_delay_s", DELAY, middle),
            ModelAmount(bench, "guide_share_percent", SHARE),
            ModelAmount(bench, "guide_noise_arcsec", NOISE, air),
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        study = self.bench.study
        curves = None if study is None else study.drive.curves.value
        for part in (self.facts, self.plot):
            part.setVisible(curves is not None)
        self.polar.say("")
        if study is None or study.drive.periodic.value is None:
            self.sentence.say(self.tr("Needs an unguided run: bring one in under Periodic error."))
            return
        self.sentence.say(study.drive.curves.problem)
        polar = study.drive.polar
        self.polar.say(polar.words(lambda one: str(one.sentence)))
        if curves is not None:
            self.facts.show_facts([self._fact(one) for one in curves], self._limits())
            self.plot.show_picture(pictures.chances(curves))

    def _limits(self) -> str:
        figures = self.bench.figures()
        words = self.tr(
            "Of exposures begun at any moment at declination {dec:.0f}°, nine in ten smear less "
            "than {free:g} px, guided less than {held:g} px."
        )
        free = figures.allowed_px or 0.5
        return words.format(
            dec=figures.declination_deg or 0.0, free=free, held=figures.guided_allowed_px or free
        )

    def _fact(self, curve: ChanceCurve) -> Fact:
        if curve.longest_s <= 0.0:
            return Fact("—", str(curve.sentence))
        known = curve.exposure_s[curve.chance == curve.chance]
        is_end = known.size > 0 and curve.longest_s >= float(known[-1])
        words = self.tr("as far as this run can tell") if is_end else ""
        return Fact(limit_words(curve.longest_s), words)


# The guiding check: how well guiding holds the star, what is wrong, and what to change.

LANE_PX = 190  # high enough to see a swing, low enough for two


class GuidingSection(TrackingSection):
    def __init__(
        self,
        theme: Theme,
        bench: TrackingModel,
        practise: Callable[[], Given],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, bench, LANE_PX, parent)
        self.sentence = Text("", "side")
        self.facts = Facts(
            self.tr("What guiding leaves"),
            (self.tr("Right ascension"), self.tr("Declination"), self.tr("Ratio of the two")),
        )
        self.findings = Text()
        self.north = CurvePlot(theme, LANE_PX)
        self.north.hide()
        self.air, self.settling, self.play = Text("", "quiet"), Text(), Text()
        self.box = RunBox(
            self.tr("Some minutes of guiding"),
            self.tr(
                "The offsets of the guide star while it is guided, in both axes: five minutes or "
                "more, one line for each guide exposure."
            ),
            theme,
            bench,
            practise,
        )
        self.box.practice_key.setText(self.tr("Practice guiding"))
        self.box.import_key.setText(self.tr("Import guiding (CSV) …"))
        self.box.taken.connect(bench.take_guided)
        self.box.dropped.connect(bench.leave_guided_out)
        self.reversal = Lines(self.tr("Reversal in declination: asked and moved, in ″"))
        self.reversal.textChanged.connect(self._take_reversal)
        self.wrong = Text("", "alarm")
        self.arrange(
            (self.sentence, self.facts, self.findings, self.plot, self.north),
            (self.box, self._air_panel(), self._reversal_panel()),
        )

    def _air_panel(self) -> Panel:
        bench, panel = self.bench, Panel(self.tr("Air and dither"))
        width = self.tr("Width of a star at half its brightness.")
        for part in (
            ModelAmount(bench, "seeing_arcsec", SEEING, width),
            ModelAmount(bench, "dither_s", DITHER, self.tr("If the record holds a dither.")),
            ModelAmount(bench, "settled_arcsec", SETTLED),
            self.air,
            self.settling,
        ):
            panel.column.addWidget(part)
        return panel

    def _reversal_panel(self) -> Panel:
        panel = Panel(self.tr("Declination backlash"))
        how = self.tr(
            "Push the star north with short equal pulses until it moves evenly, then south. Write "
            "a line for each pulse since the reversal: arcseconds asked for in all, and "
            "arcseconds the star has moved."
        )
        self.reversal.setPlaceholderText("2  0.1\n4  0.2\n6  1.9\n8  4.0")
        self.reversal.setFixedHeight(170)
        for part in (
            Text(how),
            Named(self.tr("Asked and moved, in ″"), self.reversal),
            self.wrong,
            ModelAmount(self.bench, "guide_rate_arcsec_per_s", RATE),
            self.play,
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        self.box.show_given(self.bench.guided)
        study, given = self.bench.study, self.bench.guided
        found = None if study is None else study.guiding.value
        self.facts.setVisible(found is not None)
        for plot in (self.plot, self.north):
            plot.setVisible(given is not None)
        if given is None or study is None:
            self.sentence.say(self.tr("No guiding recorded yet; bring some minutes of it in."))
        else:
            self.sentence.say(study.guiding.words(lambda one: str(one.sentence)))
        if given is not None:
            for plot, picture in zip(
                (self.plot, self.north), pictures.guided_offsets(given), strict=True
            ):
                plot.show_picture(picture)
        self.findings.say("" if found is None else self._found(found))
        self.air.say(self._air())
        self.settling.say(
            "" if study is None else study.settling.words(lambda one: str(one.sentence))
        )
        self.play.say("" if study is None else study.backlash.words(lambda one: str(one.sentence)))
        if found is not None:
            rms = self.tr("rms, worst {peak:.1f}″")
            axes = [
                Fact(f"{axis.rms_arcsec:.2f}″", rms.format(peak=axis.peak_arcsec))
                for axis in (found.east, found.north)
            ]
            self.facts.show_facts((*axes, Fact(f"{found.ratio:.1f}", self.tr("1 is even"))))

    def _air(self) -> str:
        moved = self.bench.parts.air_motion_arcsec(self.bench.figures().seeing_arcsec)
        if moved is None:
            return ""
        words = self.tr(
            "Under such seeing the air alone moves a star {moved:.1f}″ rms in each axis of your "
            "telescope, in short exposures; no guiding is better than that."
        )
        return words.format(moved=moved)

    def _found(self, found: GuidingCheck) -> str:
        if not found.findings:
            return self.tr("Nothing in it asks for a change.")
        return sentences(list(map(str, found.findings)))

    def _take_reversal(self) -> None:
        try:
            asked, moved = pairs(self.reversal.text())
        except UnusablePairs as reason:
            self.wrong.say(str(reason))
            return
        self.wrong.say("")
        given = Reversal(np.array(asked), np.array(moved)) if asked else None
        if given is not None or self.bench.reversal is not None:
            self.bench.take_reversal(given)


# Vibration: how long the mount shakes after a touch, before and after a change.

COLUMNS = "time_s, offset_arcsec"


class VibrationSection(TrackingSection):
    def __init__(
        self,
        theme: Theme,
        bench: TrackingModel,
        rng: np.random.Generator,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(theme, bench, parent=parent)
        self._rng = rng
        self.sentence, self.change = Text("", "side"), Text("", "side")
        self.facts = Facts(
            self.tr("After a touch"),
            (self.tr("Settled after"), self.tr("First swing"), self.tr("Swings a second")),
        )
        self.load, self.caution = Text(), Text("", "quiet")
        self.before_key = Key(self.tr("Import a tap (CSV) …"))
        self.after_key = Key(self.tr("Import a tap after a change …"))
        self.practice_key = Key(self.tr("Practice tap"))
        self._said = Text("", "quiet")
        self._said.hide()
        self.scale = ModelAmount(bench, "scale_arcsec_per_px", SCALE)
        self.scale.hide()
        self._is_after = False
        self._job = Job(self)
        self._job.done.connect(self._answered)
        self.before_key.clicked.connect(partial(self._choose, False))
        self.after_key.clicked.connect(partial(self._choose, True))
        self.practice_key.clicked.connect(self.practise)
        self.arrange(
            (self.sentence, self.change, self.facts, self.plot),
            (self._tap_panel(), self._load_panel()),
        )

    def _tap_panel(self) -> Panel:
        panel = Panel(self.tr("A tap"))
        how = self.tr(
            "Record a bright star ten times a second or more, tap the tube lightly with a finger "
            "or turn the focuser, and record until it is still."
        )
        for part in (
            Text(how),
            self.practice_key,
            self.before_key,
            self.after_key,
            Text(self.tr("Columns: {columns}").format(columns=COLUMNS), "small"),
            self._said,
            self.scale,
            ModelAmount(self.bench, "settled_arcsec", SETTLED),
        ):
            panel.column.addWidget(part)
        return panel

    def _load_panel(self) -> Panel:
        panel = Panel(self.tr("Load"))
        for part in (
            ModelAmount(self.bench, "payload_kg", PAYLOAD),
            ModelAmount(self.bench, "capacity_kg", CAPACITY),
            self.load,
            self.caution,
        ):
            panel.column.addWidget(part)
        return panel

    def show_bench(self) -> None:
        study = self.bench.study
        has_any = self.bench.before is not None or self.bench.after is not None
        latest = None if study is None else study.after.value or study.before.value
        self.plot.setVisible(has_any)
        self.facts.setVisible(latest is not None)
        self.after_key.setEnabled(self.bench.before is not None)
        if study is None or not has_any:
            self.sentence.say(self.tr("No tap yet. It shows how long to wait after a touch."))
            self.change.say("")
        else:
            part = study.before if study.after.value is None else study.after
            self.sentence.say(study.after.problem or part.words(lambda one: str(one.sentence)))
            self.change.say(str(study.change.value or ""))
        if has_any:
            self.plot.show_picture(pictures.taps(self.bench.before, self.bench.after))
        is_judged = study is not None and study.load.value is not None
        words = (self.tr("Taking weight off:"), *map(say, payload.TAKING_OFF), say(payload.FIRST))
        self.caution.say(" ".join(words) if is_judged else "")
        self.load.say("" if study is None else study.load.words(str))
        if latest is not None:
            self.facts.show_facts(
                (
                    Fact(
                        say("{seconds:.1f} s", seconds=latest.settling_s),
                        self.tr("± {error:.1f} s").format(error=1.96 * latest.settling_sigma_s),
                    ),
                    Fact(f"{latest.first_swing_arcsec:.0f}″", self.tr("to one side")),
                    Fact(
                        f"{latest.frequency_hz:.1f}",
                        self.tr("one in {s:.2f} s").format(s=1.0 / latest.frequency_hz),
                    ),
                )
            )

    def read(self, path: Path, is_after: bool = False) -> None:
        self._is_after = is_after
        scale = self.bench.typed.scale_arcsec_per_px

        def work(_keep_going: KeepGoing) -> object:
            from app.pages.tracking.runs import read_one_tap

            return read_one_tap(path, scale)

        self._job.send(work)

    def practise(self) -> None:
        """The first invented tap, then one after an invented change."""
        self._is_after = self.bench.before is not None and self.bench.before.is_practice
        is_stiff = self._is_after

        def work(_keep_going: KeepGoing) -> object:
            from app.pages.tracking.practice import practice_tap

            return practice_tap(self._rng, is_stiff)

        self._job.send(work)

    def said(self) -> str:
        return self._said.text()

    def close_jobs(self) -> None:
        self._job.close()

    def _answered(self, answer: object) -> None:
        if isinstance(answer, Tap):
            self.scale.hide()
            self._said.say(answer.origin)
            self.bench.take_tap(answer, self._is_after)
            return
        broken = self.tr("The file could not be used because of a fault in the program.")
        self._said.say(getattr(answer, "sentence", "") or broken)
        self.scale.setVisible(bool(getattr(answer, "needs_scale", False)))

    def _choose(self, is_after: bool) -> None:
        filters = [self.tr("Taps (*.csv *.txt *.tsv)"), self.tr("All files (*)")]
        read = partial(self.read, is_after=is_after)
        file_dialog(self, self.theme, self.tr("Choose a record"), filters, read).open()
