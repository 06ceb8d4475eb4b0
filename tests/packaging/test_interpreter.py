"""The start script under a Python that is too old."""

import ast
import os
import sys
from pathlib import Path

import pytest

from firstrun import interpreter

PACKAGING = Path(interpreter.__file__).parents[1]
READ_BY_OLD_PYTHON = ("start.py", "check.py", "firstrun/__init__.py", "firstrun/interpreter.py")
# f-strings, annotations, walrus, match, keyword-only arguments: younger than the oldest reader.
TOO_NEW = (ast.JoinedStr, ast.AnnAssign, ast.NamedExpr, ast.Match, ast.Starred)

posix_only = pytest.mark.skipif(os.name != "posix", reason="scripts stand in for interpreters")


@pytest.mark.parametrize("name", READ_BY_OLD_PYTHON)
def test_what_an_old_python_reads_uses_no_new_syntax(name):
    nodes = list(ast.walk(ast.parse((PACKAGING / name).read_text("utf-8"))))
    assert not [node for node in nodes if isinstance(node, TOO_NEW)]
    arguments = [node for node in nodes if isinstance(node, ast.arguments)]
    assert not [each for each in arguments if each.kwonlyargs or each.posonlyargs]
    assert not [node for node in nodes if getattr(node, "annotation", None)]
    assert not [node for node in nodes if getattr(node, "returns", None)]


@pytest.mark.parametrize("name", READ_BY_OLD_PYTHON[:2])
def test_nothing_newer_is_imported_before_the_question_of_age(name):
    body = ast.parse((PACKAGING / name).read_text("utf-8")).body
    imported = [ast.unparse(node) for node in body if isinstance(node, ast.Import | ast.ImportFrom)]
    assert imported == ["import sys", "from firstrun import interpreter"]


def script(folder: Path, name: str, text: str) -> Path:
    path = folder / name
    path.write_text(f"#!/bin/sh\n{text}\n", "utf-8")
    path.chmod(0o755)
    return path


def test_a_new_enough_python_goes_on():
    assert interpreter.become_new_enough(["start.py"]) is None
    assert interpreter.become_new_enough(["start.py"], (3, 11, 0)) is None


@posix_only
def test_an_old_python_starts_again_under_a_newer_one(tmp_path, monkeypatch):
    script(tmp_path, "python3.13", "exit 127")  # a wrapper around nothing
    script(
        tmp_path, "python3.12", f'[ "$1" = -c ] && exit 0; echo "$1,$2" > {tmp_path}/called; exit 7'
    )
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(SystemExit) as ended:
        interpreter.become_new_enough(["start.py", "two words"], (3, 8, 1))
    assert ended.value.code == 7
    assert (tmp_path / "called").read_text("utf-8") == "start.py,two words\n"


@posix_only
def test_an_old_python_alone_says_so(tmp_path, monkeypatch, capsys):
    script(tmp_path, "python3", "exit 1")
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(SystemExit) as ended:
        interpreter.become_new_enough(["start.py"], (2, 7, 18))
    assert ended.value.code == 1
    said = capsys.readouterr().err
    assert "3.11 or later" in said
    assert "2.7.18" in said


def test_the_question_is_answered_by_this_python():
    assert interpreter.is_new_enough([sys.executable])
    assert not interpreter.is_new_enough([str(PACKAGING / "no such program")])


def test_windows_is_asked_through_its_launcher(tmp_path):
    (tmp_path / "python3.12.exe").touch(mode=0o755)
    found = interpreter.candidates(str(tmp_path), windows=True)
    assert found == [["py", "-3"], [str(tmp_path / "python3.12.exe")]]
