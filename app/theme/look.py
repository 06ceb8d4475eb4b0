"""The named colours of each look. Nothing else in the program spells a colour."""

from __future__ import annotations

from dataclasses import dataclass

Colour = str  # "#RRGGBB"


@dataclass(frozen=True)
class Look:
    """One set of colours. Palette, style sheet and plots all read from here.

    `ground` lies behind everything, `panel` is raised on it, `well` is sunk for input and plots.
    `line` parts areas, `edge` outlines what can be touched. `accent` marks the one primary action
    and the fitted line, `alarm` what went wrong; neither ever carries meaning without a word.
    `legs` tint the legs of a plot, which are told apart by shape. `red_only`: nothing on the
    screen may shine green or blue, the system's own windows included.
    """

    name: str
    ground: Colour
    panel: Colour
    well: Colour
    line: Colour
    edge: Colour
    text: Colour
    quiet: Colour
    accent: Colour
    on_accent: Colour
    hover: Colour
    chosen: Colour
    alarm: Colour
    legs: tuple[Colour, ...]
    red_only: bool = False


DAY = Look(
    name="day",
    ground="#ECE7DC",
    panel="#F7F4EC",
    well="#FFFDF8",
    line="#D3CBBA",
    edge="#877F6E",
    text="#1C1F23",
    quiet="#54575B",
    accent="#704B0C",
    on_accent="#FFFDF8",
    hover="#E2DAC8",
    chosen="#E0D2B0",
    alarm="#9B1C12",
    legs=("#704B0C", "#22506E", "#4A5A1C", "#6B2F56", "#8A3A12", "#3C3F44"),
)

DARK = Look(
    name="dark",
    ground="#12161A",
    panel="#1B2127",
    well="#0C0F12",
    line="#323A42",
    edge="#6F7880",
    text="#EFE9DC",
    quiet="#A9ACA6",
    accent="#E3B76B",
    on_accent="#17130A",
    hover="#29313A",
    chosen="#463A22",
    alarm="#FF9684",
    legs=("#E3B76B", "#8FC1DE", "#B4C777", "#D9A0C4", "#EE9A6B", "#D3D4D0"),
)

# Red channel only. Pure red on black is the brightest there is (contrast 5.2), so what is loud and
# what is quiet differ in weight and size more than in shade.
NIGHT = Look(
    name="night",
    ground="#080000",
    panel="#170000",
    well="#000000",
    line="#4A0000",
    edge="#BC0000",
    text="#FF0000",
    quiet="#D20000",
    accent="#F40000",
    on_accent="#000000",
    hover="#300000",
    chosen="#380000",
    alarm="#FF0000",
    legs=("#FF0000", "#C40000", "#E60000", "#BC0000", "#D60000", "#CC0000"),
    red_only=True,
)

LOOKS = {look.name: look for look in (DAY, DARK, NIGHT)}
