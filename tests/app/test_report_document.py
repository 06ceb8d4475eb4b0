"""The report's HTML is understood by Qt's own documents, so that it can be printed."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QByteArray, QUrl
from PySide6.QtGui import QImage, QPainter, QTextDocument, QTextTable
from PySide6.QtSvg import QSvgRenderer

from core.night.report import html, sections
from core.night.reportplot import HEIGHT_PX, WIDTH_PX
from tests.core.night.recorded import whole_night

NIGHT = whole_night()
PLOTS = [plot for section in sections(NIGHT) for plot in section.plots]


@pytest.mark.usefixtures("qapp")
def test_qt_reads_the_words_tables_and_pictures() -> None:
    document = QTextDocument()
    for plot in PLOTS:
        image = QImage(2 * WIDTH_PX, 2 * HEIGHT_PX, QImage.Format.Format_RGB32)
        image.fill(0xFFFFFFFF)
        painter = QPainter(image)
        QSvgRenderer(QByteArray(plot.svg().encode())).render(painter)
        painter.end()
        address = QUrl(f"plot:{plot.name}")
        document.addResource(QTextDocument.ResourceType.ImageResource.value, address, image)
    document.setHtml(
        html(NIGHT, draw_plot=lambda plot: f'<img src="plot:{plot.name}" width="{WIDTH_PX}">')
    )
    text = document.toPlainText()
    for words in ("Meadow <north> & hill", "<script>", "Checklist", "Level it.", "−3.5 °C"):
        assert words in text
    frames = document.rootFrame().childFrames()
    assert sum(isinstance(frame, QTextTable) for frame in frames) >= 10
    assert text.count("￼") >= len(PLOTS)  # where Qt has placed a picture


@pytest.mark.usefixtures("qapp")
def test_qt_draws_every_plot() -> None:
    for plot in PLOTS:
        renderer = QSvgRenderer(QByteArray(plot.svg().encode()))
        assert renderer.isValid()
        image = QImage(WIDTH_PX, HEIGHT_PX, QImage.Format.Format_RGB32)
        image.fill(0xFFFFFFFF)
        painter = QPainter(image)
        renderer.render(painter)
        painter.end()
        inked = sum(
            image.pixelColor(x, y).lightness() < 128
            for x in range(70, WIDTH_PX - 20, 2)
            for y in range(35, HEIGHT_PX - 50, 2)
        )
        assert inked > 10, plot.name
