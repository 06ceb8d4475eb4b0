"""What a person is told about missing system packages, and when they are installed instead."""

import pytest

from firstrun import distribution, needs
from firstrun.distribution import Need
from firstrun.trouble import Trouble

EGL = Need("libEGL.so.1", "libegl1", "mesa-libEGL", "libglvnd")
OFFSCREEN = {"QT_QPA_PLATFORM": "offscreen"}


@pytest.fixture
def lacking(monkeypatch) -> list[Need]:
    """What the machine lacks, to be changed by the test."""
    lack = [EGL]
    monkeypatch.setattr(needs.libraries, "missing", lambda *_: list(lack))
    monkeypatch.setattr(needs.sys, "platform", "linux")
    return lack


@pytest.fixture
def calls(monkeypatch, lacking) -> list[list[str]]:
    """Root on a Debian family machine whose apt-get works; lists its calls."""
    made: list[list[str]] = []

    def apt(command: list[str], **_: object) -> int:
        made.append(command)
        if "install" in command:
            lacking.clear()
        return 0

    monkeypatch.setattr(needs.subprocess, "call", apt)
    monkeypatch.setattr(needs.os, "geteuid", lambda: 0, raising=False)
    monkeypatch.setattr(distribution, "this_family", lambda: "debian")
    return made


def test_nothing_is_said_when_nothing_is_missing(lacking):
    lacking.clear()
    needs.require(OFFSCREEN, with_venv=False)


def test_one_command_for_everything(lacking, monkeypatch):
    assert lacking
    monkeypatch.setattr(needs.importlib.util, "find_spec", lambda name: name != "ensurepip" or None)
    monkeypatch.setattr(distribution, "this_family", lambda: "debian")
    with pytest.raises(Trouble) as said:
        needs.require(OFFSCREEN, with_venv=True)
    version = f"python{needs.sys.version_info.major}.{needs.sys.version_info.minor}-venv"
    assert f"apt-get install {version} libegl1\n" in str(said.value)
    assert "libEGL.so.1" in str(said.value)


def test_an_unknown_distribution_is_told_the_library_names(lacking, monkeypatch):
    assert lacking
    monkeypatch.setattr(distribution, "this_family", lambda: None)
    with pytest.raises(Trouble, match=r"lacks: libEGL\.so\.1\. Install them with its package"):
        needs.require(OFFSCREEN, with_venv=False)


def test_only_linux_is_looked_over(lacking, monkeypatch):
    assert lacking
    monkeypatch.setattr(needs.sys, "platform", "darwin")
    needs.require({}, with_venv=False)


def test_root_on_debian_installs_and_says_so(calls, capsys):
    needs.install(OFFSCREEN, with_venv=False)
    assert [call[2] for call in calls] == ["update", "install"]
    assert calls[1][-1] == "libegl1"
    assert "libegl1" in capsys.readouterr().out


def test_nobody_else_installs(calls, monkeypatch):
    monkeypatch.setattr(needs.os, "geteuid", lambda: 1000, raising=False)
    with pytest.raises(Trouble, match="apt-get install libegl1"):
        needs.install(OFFSCREEN, with_venv=False)
    assert calls == []


def test_a_failing_installation_is_said(calls, monkeypatch):
    monkeypatch.setattr(needs.subprocess, "call", lambda *_, **__: 100)
    with pytest.raises(Trouble, match="apt-get update failed"):
        needs.install(OFFSCREEN, with_venv=False)
    assert calls == []


def test_an_installation_that_did_not_help_is_said(calls, lacking, monkeypatch):
    monkeypatch.setattr(needs.subprocess, "call", lambda command, **_: calls.append(command) or 0)
    with pytest.raises(Trouble, match=r"libEGL\.so\.1"):
        needs.install(OFFSCREEN, with_venv=False)
    assert lacking == [EGL]
    assert len(calls) == 2
