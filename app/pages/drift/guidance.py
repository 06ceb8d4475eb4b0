"""What the guide says: one stage, one sentence, one thing to do."""

from __future__ import annotations

from dataclasses import dataclass

from core.language import marked


@dataclass(frozen=True)
class Action:
    """Something to press. `name` tells the page what is meant, `words`, once said, the person;
    `letter` is its key, "" for none.
    """

    name: str
    words: str
    letter: str


@dataclass(frozen=True)
class Guidance:
    """`detail`: figures below the sentence; `warnings`: what to mind, `is_leaving`: that the star
    goes out of sight; `primary` first of all.
    """

    stage: str
    sentence: str
    detail: str = ""
    warnings: tuple[str, ...] = ()
    primary: Action | None = None
    others: tuple[Action, ...] = ()
    is_leaving: bool = False


WATCH = Action("watch", marked("Watch this star"), "W")
ENOUGH = Action("enough", marked("Next star"), "E")
TURN = Action("turn", marked("Turn the bolts"), "T")
TURNED = Action("turned", marked("Both bolts are turned"), "B")
TURNED_OTHERWISE = Action("turned otherwise", marked("Turned, but otherwise"), "J")
GOOD = Action("good", marked("Good enough"), "G")
AGAIN = Action("again", marked("Look again"), "A")
KICKED = Action("kicked", marked("The tripod was moved"), "")  # loses all legs: no stray letter
WHICH_NORTH = Action("which north", marked("Which way is north?"), "U")
WENT_SOUTH = Action("went south", marked("It went south"), "Q")
WENT_NORTH = Action("went north", marked("It went north"), "P")
CANNOT_TELL = Action("cannot tell", marked("I cannot tell"), "I")
EXCHANGED = Action("exchanged", marked("My view is mirrored"), "M")
