"""System libraries that the windowing toolkit loads, looked for before it does.

The rows are the direct needs of the pinned PySide6-Essentials wheel (ELF NEEDED entries of the
modules and platform plugins in use); a test compares them with the wheel.
"""

import ctypes
import os
from collections.abc import Callable, Iterable, Mapping, Sequence
from pathlib import Path

from firstrun.distribution import Need

EVERY_PLATFORM = (
    Need("libEGL.so.1", "libegl1", "mesa-libEGL", "libglvnd"),
    Need("libGL.so.1", "libgl1", "mesa-libGL", "libglvnd"),
    Need("libX11.so.6", "libx11-6", "libX11", "libx11"),
    Need("libfontconfig.so.1", "libfontconfig1", "fontconfig", "fontconfig"),
    Need("libfreetype.so.6", "libfreetype6", "freetype", "freetype2"),
    Need("libdbus-1.so.3", "libdbus-1-3", "dbus-libs", "dbus"),
    Need("libglib-2.0.so.0", "libglib2.0-0", "glib2", "glib2"),
    Need("libgthread-2.0.so.0", "libglib2.0-0", "glib2", "glib2"),
    Need("libxkbcommon.so.0", "libxkbcommon0", "libxkbcommon", "libxkbcommon"),
    Need("libstdc++.so.6", "libstdc++6", "libstdc++", "gcc-libs"),
    Need("libzstd.so.1", "libzstd1", "libzstd", "zstd"),
    Need("libz.so.1", "zlib1g", "zlib", "zlib"),
)
X11 = (
    Need("libX11-xcb.so.1", "libx11-xcb1", "libX11-xcb", "libx11"),
    Need("libxkbcommon-x11.so.0", "libxkbcommon-x11-0", "libxkbcommon-x11", "libxkbcommon-x11"),
    Need("libxcb.so.1", "libxcb1", "libxcb", "libxcb"),
    Need("libxcb-cursor.so.0", "libxcb-cursor0", "xcb-util-cursor", "xcb-util-cursor"),
    Need("libxcb-glx.so.0", "libxcb-glx0", "libxcb", "libxcb"),
    Need("libxcb-icccm.so.4", "libxcb-icccm4", "xcb-util-wm", "xcb-util-wm"),
    Need("libxcb-image.so.0", "libxcb-image0", "xcb-util-image", "xcb-util-image"),
    Need("libxcb-keysyms.so.1", "libxcb-keysyms1", "xcb-util-keysyms", "xcb-util-keysyms"),
    Need("libxcb-randr.so.0", "libxcb-randr0", "libxcb", "libxcb"),
    Need("libxcb-render.so.0", "libxcb-render0", "libxcb", "libxcb"),
    Need(
        "libxcb-render-util.so.0",
        "libxcb-render-util0",
        "xcb-util-renderutil",
        "xcb-util-renderutil",
    ),
    Need("libxcb-shape.so.0", "libxcb-shape0", "libxcb", "libxcb"),
    Need("libxcb-shm.so.0", "libxcb-shm0", "libxcb", "libxcb"),
    Need("libxcb-sync.so.1", "libxcb-sync1", "libxcb", "libxcb"),
    Need("libxcb-util.so.1", "libxcb-util1", "xcb-util", "xcb-util"),
    Need("libxcb-xfixes.so.0", "libxcb-xfixes0", "libxcb", "libxcb"),
    Need("libxcb-xkb.so.1", "libxcb-xkb1", "libxcb", "libxcb"),
)
WAYLAND = (
    Need("libwayland-client.so.0", "libwayland-client0", "libwayland-client", "wayland"),
    Need("libwayland-cursor.so.0", "libwayland-cursor0", "libwayland-cursor", "wayland"),
    Need("libwayland-egl.so.1", "libwayland-egl1", "libwayland-egl", "wayland"),
)
FONT = Need("a font", "fonts-dejavu-core", "dejavu-sans-fonts", "ttf-dejavu")
PER_PLATFORM = {"xcb": X11, "wayland": WAYLAND}
FONT_ENDINGS = (".ttf", ".otf", ".ttc", ".pfb", ".pcf.gz")


def loads(soname: str) -> bool:
    """Whether the dynamic linker finds the library and all that it needs in turn."""
    try:
        ctypes.CDLL(soname)
    except OSError:
        return False
    return True


def has_font(folders: Iterable[Path]) -> bool:
    return any(
        name.lower().endswith(FONT_ENDINGS)
        for folder in folders
        for _, _, names in os.walk(folder)
        for name in names
    )


def font_folders(environment: Mapping[str, str]) -> list[Path]:
    shared = environment.get("XDG_DATA_DIRS") or "/usr/local/share:/usr/share"
    own = environment.get("XDG_DATA_HOME") or "~/.local/share"
    folders = [Path(part, "fonts") for part in (*shared.split(":"), "/usr/share", own)]
    return [
        *(folder.expanduser() for folder in folders),
        Path("~/.fonts").expanduser(),
        Path("/run/current-system/sw/share/X11/fonts"),
    ]


def missing(
    platforms: Sequence[str],
    environment: Mapping[str, str],
    is_there: Callable[[str], bool] = loads,
) -> list[Need]:
    """What must be installed before the first usable of these platform plugins can start.

    Several plugins may be named, tried in turn: one that has all it needs is enough, otherwise
    the one that lacks least is chosen.
    """
    lacks = [
        [need for need in PER_PLATFORM.get(platform, ()) if not is_there(need.what)]
        for platform in platforms
    ]
    everywhere = [need for need in EVERY_PLATFORM if not is_there(need.what)]
    font = [] if has_font(font_folders(environment)) else [FONT]
    return everywhere + min(lacks, key=len, default=[]) + font
