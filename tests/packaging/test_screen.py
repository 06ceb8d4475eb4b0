"""Which platform plugin is expected to run, and the sentences when no screen is there."""

import pytest

from firstrun import screen
from firstrun.trouble import Trouble


@pytest.mark.parametrize(
    ("environment", "expected"),
    [
        ({"QT_QPA_PLATFORM": "offscreen"}, ["offscreen"]),
        ({"QT_QPA_PLATFORM": "offscreen:size=800x600", "DISPLAY": ":0"}, ["offscreen"]),
        ({"QT_QPA_PLATFORM": "wayland;xcb"}, ["wayland", "xcb"]),
        ({"DISPLAY": ":0"}, ["xcb"]),
        ({"WAYLAND_DISPLAY": "wayland-0"}, ["wayland"]),
        ({"WAYLAND_DISPLAY": "wayland-0", "DISPLAY": ":0"}, ["wayland", "xcb"]),
        ({"XDG_SESSION_TYPE": "wayland", "DISPLAY": ":0"}, ["wayland", "xcb"]),
        ({"XDG_SESSION_TYPE": "x11", "DISPLAY": ":0"}, ["xcb"]),
    ],
)
def test_platforms(environment, expected):
    assert screen.platforms(environment) == expected


@pytest.mark.parametrize("environment", [{}, {"XDG_SESSION_TYPE": "tty"}, {"DISPLAY": ""}])
def test_no_screen_is_said(environment):
    with pytest.raises(Trouble, match="no screen"):
        screen.platforms(environment)


@pytest.fixture(autouse=True)
def on_linux(monkeypatch):
    monkeypatch.setattr(screen.sys, "platform", "linux")


def test_a_screen_that_does_not_answer_is_named(monkeypatch):
    monkeypatch.setattr(screen, "ANSWERS", {"xcb": lambda: False})
    with pytest.raises(Trouble, match="DISPLAY=:7"):
        screen.require({"DISPLAY": ":7"})


def test_one_answering_screen_is_enough(monkeypatch):
    def no_library() -> bool:
        raise OSError("cannot open shared object file")

    monkeypatch.setattr(screen, "ANSWERS", {"wayland": no_library, "xcb": lambda: True})
    screen.require({"WAYLAND_DISPLAY": "wayland-0", "DISPLAY": ":0"})


def test_drawing_in_memory_needs_no_answer():
    screen.require({"QT_QPA_PLATFORM": "offscreen"})
