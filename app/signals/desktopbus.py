"""Keeping the screen on over D-Bus; apart from the rest, because Qt's module for it takes time."""

from __future__ import annotations

from PySide6.QtDBus import QDBusConnection, QDBusMessage, QDBusPendingCallWatcher

SERVICE, PATH = "org.freedesktop.ScreenSaver", "/org/freedesktop/ScreenSaver"


class BusHolder:
    """Asks the desktop's screen saver over D-Bus, as freedesktop.org describes it."""

    def __init__(self, bus: QDBusConnection) -> None:
        self._bus = bus
        self._asked: QDBusPendingCallWatcher | None = None

    def hold(self) -> None:
        asking = QDBusMessage.createMethodCall(SERVICE, PATH, SERVICE, "Inhibit")
        asking.setArguments(["Poleward", "A star is being watched"])
        self._asked = QDBusPendingCallWatcher(self._bus.asyncCall(asking))

    def release(self) -> None:
        if self._asked is None:
            return
        answer, self._asked = self._asked.reply().arguments(), None
        if answer:
            letting_go = QDBusMessage.createMethodCall(SERVICE, PATH, SERVICE, "UnInhibit")
            letting_go.setArguments([answer[0]])
            self._bus.asyncCall(letting_go)


def holder_of_session() -> BusHolder | None:
    """None where no desktop's bus is there."""
    bus = QDBusConnection.sessionBus()
    return BusHolder(bus) if bus.isConnected() else None
