"""Which package names and which command a person is told."""

import pytest

from firstrun import distribution
from firstrun.distribution import Need, command, family

EGL = Need("libEGL.so.1", "libegl1", "mesa-libEGL", "libglvnd")
GL = Need("libGL.so.1", "libgl1", "mesa-libGL", "libglvnd")
GLIB = Need("libglib-2.0.so.0", "libglib2.0-0", "glib2", "glib2")


@pytest.fixture(autouse=True)
def machine(tmp_path, monkeypatch):
    """A machine with package lists and without the 64-bit time change."""
    monkeypatch.setattr(distribution, "DPKG_INFO", tmp_path / "info")
    monkeypatch.setattr(distribution, "APT_LISTS", tmp_path / "lists")
    monkeypatch.setattr(distribution.shutil, "which", lambda name: f"/usr/bin/{name}")
    (tmp_path / "info").mkdir()
    (tmp_path / "lists").mkdir()
    (tmp_path / "lists" / "main_binary-amd64_Packages").touch()
    return tmp_path


@pytest.mark.parametrize(
    ("text", "expected"),
    [
        ('ID=debian\nVERSION_ID="12"\n', "debian"),
        ("NAME=x\nID=ubuntu\nID_LIKE=debian\n", "debian"),
        ('ID=derived\nID_LIKE="ubuntu debian"\n', "debian"),
        ("ID=fedora\n", "fedora"),
        ('ID="derived"\nID_LIKE="rhel centos fedora"\n', "fedora"),
        ("ID=arch\n", "arch"),
        ("ID=derived\nID_LIKE=arch\n", "arch"),
        ('ID=opensuse-leap\nID_LIKE="suse opensuse"\n', None),
        ("", None),
        ("no equals sign\n# comment\n", None),
    ],
)
def test_family(text, expected):
    assert family(text) == expected


@pytest.mark.parametrize(
    ("of_family", "expected"),
    [
        ("debian", "sudo apt-get install libegl1 libgl1"),
        ("fedora", "sudo dnf install mesa-libEGL mesa-libGL"),
        ("arch", "sudo pacman -S --needed libglvnd"),
        (None, None),
    ],
)
def test_command(of_family, expected):
    assert command([EGL, GL], of_family, is_root=False) == expected


def test_root_needs_no_sudo():
    assert command([EGL], "debian", is_root=True) == "apt-get install libegl1"


def test_without_sudo_one_line_still_does_it(machine, monkeypatch):
    monkeypatch.setattr(distribution.shutil, "which", lambda _: None)
    assert command([EGL], "fedora", is_root=False) == "su -c 'dnf install mesa-libEGL'"
    (machine / "lists" / "main_binary-amd64_Packages").unlink()
    expected = "su -c 'apt-get update && apt-get install libegl1'"
    assert command([EGL], "debian", is_root=False) == expected


def test_package_lists_are_fetched_first_where_there_are_none(machine):
    (machine / "lists" / "main_binary-amd64_Packages").unlink()
    expected = "sudo apt-get update && sudo apt-get install libegl1"
    assert command([EGL], "debian", is_root=False) == expected


def test_renamed_package_after_the_time_change(machine):
    assert distribution.packages([GLIB], "debian") == ["libglib2.0-0"]
    (machine / "info" / "libssl3t64:amd64.list").touch()
    assert distribution.packages([GLIB, EGL], "debian") == ["libglib2.0-0t64", "libegl1"]
    assert distribution.packages([GLIB], "fedora") == ["glib2"]
