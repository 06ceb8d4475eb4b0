"""Figures as people type them."""

import pytest

from app.ui.form import Figure, UnusableFigure, figure_of, heading
from core.mount.equipment import Quantity

MASS = Quantity("The mass", " kg", 0.001, 500.0)
PLACE = Quantity("The position along the tube", " mm", -5000.0, 5000.0)
ANGLE = Quantity("The pointing accuracy", "′", 0.001, 600.0)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("4.5", 4.5),
        ("4,5", 4.5),
        (" 4,5 kg ", 4.5),
        ("4.5kg", 4.5),
        (".5", 0.5),
        ("", None),
        ("   ", None),
        ("+7", 7.0),
    ],
)
def test_it_is_understood(text: str, value: float | None) -> None:
    assert figure_of(text, MASS) == value


@pytest.mark.parametrize(("text", "value"), [("-12", -12.0), ("−12,5 mm", -12.5)])
def test_minus_signs_of_either_kind(text: str, value: float) -> None:
    assert figure_of(text, PLACE) == value


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("0", "above zero"),
        ("-3", "above zero"),
        ("501", "between 0.001 and 500 kg"),
        ("heavy", "not a number of kg"),
        ("4.5.1", "two marks"),
        ("1,234.5", "two marks"),
        ("4 5", "not a number"),
        ("nan", "not a number"),
        ("inf", "not a number"),
        ("1e3", "not a number"),
        ("٣", "not a number"),
        ("9" * 400, "not a number"),
    ],
)
def test_what_cannot_be_is_refused_in_a_sentence(text: str, said: str) -> None:
    with pytest.raises(UnusableFigure, match=said):
        figure_of(text, MASS)


def test_pixels_come_whole() -> None:
    pixels = Quantity("The width", " pixels", 1, 200_000)
    assert figure_of("4000", pixels, is_whole=True) == 4000
    with pytest.raises(UnusableFigure, match="whole"):
        figure_of("4000.5", pixels, is_whole=True)


def test_units_are_spelt_out_above_the_line() -> None:
    assert heading(MASS) == "Mass, in kg"
    assert heading(ANGLE) == "Pointing accuracy, in arcminutes"
    assert heading(Quantity("The price", "", 0.0, 1.0)) == "Price"


def test_a_complaint_stays_until_the_line_is_changed(qtbot, theme) -> None:
    figure = Figure(MASS, "Weigh it.")
    figure.theme = theme
    qtbot.addWidget(figure)
    figure.show_text("nothing")
    assert figure.read() is None
    assert figure.is_wrong()
    figure.show_figure(4.25)
    assert (figure.read(), figure.below(), figure.is_wrong()) == (4.25, "Weigh it.", False)
    figure.show_figure(None)
    assert (figure.text(), figure.read()) == ("", None)
