"""Colours that can be told apart, and a night look without green or blue."""

import pytest

from app.ui.style import LOOKS, NIGHT, TOUCH_PX, Look, sheet


def _channels(colour: str) -> tuple[float, ...]:
    return tuple(int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5))


def _luminance(colour: str) -> float:
    """Relative luminance, WCAG 2.2, definition of that name."""
    linear = [
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in _channels(colour)
    ]
    return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]


def _contrast(one: str, other: str) -> float:
    """Contrast ratio, WCAG 2.2, definition of that name."""
    bright, dim = sorted((_luminance(one), _luminance(other)), reverse=True)
    return (bright + 0.05) / (dim + 0.05)


def _colours(look: Look) -> dict[str, str]:
    named = {
        name: getattr(look, name)
        for name in look.__dataclass_fields__
        if name not in ("name", "red_only")
    }
    legs = named.pop("legs")
    return named | {f"leg {at}": colour for at, colour in enumerate(legs)}


@pytest.mark.parametrize("look", LOOKS.values(), ids=LOOKS)
def test_text_stands_out_from_what_it_lies_on(look: Look) -> None:
    # WCAG 2.2, 1.4.3: 4.5 for text. Red light alone cannot exceed 5.25, so at night the quiet
    # texts reach what 1.4.3 asks of large text.
    least_quiet = 3.0 if look is NIGHT else 4.5
    for under in (look.ground, look.panel, look.well):
        assert _contrast(look.text, under) >= 4.5
        assert _contrast(look.alarm, under) >= 4.5
        assert _contrast(look.accent, under) >= 4.5
        assert _contrast(look.quiet, under) >= least_quiet
    assert _contrast(look.on_accent, look.accent) >= 4.5


@pytest.mark.parametrize("look", LOOKS.values(), ids=LOOKS)
def test_outlines_and_marks_stand_out(look: Look) -> None:
    # WCAG 2.2, 1.4.11: 3.0 for parts of controls and of pictures.
    for under in (look.ground, look.panel, look.well):
        assert _contrast(look.edge, under) >= 3.0
    for tint in look.legs:
        assert _contrast(tint, look.well) >= 3.0


def test_night_is_red_alone() -> None:
    for name, colour in _colours(NIGHT).items():
        assert colour[3:] == "0000", name


@pytest.mark.parametrize("look", LOOKS.values(), ids=LOOKS)
def test_sheet_is_complete_and_targets_are_large(look: Look) -> None:
    text = sheet(look, 1.0)
    assert "$" not in text
    assert f"min-height: {TOUCH_PX - 2}px" in text
    assert sheet(look, 2.0) != text
