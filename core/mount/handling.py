"""Cautions where loads are handled. Common practice, no source; manuals and local rules go first.

Given as short sentences in the order in which things are done.
"""

from __future__ import annotations

from core.language import marked

FIRST = marked(
    "Follow the maker's manual and your local safety rules first; this is only a reminder."
)

PUTTING_ON = (
    marked(
        "Stand the tripod firm and level, legs locked; on ice, sand or in the dark take more care."
    ),
    marked("Lock both axes, the bar pointing down."),
    marked("Counterweight on first, near the end of the bar, its screw tight."),
    marked(
        "Put the toe stop in at the end of the bar before you let go: it keeps a loose weight "
        "off your feet."
    ),
    marked("Then the telescope; keep a hand on it until the saddle's screws are tight and tested."),
    marked("Then cameras and the rest; tie cables so that nothing can pull."),
)

TAKING_OFF = (
    marked("Lock both axes, the bar pointing down."),
    marked("Cameras and other parts off first."),
    marked("Telescope off before the counterweight."),
    marked("Counterweight off last; hold it while you take out the toe stop."),
)

BALANCING = (
    marked("Loosen one axis at a time, with a hand on the tube: it may swing."),
    marked("Keep fingers, hair and cables away from the gap between weight, tripod and tube."),
    marked("Loosen a saddle or weight only with its axis locked and the load held."),
)

LIFTING = (
    marked("Lift with bent knees, close to the body; carry heavy parts one by one."),
    marked("Let two people lift what one cannot hold easily."),
    marked("Wear closed shoes."),
)
