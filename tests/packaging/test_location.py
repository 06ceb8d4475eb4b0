"""Where the environment lies when the checkout may and may not be written."""

from pathlib import Path

import pytest

from firstrun import environment


@pytest.fixture
def requirements(tmp_path, monkeypatch) -> Path:
    path = tmp_path / "requirements.txt"
    path.write_text("other==3.0\n", "utf-8")
    monkeypatch.setattr(environment, "RUN", path)
    return path


def test_read_only_checkout_uses_the_data_folder(tmp_path, requirements, monkeypatch):
    monkeypatch.setattr(environment.os, "access", lambda *_: False)
    monkeypatch.setattr(environment, "data_folder", lambda: tmp_path / "data")
    found = environment.locate(tmp_path / "checkout")
    assert found.parent == tmp_path / "data"
    before = found.name
    requirements.write_text("other==4.0\n", "utf-8")
    assert environment.locate(tmp_path / "checkout").name != before


def test_read_only_checkout_with_a_whole_environment_uses_that(tmp_path, monkeypatch):
    monkeypatch.setattr(environment, "is_complete", lambda *_: True)
    monkeypatch.setattr(environment.os, "access", lambda *_: False)
    assert environment.locate(tmp_path) == tmp_path / ".venv"


def test_writable_checkout_holds_its_own(tmp_path):
    assert environment.locate(tmp_path) == tmp_path / ".venv"


@pytest.mark.parametrize(
    ("platform", "variable", "ending"),
    [
        ("linux", "XDG_DATA_HOME", "poleward"),
        ("win32", "LOCALAPPDATA", "Poleward"),
    ],
)
def test_data_folder(tmp_path, monkeypatch, platform, variable, ending):
    monkeypatch.setattr(environment.sys, "platform", platform)
    monkeypatch.setenv(variable, str(tmp_path))
    assert environment.data_folder() == tmp_path / ending
