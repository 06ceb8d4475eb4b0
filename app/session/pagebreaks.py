"""Page breaks of a printed document: a title stays with its table, and a small table stays whole.

Qt's documents know no rule for that; they are laid out, looked at, and broken before what was torn.
"""

from __future__ import annotations

from PySide6.QtGui import QTextBlock, QTextCursor, QTextDocument, QTextFormat, QTextTable

LARGEST_SHARE = 0.5  # of a page; a longer table may be torn
Piece = tuple[QTextBlock, QTextTable | None]


def keep_together(document: QTextDocument) -> None:
    """The document's pages must have their size already."""
    for group in _groups(_pieces(document)):
        if _is_torn(document, group):
            cursor = QTextCursor(group[0][0])
            how = cursor.blockFormat()
            how.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
            cursor.setBlockFormat(how)


def _pieces(document: QTextDocument) -> list[Piece]:
    """Paragraphs and whole tables, in order; a table by its first paragraph."""
    found: list[Piece] = []
    block = document.begin()
    while block.isValid():
        table = QTextCursor(block).currentTable()
        if table is None or not found or found[-1][1] != table:
            found.append((block, table))
        block = block.next()
    return found


def _groups(pieces: list[Piece]) -> list[list[Piece]]:
    """Titles with what follows them, up to a table, a picture or plain text and with it."""
    groups: list[list[Piece]] = [[]]
    for piece in pieces:
        groups[-1].append(piece)
        if not _is_title(piece):
            groups.append([])
    return [group for group in groups if group and group[0][1] is None]


def _is_title(piece: Piece) -> bool:
    block, table = piece
    if table is not None:
        return False
    cursor = QTextCursor(block)
    cursor.movePosition(QTextCursor.MoveOperation.NextCharacter)
    is_bold = cursor.charFormat().font().bold()
    return block.blockFormat().headingLevel() > 0 or is_bold or not block.text()


def _is_torn(document: QTextDocument, group: list[Piece]) -> bool:
    page_px = document.pageSize().height()
    top = _span(document, group[0])[0]
    bottom = _span(document, group[-1])[1]
    is_small = bottom - top < LARGEST_SHARE * page_px
    first_rows = bottom if is_small else top + 0.15 * page_px
    return int(top // page_px) != int((first_rows - 1.0) // page_px)


def _span(document: QTextDocument, piece: Piece) -> tuple[float, float]:
    """From where to where it reaches, in pixels from the top of the first page."""
    block, table = piece
    layout = document.documentLayout()
    rect = layout.blockBoundingRect(block) if table is None else layout.frameBoundingRect(table)
    return rect.top(), rect.bottom()
