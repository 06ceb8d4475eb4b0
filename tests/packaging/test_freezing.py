"""What goes into the frozen program, and how its trial judges."""

import json
import subprocess
import sys
from pathlib import Path

import pytest

from firstrun.environment import CHECKOUT
from firstrun.trouble import Trouble
from freezing import building, contents, samplelog, trial


def test_everything_the_program_reads_goes_along():
    """Found in the code: every path made from the place of a module leads to resources."""
    inside = {
        Path(folder, Path(file).name).as_posix() for file, folder in contents.resources(CHECKOUT)
    }
    read = {
        "resources/stars.csv",
        "resources/deep_sky.csv",
        "resources/pole_stars.csv",
        "resources/checklist.json",
        "resources/help.json",
        "resources/language/poleward_de.qm",
    }
    assert read <= inside
    named = {
        name
        for folder in ("app", "core")
        for path in (CHECKOUT / folder).rglob("*.py")
        for name in path.read_text("utf-8").split('"')
        if name.endswith((".csv", ".json")) and (CHECKOUT / "resources" / name).exists()
    }
    assert named
    assert {f"resources/{name}" for name in named} <= inside


def test_pictures_and_table_makers_stay_behind():
    names = [Path(file).name for file, _ in contents.resources(CHECKOUT)]
    assert not any(name.endswith((".png", ".py", ".ts")) for name in names)


@pytest.mark.parametrize(
    "place",
    [
        "PySide6/Qt/plugins/platforms/libqxcb.so",
        "PySide6/Qt/plugins/platforms/libqoffscreen.so",
        "PySide6/plugins/platforms/qwindows.dll",
        "PySide6/Qt/lib/libQt6Widgets.so.6",
        "PySide6/QtSvg.abi3.so",
        "PySide6/Qt/translations/qtbase_de.qm",
        "libxcb-cursor.so.0",
        "astropy_iers_data/data/finals2000A.all",
        "skyfield_data/data/de421.bsp",
    ],
)
def test_what_the_program_needs_is_wanted(place):
    assert contents.is_wanted(place)
    assert contents.is_wanted(place.replace("/", "\\"))


@pytest.mark.parametrize(
    "place",
    [
        "PySide6/Qt/lib/libQt6Quick.so.6",
        "PySide6/Qt6Pdf.dll",
        "PySide6/Qt/plugins/platformthemes/libqgtk3.so",
        "PySide6/plugins/tls/qschannelbackend.dll",
        "PySide6/Qt/translations/qtwebengine_de.qm",
        "libgtk-3.so.0",
        "libstdc++.so.6",
        "libX11.so.6",
        "astropy_iers_data/data/eopc04.1962-now",
    ],
)
def test_what_is_of_no_use_stays_out(place):
    assert not contents.is_wanted(place)
    assert not contents.is_wanted(place.replace("/", "\\"))


def test_nothing_that_is_imported_is_excluded():
    loading = "import sys, app.pagetable, app.startup; [__import__(n) for n in app.startup.SLOW];"
    ran = subprocess.run(
        [sys.executable, "-c", loading + "print(*sys.modules)"],
        cwd=CHECKOUT,
        capture_output=True,
        text=True,
        check=True,
    )
    assert not set(ran.stdout.split()) & set(contents.EXCLUDED_MODULES)


def test_the_answer_of_the_sample_log_is_the_known_one(tmp_path):
    log = tmp_path / "sample.csv"
    log.write_text(samplelog.text(), "utf-8")
    ran = subprocess.run(
        [sys.executable, "-m", "core", "drift", str(log), "--json"],
        cwd=CHECKOUT,
        capture_output=True,
        text=True,
        check=True,
    )
    trial.judge_answer(ran.stdout)


def test_another_answer_is_not_taken():
    wrong = {"azimuth_error_arcmin": -10.0, "altitude_error_arcmin": 0.0}
    with pytest.raises(Trouble, match=r"-10\.0"):
        trial.judge_answer(json.dumps(wrong))


def test_ready_without_faults_is_enough():
    trial.judge_start("ready\n", "")
    trial.judge_start("ready\n", "Qt: This plugin does not support propagateSizeHints()\n")


@pytest.mark.parametrize(
    ("printed", "noted"), [("", ""), ("nearly ready\n", ""), ("ready\n", "Traceback")]
)
def test_anything_else_is_not(printed, noted):
    with pytest.raises(Trouble):
        trial.judge_start(printed, noted)


def test_the_trial_knows_no_person(tmp_path):
    found = trial.surroundings(
        tmp_path, {"PATH": "/bin", "PYTHONPATH": "/x", "DISPLAY": ":0", "HOME": "/home/someone"}
    )
    assert found["PATH"] == "/bin"
    assert found["HOME"] == str(tmp_path)
    assert not {"PYTHONPATH", "DISPLAY"} & set(found)


def test_a_failing_program_is_reported_with_what_it_said(tmp_path):
    code = "import sys; sys.stderr.write('no such star'); sys.exit(3)"
    with pytest.raises(Trouble, match=r"code 3(.|\n)*no such star"):
        trial.run([sys.executable, "-c", code], tmp_path)


def test_a_program_that_never_ends_is_reported(tmp_path, monkeypatch):
    monkeypatch.setattr(trial, "LONGEST_S", 0.2)
    with pytest.raises(Trouble, match="did not end"):
        trial.run([sys.executable, "-c", "import threading; threading.Event().wait()"], tmp_path)


def test_missing_tools_are_named_with_the_rest(monkeypatch):
    monkeypatch.setattr(building.sys, "platform", "linux")
    monkeypatch.setattr(building.shutil, "which", lambda _: None)
    monkeypatch.setattr(building.sysconfig, "get_config_var", lambda _: "/nowhere")
    assert [need.debian for need in building.tools()][1:] == ["binutils"]
    monkeypatch.setattr(building.sys, "platform", "darwin")
    assert building.tools() == []
