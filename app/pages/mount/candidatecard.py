"""One mount in the comparison: where it stands, why, and what would change it."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QWidget

from app.theme.theme import Theme
from app.widgets.sharebar import ShareBar
from app.widgets.text import Panel, Text
from core.language import say
from core.mount.choice import Candidate, Finding, Mark, Outcome

SIGNS = {True: "✓", False: "✗", None: "?"}


class CandidateCard(Panel):
    def __init__(self, theme: Theme, candidate: Candidate, parent: QWidget | None = None) -> None:
        super().__init__("", parent)
        self.candidate = candidate
        mount = candidate.mount
        self.setAccessibleName(mount.name)
        self.setAccessibleDescription(f"{self._standing()} {candidate.reason}")
        self.column.addWidget(Text(self._standing(), "turn"))
        self.column.addWidget(Text(mount.name, "title"))
        marks = [self.tr("invented, no product")] if mount.is_invented else []
        marks += [self.tr("to be bought")] if mount.is_planned else []
        if mount.price is not None:
            marks.append(self.tr("price {price:g}").format(price=mount.price))
        self.column.addWidget(Text(", ".join((say(mount.kind.value), *marks)), "small"))
        for finding in candidate.findings:
            self.column.addWidget(Text(_must_words(finding, candidate.outcome)))
        if candidate.outcome is not Outcome.OUT:
            self.column.addWidget(self._total(theme, candidate))
            self.column.addWidget(self._marks(theme, candidate))
        self.column.addWidget(Text(self.tr("Why"), "small"))
        self.column.addWidget(Text(candidate.reason))
        self.column.addWidget(Text(self.tr("What would change that"), "small"))
        self.column.addWidget(Text(candidate.change))

    def _standing(self) -> str:
        candidate = self.candidate
        if candidate.outcome is Outcome.OUT:
            return self.tr("Out")
        if candidate.outcome is Outcome.OPEN:
            return self.tr("Open")
        return self.tr("No. {rank}").format(rank=candidate.rank)

    def _total(self, theme: Theme, candidate: Candidate) -> QWidget:
        part = QWidget()
        grid = QGridLayout(part)
        grid.setContentsMargins(0, 4, 0, 4)
        words = self.tr("{total:.2f} of 1").format(total=candidate.total)
        if candidate.total_at_best > candidate.total + 0.005:
            words += self.tr(", up to {best:.2f}").format(best=candidate.total_at_best)
        grid.addWidget(Text(words, "side"), 0, 0)
        grid.addWidget(ShareBar(theme, candidate.total, candidate.total_at_best), 1, 0)
        return part

    def _marks(self, theme: Theme, candidate: Candidate) -> QWidget:
        part = QWidget()
        grid = QGridLayout(part)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setHorizontalSpacing(10)
        grid.setVerticalSpacing(2)
        grid.setColumnStretch(0, 3)
        grid.setColumnStretch(1, 2)
        for row, mark in enumerate(candidate.marks):
            grid.addWidget(Text(_criterion(mark)), 2 * row, 0)
            grid.addWidget(Text(mark.figure), 2 * row, 1)
            share = mark.mark or 0.0
            at_best = 1.0 if mark.mark is None else share
            grid.addWidget(ShareBar(theme, share, at_best), 2 * row + 1, 0, 1, 2)
        return part


def _criterion(mark: Mark) -> str:
    name = say(mark.criterion.value)
    return f"{name[:1].upper()}{name[1:]}\u00a0×{mark.weight:g}"


def _must_words(finding: Finding, outcome: Outcome) -> str:
    """With what is open; what knocks it out stands below, with its reason."""
    name = say(finding.must.value)
    reason = f": {finding.reason}" if finding.passes is None and outcome is Outcome.OPEN else ""
    return f"{SIGNS[finding.passes]}  {name[:1].upper()}{name[1:]}{reason}"
