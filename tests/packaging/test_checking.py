"""The exit code of the checks is honest whatever part fails, and pytest speaks last."""

import sys

import pytest

from firstrun import checking, environment


@pytest.fixture
def run(monkeypatch):
    """Run the checks with the given exit codes per tool; returns (exit code, tools run)."""

    def with_codes(arguments=(), **codes: int) -> tuple[int, list[list[str]]]:
        ran: list[list[str]] = []

        def call(command: list[str], **_: object) -> int:
            ran.append(command[2:])
            return codes.get(command[2], 0)

        monkeypatch.setattr(checking.needs, "install", lambda *_, **__: None)
        monkeypatch.setattr(environment, "is_complete", lambda *_: True)
        monkeypatch.setattr(checking.subprocess, "call", call)
        return checking.main(list(arguments)), ran

    return with_codes


@pytest.mark.parametrize(
    ("codes", "expected"),
    [
        ({}, 0),
        ({"ruff": 1}, 1),
        ({"mypy": 1}, 1),
        ({"mypy": 2, "ruff": 1}, 1),
        ({"pytest": 1}, 1),
        ({"pytest": 5}, 5),
        ({"pytest": 5, "ruff": 1}, 5),
    ],
)
def test_exit_code(run, codes, expected):
    code, ran = run(**codes)
    assert code == expected
    assert [command[0] for command in ran] == ["ruff", "mypy", "pytest"]


def test_arguments_reach_pytest_alone(run):
    _, ran = run(["-k", "drift"])
    assert ran[-1] == ["pytest", "-k", "drift"]
    assert all("-k" not in command for command in ran[:-1])


def test_all_tests_are_shared_out_to_two_processes_and_named_ones_are_not(run):
    _, ran = run()
    assert ran[-1] == ["pytest", "-n", "2", "--dist", "loadfile"]
    _, ran = run(["tests/core"])
    assert ran[-1] == ["pytest", "tests/core"]


def test_faults_of_style_are_said_before_the_tests_speak(run, capsys):
    run(ruff=1)
    lines = capsys.readouterr().out.splitlines()
    assert lines[-1] == "== pytest"
    assert "ruff found faults" in lines[-2]


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="elsewhere there is a screen")
def test_no_screen_means_drawing_in_memory(monkeypatch):
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    assert checking.surroundings()["QT_QPA_PLATFORM"] == "offscreen"
    monkeypatch.setenv("DISPLAY", ":0")
    assert "QT_QPA_PLATFORM" not in checking.surroundings()
