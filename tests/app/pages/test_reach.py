"""The measures of what a page owes its reader see what is amiss."""

from PySide6.QtWidgets import QLabel, QLineEdit, QPushButton, QVBoxLayout, QWidget

from tests.app.pages import reach


def test_the_measures_see_what_is_amiss(qtbot) -> None:
    page = QWidget()
    qtbot.addWidget(page)
    column = QVBoxLayout(page)
    line, key, label = QLineEdit(), QPushButton("Words that need room"), QLabel("word " * 40)
    label.setWordWrap(True)
    for part in (line, key, label):
        column.addWidget(part)
    line.setFixedHeight(20)
    key.setFixedWidth(30)
    label.setFixedHeight(10)
    page.resize(200, 200)
    page.show()
    assert line in reach.nameless(page)
    assert reach.small(page) == [line, key]
    assert reach.clipped(page) == [label.text(), key.text()]
