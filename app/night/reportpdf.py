"""Page breaks of a printed document: a title stays with its table, and a small table stays whole.

Qt's documents know no rule for that; they are laid out, looked at, and broken before what was torn.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QMarginsF, QUrl
from PySide6.QtGui import (
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QTextBlock,
    QTextCursor,
    QTextDocument,
    QTextFormat,
    QTextTable,
)
from PySide6.QtSvg import QSvgRenderer

from core.language import say
from core.night.record import NightRecord
from core.night.report import html, sections
from core.night.reportplot import HEIGHT_PX, WIDTH_PX, Plot
from core.night.words import SayTime

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


# A night's report as a PDF, made from the same HTML by Qt's own documents.

SHARPNESS = 3  # pixels of a plot for each of the page's
RESOLUTION_DPI = 96
MARGIN_MM = 15.0
WHITE = 0xFFFFFFFF  # of the paper: a report is printed, it is not read in the dark


def write_pdf(night: NightRecord, path: Path, say_time: SayTime) -> None:
    """Takes some seconds for a long night; call it in a worker thread. OSError when it fails."""
    document = QTextDocument()
    for section in sections(night, say_time):
        for plot in section.plots:
            kind = QTextDocument.ResourceType.ImageResource.value
            document.addResource(kind, QUrl(_address(plot)), _drawn(plot))
    document.setHtml(
        html(
            night, say_time, lambda plot: f'<p><img src="{_address(plot)}" width="{WIDTH_PX}"></p>'
        )
    )
    paper = QPdfWriter(str(path))
    paper.setTitle(say("Night of {when}", when=say_time(night.started_utc_s)))
    paper.setResolution(RESOLUTION_DPI)
    margins = QMarginsF(MARGIN_MM, MARGIN_MM, MARGIN_MM, MARGIN_MM)
    a4 = QPageSize(QPageSize.PageSizeId.A4)
    paper.setPageLayout(
        QPageLayout(a4, QPageLayout.Orientation.Portrait, margins, QPageLayout.Unit.Millimeter)
    )
    document.setPageSize(paper.pageLayout().paintRectPixels(RESOLUTION_DPI).size().toSizeF())
    keep_together(document)
    document.print_(paper)
    if not path.is_file() or not path.stat().st_size:
        raise OSError(say("nothing was written to {path}", path=path))


def _address(plot: Plot) -> str:
    return f"plot:{plot.name}"


def _drawn(plot: Plot) -> QImage:
    image = QImage(SHARPNESS * WIDTH_PX, SHARPNESS * HEIGHT_PX, QImage.Format.Format_RGB32)
    image.fill(WHITE)
    painter = QPainter(image)
    QSvgRenderer(QByteArray(plot.svg().encode())).render(painter)
    painter.end()
    return image
