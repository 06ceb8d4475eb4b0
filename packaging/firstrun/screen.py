"""Which of the toolkit's platform plugins will run here, and whether the screen answers."""

import ctypes
import sys
from collections.abc import Mapping

from firstrun.trouble import Trouble

NO_SCREEN = (
    "There is no screen to open the window on: neither WAYLAND_DISPLAY nor DISPLAY is set. Start"
    " it from a desktop session; over a remote shell, forward the screen (ssh -X)."
)


def has_screen(environment: Mapping[str, str]) -> bool:
    return bool(environment.get("WAYLAND_DISPLAY") or environment.get("DISPLAY"))


def platforms(environment: Mapping[str, str]) -> list[str]:
    """Plugin names in the order in which the toolkit tries them on Linux.

    Raises Trouble when no plugin is named and there is no screen.
    """
    named = environment.get("QT_QPA_PLATFORM", "")
    if named:
        return [part.split(":")[0] for part in named.split(";")]
    if not has_screen(environment):
        raise Trouble(NO_SCREEN)
    is_wayland = (
        environment.get("WAYLAND_DISPLAY") or environment.get("XDG_SESSION_TYPE") == "wayland"
    )
    return (["wayland"] if is_wayland else []) + (["xcb"] if environment.get("DISPLAY") else [])


def x11_answers() -> bool:
    library = ctypes.CDLL("libxcb.so.1")
    library.xcb_connect.restype = ctypes.c_void_p
    connection = ctypes.c_void_p(library.xcb_connect(None, None))
    failed = library.xcb_connection_has_error(connection)
    library.xcb_disconnect(connection)
    return failed == 0


def wayland_answers() -> bool:
    library = ctypes.CDLL("libwayland-client.so.0")
    library.wl_display_connect.restype = ctypes.c_void_p
    display = library.wl_display_connect(None)
    if display:
        library.wl_display_disconnect(ctypes.c_void_p(display))
    return bool(display)


ANSWERS = {"xcb": x11_answers, "wayland": wayland_answers}


def answers(platform: str) -> bool:
    """Whether the plugin's screen accepts a connection; plugins without one always do."""
    try:
        return ANSWERS.get(platform, lambda: True)()
    except OSError:  # the library is missing: another plugin in the list may have its own
        return False


def require(environment: Mapping[str, str]) -> None:
    """Raise Trouble when no screen among those to be tried accepts a connection."""
    if not sys.platform.startswith("linux") or any(map(answers, platforms(environment))):
        return
    settings = [
        f"{name}={environment[name]}"
        for name in ("WAYLAND_DISPLAY", "DISPLAY")
        if environment.get(name)
    ]
    raise Trouble(
        f"The screen does not answer ({', '.join(settings) or 'no screen is named'}): it is gone,"
        " or belongs to another person. Start Poleward as the person who is logged in at it."
    )
