"""A night's report as a PDF, made from the same HTML by Qt's own documents."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QByteArray, QMarginsF, QUrl
from PySide6.QtGui import QImage, QPageLayout, QPageSize, QPainter, QPdfWriter, QTextDocument
from PySide6.QtSvg import QSvgRenderer

from app.session.pagebreaks import keep_together
from core.language import say
from core.night.record import NightRecord
from core.night.report import html, sections
from core.night.reportplot import HEIGHT_PX, WIDTH_PX, Plot
from core.night.words import SayTime

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
