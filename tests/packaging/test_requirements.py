"""The pins: exact, complete, and in step with what the project declares."""

import re
import tomllib
from importlib import metadata

import packaging
import pytest
from packaging.requirements import Requirement
from packaging.utils import canonicalize_name

from firstrun.environment import CHECKOUT, RUN, TEST, pins
from freezing.building import FREEZE

PROJECT = tomllib.loads((CHECKOUT / "pyproject.toml").read_text("utf-8"))


def pinned(*files) -> dict[str, str]:
    return {canonicalize_name(name): version for file in files for name, version in pins(file)}


@pytest.mark.parametrize("file", [RUN, TEST, FREEZE])
def test_every_line_is_an_exact_pin(file):
    lines = [line.split("#")[0].strip() for line in file.read_text("utf-8").splitlines()]
    assert len([line for line in lines if line]) > 5
    assert all(re.fullmatch(r"[A-Za-z0-9-]+==[0-9][A-Za-z0-9.]*", line) for line in lines if line)


@pytest.mark.parametrize("more", [TEST, FREEZE])
def test_no_package_is_pinned_twice(more):
    names = [canonicalize_name(name) for file in (RUN, more) for name, _ in pins(file)]
    assert len(names) == len(set(names))


@pytest.mark.parametrize("files", [(RUN,), (RUN, TEST)])
def test_nothing_that_a_pinned_package_needs_is_left_open(files):
    """Installed without looking at dependencies, so these files must be complete."""
    versions = pinned(*files)
    for name in versions:
        for text in metadata.requires(name) or []:
            needed = Requirement(text)
            if needed.marker is None or needed.marker.evaluate({"extra": ""}):
                assert canonicalize_name(needed.name) in versions, f"{name} needs {needed}"
                version = versions[canonicalize_name(needed.name)]
                assert needed.specifier.contains(version, prereleases=True), f"{name}: {needed}"


def test_declared_dependencies_are_pinned_within_their_bounds():
    declared = [(RUN, text) for text in PROJECT["project"]["dependencies"]]
    declared += [(TEST, text) for text in PROJECT["dependency-groups"]["test"]]
    for file, text in declared:
        wanted = Requirement(text)
        version = pinned(file)[canonicalize_name(wanted.name)]
        assert wanted.specifier.contains(version), text


def test_this_folder_does_not_hide_the_library_of_the_same_name():
    assert packaging.__file__ is not None
    assert not packaging.__file__.startswith(str(CHECKOUT / "packaging"))
