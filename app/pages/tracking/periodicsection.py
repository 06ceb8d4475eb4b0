"""The periodic error: how far the drive swings in a turn of its worm."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.pages.tracking import pictures
from app.pages.tracking.amounts import BenchAmount
from app.pages.tracking.bench import Bench
from app.pages.tracking.figures import SHEET, WORM
from app.pages.tracking.livebox import LiveBox
from app.pages.tracking.question import Given
from app.pages.tracking.runbox import RunBox, sentences
from app.pages.tracking.section import Section
from app.theme.theme import Theme
from app.widgets.choice import Choice
from app.widgets.curves import Picture
from app.widgets.redraw import Redraw
from app.widgets.rows import Rows
from app.widgets.text import Panel, Text
from app.widgets.tick import Tick
from core.language import say

if TYPE_CHECKING:
    from core.tracking.periodic import PeriodicError

LIVE_MS = 500  # between two pictures of a run that is being recorded
TURN, RUN, PERIODS = "turn", "run", "periods"


class PeriodicSection(Section):
    """The run comes in here, for the other sections too."""

    def __init__(
        self,
        theme: Theme,
        bench: Bench,
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
        self.worm = BenchAmount(
            bench, "worm_period_s", WORM, self.tr("From the data sheet; empty finds it in the run.")
        )
        self.sheet = BenchAmount(bench, "sheet_arcsec", SHEET, self.tr("As the data sheet says."))
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
            words = drive.run.problem or drive.periodic.words(lambda one: one.sentence)
            self.sentence.say(words or self.tr("No run yet."))
        compared = None if drive is None else drive.comparison.value
        self.compared.say("" if compared is None else "\n".join(compared.sentences))
        self.notes.say("" if found is None else sentences([note.text for note in found.notes]))
        if found is not None:
            self.waves.show_rows(self._rows(found))
            self.plot.show_picture(self._picture(found))
        else:
            self.plot.show_picture(pictures.example_turn())
        self.plot.setVisible(found is not None or self.bench.run is None)

    def _picture(self, found: PeriodicError) -> Picture:
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
