"""What the guide says: one stage, one sentence, one thing to do."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Action:
    """Something to press. `name` tells the page what is meant, `letter` is its key."""

    name: str
    words: str
    letter: str


@dataclass(frozen=True)
class Guidance:
    """`detail`: figures below the sentence; `warnings`: what to mind; `primary` first of all."""

    stage: str
    sentence: str
    detail: str = ""
    warnings: tuple[str, ...] = ()
    primary: Action | None = None
    others: tuple[Action, ...] = ()


WATCH = Action("watch", "Watch this star", "W")
ENOUGH = Action("enough", "Next star", "E")
TURN = Action("turn", "Turn the bolts", "T")
TURNED = Action("turned", "Both bolts are turned", "B")
TURNED_OTHERWISE = Action("turned otherwise", "Turned, but otherwise", "J")
GOOD = Action("good", "Good enough", "G")
AGAIN = Action("again", "Look again", "A")
KICKED = Action("kicked", "The tripod was moved", "K")
WHICH_NORTH = Action("which north", "Which way is north?", "U")
WENT_SOUTH = Action("went south", "It went south", "Q")
WENT_NORTH = Action("went north", "It went north", "P")
CANNOT_TELL = Action("cannot tell", "I cannot tell", "I")
EXCHANGED = Action("exchanged", "My view is mirrored", "M")
