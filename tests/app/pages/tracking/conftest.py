"""A Tracking page with a real session and a log that remembers what it was given."""

from collections.abc import Iterator
from typing import Any

import numpy as np
import pytest

from app.night.session import Session
from app.pages.tracking.page import TrackingPage
from app.pages.tracking.parts import TrackingParts

NOW_S = 1_790_000_000.0
PERIOD_S, SWING = 480.0, 6.0  # of the invented worm in `invented_run`, one sine
DONE_MS = 30_000


class Log:
    """Keeps in memory what is put."""

    def __init__(self) -> None:
        self.settings: dict[str, Any] = {}
        self.legs: list[tuple[str, str]] = []
        self.discarded: list[int] = []
        self.samples: dict[int, int] = {}
        self.entries: list[tuple[str, dict[str, Any]]] = []

    def get_setting(self, key: str, default: Any = None) -> Any:
        return self.settings.get(key, default)

    def put_setting(self, key: str, value: Any) -> None:
        self.settings[key] = value

    def add_leg(self, label: str, _star: str, _ra: float, _dec: float, purpose: str = "") -> int:
        self.legs.append((label, str(purpose)))
        return len(self.legs)

    def add_samples(self, leg_id: int, utc_s: np.ndarray, *_columns: Any) -> None:
        self.samples[leg_id] = utc_s.size

    def end_leg(self, leg_id: int) -> None:
        assert leg_id in self.samples

    def discard_leg(self, leg_id: int) -> None:
        self.discarded.append(leg_id)

    def put_entry(
        self,
        kind: str,
        content: dict[str, Any],
        attachment: bytes | None = None,
        entry_id: int | None = None,
    ) -> int:
        assert attachment is None
        if entry_id is not None:
            self.entries[entry_id - 1] = (str(kind), content)
            return entry_id
        self.entries.append((str(kind), content))
        return len(self.entries)


def written(tmp_path, text: str, name: str = "run.csv"):
    """The text as a file."""
    path = tmp_path / name
    path.write_text(text, encoding="utf-8")
    return path


def invented_run(unit: str = "arcsec", minutes: float = 50.0, heads: tuple[str, ...] = ()) -> str:
    """A run on the equator as a file: one sine of the worm, some noise, no drift."""
    rng = np.random.default_rng(8)
    lines = [*heads, f"leg,utc,ra_deg,dec_deg,north_{unit},east_{unit}"]
    for second in np.arange(0.0, 60.0 * minutes, 3.0):
        stamp = np.datetime64(int(NOW_S + second), "s")
        east = SWING * np.sin(2.0 * np.pi * second / PERIOD_S) + rng.normal(0.0, 0.4)
        lines.append(f"run,{stamp}Z,200.0,0.0,{rng.normal(0.0, 0.4):.3f},{east:.3f}")
    return "\n".join(lines)


@pytest.fixture
def session() -> Iterator[Session]:
    made = Session()
    yield made
    made.close()


@pytest.fixture
def log() -> Log:
    return Log()


@pytest.fixture
def page(qtbot, theme, session: Session, log: Log) -> Iterator[TrackingPage]:
    parts = TrackingParts(lambda: NOW_S, log)
    made = TrackingPage(session, theme, parts, np.random.default_rng(3))
    made.resize(1150, 740)
    qtbot.addWidget(made)
    with qtbot.waitExposed(made):
        made.show()
    yield made
    made.stop()


@pytest.fixture
def wait(qtbot, page: TrackingPage):
    """Does something and waits until the study that follows has been shown."""

    def wait(act) -> None:
        with qtbot.waitSignal(page.bench.job.done, timeout=DONE_MS):
            act()
        qtbot.waitUntil(lambda: page.bench.study is not None)
        page.head._show()
        for section in page.sections._built.values():
            section._show()

    return wait
