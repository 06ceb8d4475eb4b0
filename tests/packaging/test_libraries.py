"""The table of system libraries, and the report of those that are missing."""

import os
import re
import shutil
import subprocess
import sys
from importlib.util import find_spec
from pathlib import Path

import pytest

from firstrun import libraries
from firstrun.libraries import EVERY_PLATFORM, FONT, WAYLAND, X11, missing

ROOT = Path(libraries.__file__).resolve().parents[2]
OF_THE_C_LIBRARY = re.compile(r"lib(c|m|gcc_s|resolv|pthread|dl|rt)\.so|ld-linux")


@pytest.fixture
def font(tmp_path):
    """An environment whose shared data folder holds a font."""
    (tmp_path / "fonts" / "deep").mkdir(parents=True)
    (tmp_path / "fonts" / "deep" / "Plain.TTF").touch()
    return {"XDG_DATA_DIRS": str(tmp_path)}


def without(*absent: str):
    return lambda soname: soname not in absent


def names(needs) -> list[str]:
    return [need.what for need in needs]


def test_nothing_is_missing(font):
    assert missing(["xcb"], font, without()) == []


def test_offscreen_does_not_ask_for_a_screen_of_either_kind(font):
    absent = without(*names(X11), *names(WAYLAND))
    assert missing(["offscreen"], font, absent) == []


def test_everything_missing_is_named_at_once(font):
    assert missing(["xcb"], font, lambda _: False) == [*EVERY_PLATFORM, *X11]


def test_one_usable_platform_is_enough(font):
    assert missing(["wayland", "xcb"], font, without("libwayland-egl.so.1")) == []


def test_the_platform_that_lacks_least_is_named(font):
    absent = without("libwayland-egl.so.1", "libxcb-cursor.so.0", "libxcb-util.so.1")
    assert names(missing(["xcb", "wayland"], font, absent)) == ["libwayland-egl.so.1"]


def test_a_missing_font_is_named(tmp_path, monkeypatch):
    monkeypatch.setattr(libraries, "font_folders", lambda _: [tmp_path])
    (tmp_path / "readme.txt").touch()
    assert missing(["offscreen"], {}, without()) == [FONT]


def test_loading():
    assert not libraries.loads("libno-such-thing.so.9")
    if sys.platform.startswith("linux"):
        assert libraries.loads("libc.so.6")


def wanted_by(file: Path) -> set[str]:
    listing = subprocess.run(["readelf", "-d", file], capture_output=True, text=True, check=True)
    needed = re.findall(r"\(NEEDED\).*\[(.*)\]", listing.stdout)
    return {
        name
        for name in needed
        if not OF_THE_C_LIBRARY.search(name)
        and not name.startswith(("libQt6", "libpyside6", "libshiboken6", "libicu"))
    }


def modules_in_use() -> set[str]:
    """Toolkit modules that the program imports, and those that they load in turn.

    Speech is an add-on used only where a person has installed it; the pinned wheel lacks it.
    """
    text = "".join(file.read_text("utf-8") for file in (ROOT / "app").rglob("*.py"))
    found = set(re.findall(r"PySide6\.Qt(\w+)", text)) | set(
        re.findall(r"PySide6 import Qt(\w+)", text)
    )
    always = {"Core", "Gui", "Widgets", "DBus", "Svg", "OpenGL", "OpenGLWidgets"}
    return (found - {"TextToSpeech"}) | always


@pytest.mark.skipif(not sys.platform.startswith("linux"), reason="ELF files are Linux's")
@pytest.mark.skipif(shutil.which("readelf") is None, reason="readelf lists the needs of a library")
@pytest.mark.parametrize(
    ("plugin", "table"),
    [
        ("libqoffscreen", ()),
        ("libqxcb", X11),
        ("libqwayland", WAYLAND),
    ],
)
def test_the_table_covers_all_that_the_installed_wheel_needs(plugin, table):
    spec = find_spec("PySide6")
    assert spec is not None
    assert spec.origin is not None
    qt = Path(os.path.dirname(spec.origin), "Qt")
    files = [qt / "lib" / f"libQt6{module}.so.6" for module in modules_in_use()]
    extra = {
        "libqxcb": [qt / "lib" / "libQt6XcbQpa.so.6", *qt.glob("plugins/xcbgl*/*.so")],
        "libqwayland": list(qt.glob("plugins/wayland-*-client/lib*egl.so")),
    }
    files += [qt / "plugins" / "platforms" / f"{plugin}.so", *extra.get(plugin, [])]
    needed = set().union(*(wanted_by(file) for file in files))
    assert needed <= set(names(EVERY_PLATFORM)) | set(names(table))
    assert set(names(table)) <= needed
