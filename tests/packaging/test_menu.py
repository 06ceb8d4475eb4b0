"""The desktop entry with the place of the checkout filled in."""

from pathlib import Path

import pytest

import menu


@pytest.mark.parametrize(
    ("argument", "expected"),
    [
        ("/home/a/poleward/start.py", '"/home/a/poleward/start.py"'),
        ("/home/two words/start.py", '"/home/two words/start.py"'),
        ("/home/100%/start.py", '"/home/100%%/start.py"'),
        ("/home/a$b/start.py", r'"/home/a\\$b/start.py"'),
        ('/home/a"b/start.py', r'"/home/a\\"b/start.py"'),
        ("/home/a\\b/start.py", r'"/home/a\\\\b/start.py"'),
    ],
)
def test_quoting(argument, expected):
    assert menu.quoted(argument) == expected


def test_only_the_command_changes():
    template = (menu.HERE / "poleward.desktop").read_text("utf-8").splitlines()
    made = menu.entry("\n".join(template), Path("/opt/poleward/start.py")).splitlines()
    changed = [line for line in made if line not in template]
    assert changed == ['Exec=python3 "/opt/poleward/start.py"']
    assert len(made) == len(template)


def test_it_is_written_where_desktops_look(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path))
    menu.main()
    written = (tmp_path / "applications" / "poleward.desktop").read_text("utf-8")
    assert str(menu.HERE / "start.py") in written
    assert "in the menu" in capsys.readouterr().out
