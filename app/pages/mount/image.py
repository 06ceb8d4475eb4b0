"""The image section: what one pixel sees, and whether seeing, guiding and exposure fit it."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from app.pages.mount.imageform import ImageForm
from app.pages.mount.imageresult import ImageResult, image_result
from app.session.budget import Budget, telescopes_and_cameras
from app.session.equipment import Equipment
from app.session.errand import Errand
from app.theme.theme import Theme
from app.widgets.pixelgrid import PixelGrid
from app.widgets.redraw import Redraw
from app.widgets.reflow import Reflow
from app.widgets.scrolled import Scrolled
from app.widgets.text import Panel, Text
from core.mount.equipment import Guider, ImpossibleValue

if TYPE_CHECKING:
    from app.session.snapshot import Snapshot


class ImageSection(QWidget):
    """Follows the set in use and the place."""

    def __init__(
        self,
        theme: Theme,
        equipment: Equipment,
        budget: Budget,
        snapshot: Callable[[], Snapshot],
        parent: QWidget | None = None,
    ) -> None:
        super().__init__(parent)
        self._equipment = equipment
        self._budget = budget
        self._snapshot = snapshot
        self.form = ImageForm()
        self.scale = Text("", "figure")
        self.field = Text("", "figure")
        self.problem = Text("", "side")
        self.sampling, self.guiding, self.motion = Text(), Text(), Text("", "quiet")
        self.missing = Text("", "small")
        self.exposure = Text()
        self._grid = PixelGrid(theme)
        self._figures = QWidget()
        self._errand = Errand(self)
        self._errand.done.connect(self._show_exposure)
        self._redraw = Redraw(self, self._show)
        self._arrange()
        self.form.changed.connect(self._take)
        budget.changed.connect(self._redraw.mark)
        self._show()

    def close_errands(self) -> None:
        self._errand.close()

    def mark(self) -> None:
        """The place or the air has changed."""
        self._redraw.mark()

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
        from app.pages.mount.unguided import EQUATOR, longest_unguided
        from core.imaging.task import Target

        snapshot, wanted = self._snapshot(), self._budget.wanted
        site, air = snapshot.site, snapshot.air
        if site is None or air is None or wanted.axis_error_arcmin is None:
            self.exposure.say(
                self.tr("The longest unguided exposure needs your site and an error of the axis.")
            )
            return
        optics = self._budget.optics_of_set()
        target = EQUATOR
        if wanted.declination_deg is not None:
            target = Target(wanted.declination_deg, -45.0, 45.0, wanted.name)
        error, limit = wanted.axis_error_arcmin, wanted.limit_px or 0.5
        self._errand.send(lambda: longest_unguided(optics, site, air, target, error, limit))

    def _show_exposure(self, sentence: object) -> None:
        self.exposure.say(sentence if isinstance(sentence, str) else "")
