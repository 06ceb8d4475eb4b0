"""Tones: what they are made of, by what they are played, and that silence is the default."""

import io
import wave

import numpy as np
import pytest

from app.workers.sound import Beep, FilePlayer, Sounds, WindowsPlayer, find_means
from app.workers.tones import RATE_HZ, TONES, Cue, sound


@pytest.mark.parametrize("cue", Cue)
def test_a_tone_has_the_length_and_pitch_it_should(cue: Cue) -> None:
    with wave.open(io.BytesIO(sound(cue))) as file:
        assert (file.getnchannels(), file.getsampwidth(), file.getframerate()) == (1, 2, RATE_HZ)
        samples = np.frombuffer(file.readframes(file.getnframes()), "<i2")
    frequency_hz, seconds = TONES[cue][-1]
    last = samples[-round(seconds * RATE_HZ) :].astype(float)
    spectrum = np.abs(np.fft.rfft(last))
    loudest_hz = np.argmax(spectrum) * RATE_HZ / last.size
    assert loudest_hz == pytest.approx(frequency_hz, abs=RATE_HZ / last.size)
    assert abs(int(samples[0])) < 100  # begins and ends without a click
    assert abs(int(samples[-1])) < 100


@pytest.mark.parametrize(
    ("platform", "there", "kind"),
    [
        ("win32", (), WindowsPlayer),
        ("darwin", ("afplay",), FilePlayer),
        ("linux", ("aplay", "paplay"), FilePlayer),
        ("linux", (), Beep),
    ],
)
def test_the_best_means_there_is_is_taken(platform, there, kind) -> None:
    means = find_means(platform, lambda name: name if name in there else None)
    assert isinstance(means, kind)
    means.close()


class Heard:
    note = "A plain beep."

    def __init__(self) -> None:
        self.cues: list[Cue] = []
        self.fails = False

    def play(self, cue: Cue) -> None:
        if self.fails:
            raise OSError("the player is gone")
        self.cues.append(cue)

    def close(self) -> None:
        return


def test_silent_until_wanted_and_remembered(settings, qapp) -> None:
    heard = Heard()
    sounds = Sounds(settings, lambda: heard, qapp)
    sounds.give(Cue.STOP)
    assert heard.cues == []
    assert sounds.note() == ""
    sounds.turn(True)
    sounds.give(Cue.STOP)
    assert heard.cues == [Cue.STAR_ENOUGH, Cue.STOP]  # turning it on lets one hear it
    assert sounds.note() == "A plain beep."
    assert Sounds(settings, lambda: heard, qapp).is_on


def test_a_player_that_fails_is_left_alone(settings, qapp, qtbot) -> None:
    heard = Heard()
    sounds = Sounds(settings, lambda: heard, qapp)
    sounds.turn(True)
    heard.fails = True
    with qtbot.waitSignal(sounds.changed):
        sounds.give(Cue.STOP)
    assert not sounds.is_on
    assert "nothing is heard" in sounds.note()


class Voice:
    def __init__(self) -> None:
        self.said: list[str] = []

    def say(self, words: str) -> None:
        self.said.append(words)


def test_a_voice_speaks_instead_of_the_tones_but_for_the_ticks(settings, qapp) -> None:
    heard, voice = Heard(), Voice()
    sounds = Sounds(settings, lambda: heard, qapp, lambda _parent: voice)
    sounds.turn(True)
    for cue in (Cue.STAR_LEAVING, Cue.KEEP_TURNING, Cue.STOP):
        sounds.give(cue)
    assert voice.said == ["This star has told enough.", "The star is leaving.", "Stop."]
    assert heard.cues == [Cue.KEEP_TURNING]


def test_without_a_voice_there_are_tones(settings, qapp) -> None:
    heard = Heard()
    sounds = Sounds(settings, lambda: heard, qapp, lambda _parent: None)
    sounds.turn(True)
    assert heard.cues == [Cue.STAR_ENOUGH]


def _pieces(cue: Cue) -> list[np.ndarray]:
    with wave.open(io.BytesIO(sound(cue))) as file:
        samples = np.frombuffer(file.readframes(file.getnframes()), "<i2").astype(float)
    ends = np.cumsum([round(seconds * RATE_HZ) for _, seconds in TONES[cue]])
    return np.split(samples, ends[:-1])


@pytest.mark.parametrize("cue", Cue)
def test_every_part_of_a_tone_is_as_long_and_as_high_as_it_should_and_not_clipped(cue) -> None:
    pieces = _pieces(cue)
    for piece, (frequency_hz, seconds) in zip(pieces, TONES[cue], strict=True):
        assert piece.size == pytest.approx(seconds * RATE_HZ, abs=1)
        assert np.abs(piece).max() < 0.5 * 32767
        if frequency_hz:
            spectrum = np.abs(np.fft.rfft(piece))
            loudest_hz = np.argmax(spectrum) * RATE_HZ / piece.size
            assert loudest_hz == pytest.approx(frequency_hz, abs=RATE_HZ / piece.size)
            assert np.abs(piece).max() > 0.3 * 32767  # it is heard
        else:
            assert not piece.any()


def test_no_two_cues_sound_alike() -> None:
    assert len({sound(cue) for cue in Cue}) == len(Cue)
    longest = max(sum(seconds for _, seconds in TONES[cue]) for cue in Cue)
    assert longest < 1.0  # over before the next thing happens


def test_a_player_gets_a_file_and_is_not_waited_for() -> None:
    player = FilePlayer(("true",))
    player.play(Cue.STOP)
    player.close()
