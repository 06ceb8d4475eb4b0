"""The window is up and answering hardly later than a bare one with the same libraries."""

import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
ROUNDS = 7
MOST = 1.3

# Each prints the seconds from its first line until the window has been painted and has answered
# an event that was posted to it.
BARE = """
import time
begun = time.perf_counter()
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMainWindow
import pyqtgraph
app = QApplication([])
window = QMainWindow()
window.setCentralWidget(pyqtgraph.PlotWidget())
window.resize(1280, 800)
window.show()
app.processEvents()
QTimer.singleShot(0, app, lambda: app.exit(0))
app.exec()
print(time.perf_counter() - begun)
"""
OURS = """
import time
begun = time.perf_counter()
import sys
from pathlib import Path
from PySide6.QtCore import QSettings, QTimer
from PySide6.QtWidgets import QApplication
from app.compose import Program
app = QApplication([])
folder = Path(sys.argv[1])
settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
program = Program(app, settings, folder / "nights.sqlite")
program.window.resize(1280, 800)
program.start()
app.processEvents()
QTimer.singleShot(0, app, lambda: app.exit(0))
app.exec()
print(time.perf_counter() - begun)
program.close()
"""


def _seconds(script: str, *arguments: str) -> float:
    done = subprocess.run(
        [sys.executable, "-c", script, *arguments],
        cwd=ROOT,
        env=os.environ | {"QT_QPA_PLATFORM": "offscreen"},
        capture_output=True,
        text=True,
        check=True,
        timeout=60,
    )
    return float(done.stdout.split()[-1])


@pytest.mark.bench
def test_the_window_is_up_hardly_later_than_a_bare_one(tmp_path: Path) -> None:
    bare, ours = [], []
    for round_ in range(ROUNDS):  # in turns, so that a busy machine hinders both alike
        folder = tmp_path / str(round_)
        folder.mkdir()
        bare.append(_seconds(BARE))
        ours.append(_seconds(OURS, str(folder)))
    print(f"bare {min(bare):.3f} s, ours {min(ours):.3f} s, ratio {min(ours) / min(bare):.2f}")
    assert min(ours) < MOST * min(bare)
