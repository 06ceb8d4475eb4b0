"""Tones as sound files; apart from the rest, because numpy must not be loaded at the start."""

from __future__ import annotations

import io
import wave

import numpy as np
from numpy.typing import NDArray

from app.signals.cue import TONES, Cue

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
