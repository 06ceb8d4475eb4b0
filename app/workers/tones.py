"""The tones by which the night is told without looking, and their waveform."""

from __future__ import annotations

import io
import wave
from enum import Enum

import numpy as np
from numpy.typing import NDArray

from core.language import marked

# What a tone can mean, and which tones those are.


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


# Tones as sound files; apart from the rest, because numpy must not be loaded at the start.

RATE_HZ = 22_050
FADE_S = 0.01  # so that no tone begins or ends with a click
LOUDNESS = 0.4  # of full scale


def sound(cue: Cue) -> bytes:
    """The tone as a WAV file: one channel, 16 bit."""
    parts = [_tone(frequency_hz, seconds) for frequency_hz, seconds in TONES[cue]]
    samples = (32767 * LOUDNESS * np.concatenate(parts)).astype("<i2")
    file = io.BytesIO()
    with wave.open(file, "wb") as out:
        out.setnchannels(1)
        out.setsampwidth(2)
        out.setframerate(RATE_HZ)
        out.writeframes(samples.tobytes())
    return file.getvalue()


def _tone(frequency_hz: float, seconds: float) -> NDArray[np.float64]:
    at_s = np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    fade = np.clip(np.minimum(at_s, at_s[::-1]) / FADE_S, 0.0, 1.0)
    return np.asarray(np.sin(2.0 * np.pi * frequency_hz * at_s) * fade)
