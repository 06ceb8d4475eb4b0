"""The screen saver over D-Bus, on a bus of the test's own with a service that only remembers."""

import shutil
import subprocess
import time
from collections.abc import Iterator

import pytest
from PySide6.QtDBus import QDBusConnection, QDBusVirtualObject

from app.workers.desktopbus import PATH, SERVICE, BusHolder

pytestmark = [
    pytest.mark.usefixtures("qapp"),
    pytest.mark.skipif(shutil.which("dbus-daemon") is None, reason="dbus-daemon is not installed"),
]
PATIENCE_MS = 5000


class ScreenSaver(QDBusVirtualObject):
    """Forgets whoever disconnects, as the standard asks."""

    def __init__(self, bus: QDBusConnection) -> None:
        super().__init__()
        self.asked: list[tuple[str, str, list[object]]] = []
        self.askers: list[str] = []
        bus.registerVirtualObject(PATH, self)

    def introspect(self, _path: str) -> str:
        return ""

    def handleMessage(self, message, connection) -> bool:
        self.asked.append((message.member(), message.signature(), message.arguments()))
        self.askers.append(message.service())
        connection.send(message.createReply())
        return True


@pytest.fixture
def address() -> Iterator[str]:
    command = ["dbus-daemon", "--session", "--nofork", "--nopidfile", "--print-address=1"]
    running = subprocess.Popen(
        command, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL, text=True
    )
    yield running.stdout.readline().strip()
    running.terminate()
    running.wait()
    running.stdout.close()


@pytest.fixture
def service_bus(address: str) -> Iterator[QDBusConnection]:
    yield QDBusConnection.connectToBus(address, "service of the test")
    QDBusConnection.disconnectFromBus("service of the test")


def _holder(address: str) -> BusHolder:
    return BusHolder(lambda name: QDBusConnection.connectToBus(address, name), "Because")


def test_it_asks_as_the_standard_says_and_lets_go_by_leaving(address, service_bus, qtbot) -> None:
    saver = ScreenSaver(service_bus)
    assert service_bus.registerService(SERVICE)
    failures: list[str] = []
    holder = _holder(address)
    began = time.perf_counter()
    holder.hold(lambda: failures.append("failed"))
    assert time.perf_counter() - began < 0.05
    qtbot.waitUntil(lambda: bool(saver.asked), timeout=PATIENCE_MS)
    assert saver.asked == [("Inhibit", "ss", ["Poleward", "Because"])]
    bus = service_bus.interface()
    asker = saver.askers[0]
    assert bus.isServiceRegistered(asker).value()
    holder.release()
    holder.release()
    qtbot.waitUntil(lambda: not bus.isServiceRegistered(asker).value(), timeout=PATIENCE_MS)
    assert failures == []


def test_a_desktop_without_a_screen_saver_says_so(address, qtbot) -> None:
    failures: list[str] = []
    holder = _holder(address)
    holder.hold(lambda: failures.append("failed"))
    qtbot.waitUntil(lambda: failures == ["failed"], timeout=PATIENCE_MS)
    holder.release()


def test_no_bus_at_all_is_told_at_once() -> None:
    failures: list[str] = []
    _holder("unix:path=/nowhere/at-all").hold(lambda: failures.append("failed"))
    assert failures == ["failed"]
