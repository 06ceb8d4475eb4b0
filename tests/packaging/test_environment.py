"""When the environment is whole, where it lies, and what an interruption leaves behind."""

import os
import threading
from pathlib import Path

import pytest

from firstrun import environment, wheels
from firstrun.trouble import Trouble


@pytest.fixture
def requirements(tmp_path, monkeypatch) -> Path:
    path = tmp_path / "requirements.txt"
    path.write_text("# comment\nsome-Library==1.2  # wanted\nother==3.0.post1\n", "utf-8")
    monkeypatch.setattr(environment, "RUN", path)
    return path


@pytest.fixture
def made(monkeypatch) -> list[str]:
    """Stands in for venv and pip; lists what would have been done."""
    done: list[str] = []

    def begin(folder: Path) -> None:
        done.append("begin")
        environment.stamp_path(folder, environment.RUN).unlink(missing_ok=True)
        environment.python_of(folder).parent.mkdir(parents=True, exist_ok=True)
        environment.python_of(folder).touch()

    def install(python: Path, requirements: Path, folder: Path) -> None:
        done.append(f"install from {folder.name.partition('-')[0]}")
        place = environment.site_packages(python.parents[1])
        for name, version in environment.pins(requirements):
            record = place / f"{name.replace('-', '_')}-{version}.dist-info"
            record.mkdir(parents=True, exist_ok=True)

    monkeypatch.setattr(environment, "begin_afresh", begin)
    monkeypatch.setattr(wheels, "fetch", lambda *_: done.append("fetch"))
    monkeypatch.setattr(wheels, "install", install)
    return done


@pytest.fixture
def folder(tmp_path) -> Path:
    return tmp_path / ".venv"


def test_pins_without_comments(requirements):
    assert environment.pins(requirements) == [("some-Library", "1.2"), ("other", "3.0.post1")]


def test_first_start_makes_it_and_second_does_nothing(folder, requirements, made):
    python = environment.ensure(folder, [requirements])
    assert python == environment.python_of(folder)
    assert made == ["begin", "fetch", "install from fetched"]
    assert environment.is_complete(folder, requirements)
    assert not list(folder.glob("fetched-*"))
    environment.ensure(folder, [requirements])
    assert made[3:] == []


def test_wheels_from_a_folder_need_no_network(folder, requirements, made, tmp_path):
    environment.ensure(folder, [requirements], tmp_path / "stick")
    assert made == ["begin", "install from stick"]


def test_interrupted_while_installing_begins_afresh(folder, requirements, made, monkeypatch):
    def interrupted(*_: object) -> None:
        raise KeyboardInterrupt

    with monkeypatch.context() as patch:
        patch.setattr(wheels, "install", interrupted)
        with pytest.raises(KeyboardInterrupt):
            environment.ensure(folder, [requirements])
    assert not environment.is_complete(folder, requirements)
    environment.ensure(folder, [requirements])
    assert made == ["begin", "fetch", "begin", "fetch", "install from fetched"]


def test_new_pins_are_exchanged_in_place(folder, requirements, made):
    environment.ensure(folder, [requirements])
    (folder / "fetched-killed").mkdir()
    requirements.write_text("other==4.0\n", "utf-8")
    assert not environment.is_complete(folder, requirements)
    environment.ensure(folder, [requirements])
    assert made[3:] == ["fetch", "install from fetched"]
    assert not (folder / "fetched-killed").exists()


def test_no_network_leaves_the_older_environment_usable(folder, requirements, made, monkeypatch):
    def no_network(*_: object) -> None:
        raise Trouble("no network")

    old = requirements.read_text("utf-8")
    environment.ensure(folder, [requirements])
    requirements.write_text("other==4.0\n", "utf-8")
    monkeypatch.setattr(wheels, "fetch", no_network)
    with pytest.raises(Trouble):
        environment.ensure(folder, [requirements])
    requirements.write_text(old, "utf-8")
    assert environment.is_complete(folder, requirements)
    assert made[3:] == []


def test_another_python_begins_afresh(folder, requirements, made, monkeypatch):
    environment.ensure(folder, [requirements])
    monkeypatch.setattr(environment, "python_mark", lambda: "cpython-399 elsewhere")
    environment.ensure(folder, [requirements])
    assert made[3:] == ["begin", "fetch", "install from fetched"]


@pytest.mark.parametrize("victim", ["python", "record", "stamp"])
def test_what_is_missing_is_noticed(folder, requirements, made, victim):
    environment.ensure(folder, [requirements])
    if victim == "python":
        environment.python_of(folder).unlink()
    elif victim == "record":
        (environment.site_packages(folder) / "some_Library-1.2.dist-info").rmdir()
    else:
        environment.stamp_path(folder, requirements).unlink()
    assert not environment.is_complete(folder, requirements)
    environment.ensure(folder, [requirements])
    assert environment.is_complete(folder, requirements)
    assert len(made) > 3


def test_a_folder_filled_by_something_else_is_left_alone(folder, requirements, made):
    folder.mkdir()
    (folder / "precious").touch()
    with pytest.raises(Trouble, match="filled by something else"):
        environment.ensure(folder, [requirements])
    assert (folder / "precious").exists()
    assert made == []


def test_a_path_that_python_cannot_bear_is_refused(tmp_path, requirements, made):
    with pytest.raises(Trouble, match="Move the program"):
        environment.ensure(tmp_path / f"a{os.pathsep}b", [requirements])
    assert made == []


def test_a_second_start_waits_for_the_first(folder, requirements, made, monkeypatch, capsys):
    both_in = threading.Event()
    fetch_once = wheels.fetch

    def slow_fetch(*arguments: object) -> None:
        both_in.wait(10)
        fetch_once(*arguments)

    def wait_shortly(_: float) -> None:
        both_in.set()

    monkeypatch.setattr(wheels, "fetch", slow_fetch)
    monkeypatch.setattr(environment.lock, "pause", wait_shortly)
    starts = [
        threading.Thread(target=environment.ensure, args=(folder, [requirements])) for _ in range(2)
    ]
    for start in starts:
        start.start()
    for start in starts:
        start.join(10)
    assert made == ["begin", "fetch", "install from fetched"]
    assert "Another start" in capsys.readouterr().out
