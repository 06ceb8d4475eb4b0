"""Tonight's target, and the search for another."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from app.session.evening import Evening
from app.session.finder import Finder
from app.widgets.targetsearch import TargetSearch
from app.widgets.text import Panel, Text
from core.sky.targets import Target


class TargetBar(Panel):
    """Whatever is chosen here is the target of the whole evening. Call `stop` at the end."""

    def __init__(self, evening: Evening, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.setAccessibleName(self.tr("Target"))
        self._evening = evening
        self._name = Text("", "title")
        self._kind = Text("", "quiet")
        self._search = TargetSearch()
        self._finder = Finder(evening.now, self)
        self._search.typed.connect(self._finder.search)
        self._finder.found.connect(self._search.offer)
        self._search.chosen.connect(evening.plans.set_target)
        for part in (self._name, self._kind, self._search):
            self.column.addWidget(part)
        self.column.addStretch()
        evening.changed.connect(self._show)
        self._show()
        self.setFocusProxy(self._search)

    def search(self) -> TargetSearch:
        return self._search

    def name(self) -> str:
        return self._name.text()

    def stop(self) -> None:
        self._finder.close()

    def _show(self) -> None:
        target = self._evening.plans.target()
        self._name.say(self.tr("No target yet") if target is None else target.name)
        self._kind.say(self._kind_of(target))

    def _kind_of(self, target: Target | None) -> str:
        if target is None:
            return self.tr("Type its name, or the first letters.")
        said = [target.kind]
        if target.magnitude is not None:
            said.append(self.tr("magnitude {size:.1f}").format(size=target.magnitude))
        if target.size_arcmin is not None:
            said.append(self.tr("{size:.3g}′ across").format(size=target.size_arcmin))
        return ", ".join(said)
