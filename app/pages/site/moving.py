"""The question whether a place far away puts the one in use right, or the mount was moved there."""

from __future__ import annotations

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QWidget

from app.session.sitechange import apart_deg
from app.widgets.asking import Asking
from core.sky.site import Air, Site


class Moving(Asking):
    """`settled` carries the Site, the Air and whether the mount was moved there."""

    settled = Signal(object, object, bool)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._wanted: tuple[Site, Air] | None = None
        self.answered.connect(self._settle)

    def ask_about(self, old: Site, site: Site, air: Air) -> None:
        """`old`: the place in use, where stars were measured."""
        self._wanted = site, air
        question = self.tr(
            "The new place lies {apart:.1f}° from the one in use, where stars were measured "
            "tonight. Was the place wrong, or was the mount moved? A mount that was moved has to "
            "be measured anew."
        )
        self.ask(
            question.format(apart=apart_deg(old, site)),
            self.tr("The place was wrong"),
            self.tr("The mount was moved"),
            self.tr("Neither: keep the place in use"),
        )
        self.yes().setFocus()

    def _settle(self, was_wrong: bool) -> None:
        wanted, self._wanted = self._wanted, None
        if wanted is not None:
            self.settled.emit(*wanted, not was_wrong)
