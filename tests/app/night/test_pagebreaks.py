"""Titles stay with their tables on paper, and small tables stay whole."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QTextCursor, QTextDocument

from app.night.reportpdf import keep_together

PAGE_PX = 400.0


def document(before: int) -> QTextDocument:
    lines = "".join(f"<p>line {number}</p>" for number in range(before))
    rows = "".join(f"<tr><td>row {number}</td></tr>" for number in range(4))
    made = QTextDocument()
    made.setHtml(f"{lines}<h2>Found</h2><p><b>of it</b></p><table>{rows}</table><p>after</p>")
    made.setPageSize(QSizeF(300.0, PAGE_PX))
    return made


def pages(made: QTextDocument) -> set[int]:
    """On which the title and its table are."""
    layout = made.documentLayout()
    found = set()
    block = made.begin()
    while block.isValid():
        if block.text() in ("Found", "of it"):
            rect = layout.blockBoundingRect(block)
            found |= {int(rect.top() // PAGE_PX), int((rect.bottom() - 1.0) // PAGE_PX)}
        table = QTextCursor(block).currentTable()
        if table is not None:
            rect = layout.frameBoundingRect(table)
            found |= {int(rect.top() // PAGE_PX), int((rect.bottom() - 1.0) // PAGE_PX)}
        block = block.next()
    return found


@pytest.mark.usefixtures("qapp")
def test_wherever_it_comes_it_is_on_one_page() -> None:
    torn = 0
    for before in range(30):
        made = document(before)
        torn += len(pages(made)) > 1
        keep_together(made)
        assert len(pages(made)) == 1, before
    assert torn > 3  # without it, it is torn


@pytest.mark.usefixtures("qapp")
def test_what_is_whole_stays_where_it_is() -> None:
    made = document(1)
    before = made.pageCount()
    keep_together(made)
    assert pages(made) == {0}
    assert made.pageCount() == before
