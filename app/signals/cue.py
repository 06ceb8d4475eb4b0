"""What a tone can mean, and which tones those are."""

from __future__ import annotations

from enum import Enum

from core.language import marked


class Cue(Enum):
    """The value is what is spoken where speech is there."""

    STAR_ENOUGH = marked("This star has told enough.")
    GOOD_ENOUGH = marked("Good enough.")
    TURN_NOW = marked("Turn the bolts now.")
    STAR_LEAVING = marked("The star is leaving.")
    KEEP_TURNING = ""
    STOP = marked("Stop.")


# Pairs of a frequency in Hz and a length in seconds; 0 Hz is a pause. Rising: good; falling: mind.
TONES: dict[Cue, tuple[tuple[float, float], ...]] = {
    Cue.STAR_ENOUGH: ((523.0, 0.15), (659.0, 0.25)),
    Cue.GOOD_ENOUGH: ((523.0, 0.15), (659.0, 0.15), (784.0, 0.4)),
    Cue.TURN_NOW: ((659.0, 0.15), (0.0, 0.08), (659.0, 0.25)),
    Cue.STAR_LEAVING: ((659.0, 0.2), (440.0, 0.4)),
    Cue.KEEP_TURNING: ((392.0, 0.05),),
    Cue.STOP: ((784.0, 0.6),),
}
