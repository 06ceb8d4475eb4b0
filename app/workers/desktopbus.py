"""Keeping the screen on over D-Bus; apart from the rest, because Qt's module for it takes time."""

from __future__ import annotations

import itertools
from collections.abc import Callable

from PySide6.QtDBus import QDBusConnection, QDBusMessage, QDBusPendingCallWatcher

SERVICE, PATH = "org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver"
_numbers = itertools.count(1)


class BusHolder:
    """Asks the desktop's screen saver over D-Bus, as freedesktop.org describes it.

    Each hold has a connection of its own, and is let go by closing it: the screen saver then
    forgets the wish. The call meant for that takes an unsigned number, which PySide cannot send.
    """

    def __init__(self, connect: Callable[[str], QDBusConnection], why: str) -> None:
        """`connect` opens a connection under a name."""
        self._connect = connect
        self._why = why
        self._name = ""
        self._watcher: QDBusPendingCallWatcher | None = None
        self._failed: Callable[[], None] | None = None

    def hold(self, failed: Callable[[], None]) -> None:
        """Asked without waiting; a screen saver that is not there says so a little later."""
        self._failed = failed
        self._name = f"poleward-awake-{next(_numbers)}"
        bus = self._connect(self._name)
        if not bus.isConnected():
            self.release()
            failed()
            return
        asking = QDBusMessage.createMethodCall(SERVICE, PATH, SERVICE, "Inhibit")
        asking.setArguments(["Poleward", self._why])
        self._watcher = QDBusPendingCallWatcher(bus.asyncCall(asking))
        self._watcher.finished.connect(self._answered)

    def release(self) -> None:
        self._watcher = None
        if self._name:
            QDBusConnection.disconnectFromBus(self._name)
            self._name = ""

    def _answered(self) -> None:
        watcher, self._watcher = self._watcher, None
        if watcher is not None and watcher.isError() and self._failed is not None:
            self._failed()


def holder_of_session(why: str) -> BusHolder:
    """On the bus of the desktop's session."""
    session = QDBusConnection.BusType.SessionBus
    return BusHolder(lambda name: QDBusConnection.connectToBus(session, name), why)
