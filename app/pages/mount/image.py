"""How long one may expose without guiding, for a given error of the axis."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING, Any

import numpy as np
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.night.budget import Budget, Wanted, telescopes_and_cameras
from app.night.equipment import Equipment
from app.pages.mount.words import ImageResult, image_result
from app.ui.drawings import PixelGrid
from app.ui.form import Choice, Figure, Named, OptionKeys
from app.ui.redraw import Redraw
from app.ui.style import Theme
from app.ui.text import Panel, Reflow, Scrolled, Text
from app.workers.latest import LatestOnly
from core.imaging.task import ImagedTarget, Optics, Task, UnusableTask, Vantage
from core.imaging.tolerance import longest_exposure
from core.language import marked, say
from core.mount.equipment import Camera, Guider, ImpossibleValue, Quantity, Record, Telescope
from core.sky.site import Air, Site
from core.units import ARCMIN_PER_RAD

if TYPE_CHECKING:
    from app.night.session import Session
    from app.night.snapshot import Snapshot


EQUATOR = ImagedTarget(0.0, -45.0, 45.0)


def longest_unguided(
    optics: Optics, site: Site, air: Air, target: ImagedTarget, error_arcmin: float, limit_px: float
) -> str:
    """A sentence, for the worse of the two directions in which the axis may be off."""
    where = target.name or say("declination {declination:g}°", declination=target.declination_deg)
    try:
        task = Task(target, optics, 1.0, limit_px=limit_px)
        vantage = Vantage.of(site, air)
        axes = np.eye(2) * error_arcmin / ARCMIN_PER_RAD
        found = [longest_exposure(task, vantage, axis) for axis in axes]
    except UnusableTask as reason:
        return f"{say('The longest exposure cannot be told.')} {reason!s}"
    shortest = min(found, key=lambda one: one.seconds)
    told = say("Unguided, {where}, the axis {error:g}′ off.", where=where, error=error_arcmin)
    return f"{told} {shortest.sentence}"


# What the image section asks: which telescope and camera, binning, reducer, seeing.

FIGURES = {
    "focal_factor": Quantity(marked("The reducer or Barlow factor"), "", 0.05, 20.0),
    "seeing_arcsec": Quantity(marked("The seeing"), " ″", 0.1, 60.0),
    "axis_error_arcmin": Quantity(marked("An axis error to try out"), " ′", 0.0, 600.0),
}
BINNINGS = (1, 2, 3, 4)


class ImageForm(Panel):
    """`changed` fires when the person has changed something that can be used."""

    changed = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(self.tr("What with"), parent)
        hints = {
            "focal_factor": self.tr("1 without either; a reducer is below, a Barlow lens above."),
            "seeing_arcsec": self.tr("Width of a star at half its brightness; 2 to 4 is usual."),
            "axis_error_arcmin": self.tr("For the longest exposure without guiding."),
        }
        self.telescopes = OptionKeys(self.tr("Telescope"))
        self.cameras = OptionKeys(self.tr("Camera"))
        self.binning = Choice(self.tr("Binning"), [(f"{n}", f"{n} × {n}") for n in BINNINGS])
        self.figures = {name: Figure(one, hints[name]) for name, one in FIGURES.items()}
        self._shown: dict[str, str] = {}
        for part in (self.telescopes, self.cameras, Named(self.tr("Binning"), self.binning)):
            self.column.addWidget(part)
        for figure in self.figures.values():
            self.column.addWidget(figure)
            figure.submitted.connect(self._figure_left)
            figure.left.connect(self._figure_left)
        self.column.addStretch()
        for keys in (self.telescopes, self.cameras, self.binning):
            keys.chosen.connect(lambda _name: self.changed.emit())

    def show_wanted(
        self, wanted: Wanted, telescopes: Sequence[Telescope], cameras: Sequence[Camera]
    ) -> None:
        """The first telescope and camera are those in use."""
        for keys, found in ((self.telescopes, telescopes), (self.cameras, cameras)):
            keys.offer(_sorted_options(found), found[0].key if found else "")
            keys.setVisible(len(found) > 1)
        self.binning.show_choice(str(min(wanted.binning, BINNINGS[-1])))
        for name, figure in self.figures.items():
            if figure.is_free():
                figure.show_figure(getattr(wanted, name))
                self._shown[name] = figure.text()

    def taken(self, wanted: Wanted) -> Wanted:
        """`wanted` with what stands here; what cannot be used is left as it was."""
        figures: dict[str, Any] = {
            name: value
            for name, figure in self.figures.items()
            if (value := figure.read()) is not None or not figure.is_wrong()
        }
        return replace(
            wanted,
            telescope=self.telescopes.choice(),
            camera=self.cameras.choice(),
            binning=int(self.binning.choice()),
            **figures,
        )

    def _figure_left(self) -> None:
        texts = {name: figure.text() for name, figure in self.figures.items()}
        if texts != self._shown:
            self._shown = texts
            self.changed.emit()


def _sorted_options(found: Sequence[Record]) -> list[tuple[str, str]]:
    """In an order that does not change with the choice."""
    return sorted(((one.key, one.name) for one in found), key=lambda pair: pair[1])


# The image section: what one pixel sees, and whether seeing, guiding and exposure fit it.


class ImageSection(QWidget):
    """Follows the set in use and the place."""

    def __init__(
        self,
        theme: Theme,
        equipment: Equipment,
        budget: Budget,
        session: Session,
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._equipment = equipment
        self._budget = budget
        self.form = ImageForm()
        self.scale = Text("", "figure")
        self.field = Text("", "figure")
        self.problem = Text("", "side")
        self.sampling, self.guiding, self.motion = Text(), Text(), Text("", "quiet")
        self.missing = Text("", "small")
        self.exposure = Text()
        self._grid = PixelGrid(theme)
        self._figures = QWidget()
        self._errand = LatestOnly(self)
        self._errand.done.connect(self._show_exposure)
        self._redraw = Redraw(self, self._show)
        session.follow(self._keep)
        self._arrange()
        self.form.changed.connect(self._take)
        budget.changed.connect(self._redraw.mark)
        self._show()

    def close_errands(self) -> None:
        self._errand.close()

    def mark(self) -> None:
        """The place or the air has changed."""
        self._redraw.mark()

    def _keep(self, snapshot: Snapshot) -> None:
        self._tonight = snapshot

    def _arrange(self) -> None:
        figures = QVBoxLayout(self._figures)
        figures.setContentsMargins(0, 0, 0, 0)
        figures.setSpacing(12)
        figures.addWidget(self._answer_panel())
        figures.addWidget(self._more_panel())
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(self.problem)
        column.addWidget(self._figures)
        column.addStretch(1)
        content = QWidget()
        inner = QVBoxLayout(content)
        inner.setContentsMargins(16, 0, 16, 12)
        inner.addWidget(Reflow((left, self.form), 900, (5, 3)))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(Scrolled(content))

    def _answer_panel(self) -> Panel:
        panel = Panel()
        halves = []
        for name, figure in (
            (self.tr("One pixel sees"), self.scale),
            (self.tr("The whole field"), self.field),
        ):
            half = QWidget()
            half.setAccessibleName(name)
            column = QVBoxLayout(half)
            column.setContentsMargins(0, 0, 0, 0)
            column.setSpacing(0)
            column.addWidget(Text(name, "quiet"))
            column.addWidget(figure)
            column.addStretch()
            halves.append(half)
        panel.column.addWidget(Reflow(halves, 480, (2, 3)))
        row = QHBoxLayout()
        row.setSpacing(16)
        row.addWidget(self._grid)
        row.addWidget(self.sampling, 1, Qt.AlignmentFlag.AlignTop)
        panel.column.addLayout(row)
        panel.column.addStretch(1)
        return panel

    def _more_panel(self) -> Panel:
        panel = Panel(self.tr("Guiding and exposure"))
        for part in (self.guiding, self.motion, self.exposure, self.missing):
            panel.column.addWidget(part)
        return panel

    def _take(self) -> None:
        self._budget.want(self.form.taken(self._budget.wanted))

    def _show(self) -> None:
        wanted = self._budget.wanted
        telescopes, cameras = telescopes_and_cameras(wanted, self._equipment)
        self.form.show_wanted(wanted, telescopes, cameras)
        try:
            if not telescopes or not cameras:
                raise ImpossibleValue(
                    self.tr(
                        "The set in use has no telescope with a camera: choose another set, or "
                        "give this one both under Equipment."
                    )
                )
            result = image_result(
                telescopes[0],
                cameras[0],
                self._guiders(),
                wanted.binning,
                wanted.focal_factor or 1.0,
                wanted.seeing_arcsec,
            )
        except ImpossibleValue as reason:
            self.problem.say(str(reason))
            self._figures.hide()
            return
        self.problem.say("")
        self._figures.show()
        self._show_result(result)
        self._ask_exposure()

    def _show_result(self, result: ImageResult) -> None:
        self.scale.say(result.scale)
        self.field.say(result.field)
        self.sampling.say(result.sampling)
        self.guiding.say(result.guiding)
        self.motion.say(result.motion)
        lines = [self.tr("Not judged:"), *(f"–  {one}" for one in result.missing)]
        self.missing.say("\n".join(lines) if result.missing else "")
        self._grid.show_across(result.across)

    def _guiders(self) -> list[Guider]:
        chosen = self._equipment.set_in_use()
        parts = () if chosen is None else self._equipment.inventory.parts_of(chosen, True)
        return [one for one in parts if isinstance(one, Guider)]

    def _ask_exposure(self) -> None:
        from core.imaging.task import ImagedTarget

        snapshot, wanted = self._tonight, self._budget.wanted
        site, air = snapshot.site, snapshot.air
        if site is None or air is None or wanted.axis_error_arcmin is None:
            self.exposure.say(
                self.tr("The longest unguided exposure needs your site and an error of the axis.")
            )
            return
        optics = self._budget.optics_of_set()
        target = EQUATOR
        if wanted.declination_deg is not None:
            target = ImagedTarget(wanted.declination_deg, -45.0, 45.0, wanted.name)
        error, limit = wanted.axis_error_arcmin, wanted.limit_px or 0.5
        self._errand.send(lambda: longest_unguided(optics, site, air, target, error, limit))

    def _show_exposure(self, sentence: object) -> None:
        self.exposure.say(sentence if isinstance(sentence, str) else "")
