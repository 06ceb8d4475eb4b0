"""Who may import whom: one direction, every module placed."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[1]
CORE = ("core.sky", "core.alignment", "core.mount", "core.tracking", "core.night", "core.practice")
SKY, ALIGNMENT, MOUNT, TRACKING, NIGHT, PRACTICE = CORE

# package -> packages it may import besides itself; a module matches its longest entry
MAY_IMPORT: dict[str, tuple[str, ...]] = {
    SKY: (),
    ALIGNMENT: (SKY,),
    MOUNT: (SKY, ALIGNMENT),
    TRACKING: (SKY, ALIGNMENT, MOUNT),
    NIGHT: (SKY, ALIGNMENT, MOUNT, TRACKING),
    PRACTICE: (SKY, ALIGNMENT),
    "core.commands": CORE,
    "core.__main__": ("core.commands",),
    "core": (),
    "app.theme": (),
    "app.courtesy": (),
    "app.widgets": ("app.theme", "app.courtesy", *CORE),
    "app.storage": CORE,
    "app.signals": (),
    "app.sources": CORE,
    "app.session": ("app.sources", "app.storage", "app.courtesy", *CORE),
    "app.pages": ("app.session", "app.signals", "app.sources", "app.storage.records",
                  "app.widgets", "app.theme", *CORE),
    "app": ("app", *CORE),
}  # fmt: skip
EVERYONE = ("core.language",)  # whoever says a sentence
QT = ("PySide6", "pyqtgraph", "shiboken6")
QT_FREE = ("core", "app.storage")


def modules() -> list[tuple[str, Path]]:
    found = []
    for top in ("core", "app"):
        for path in sorted((ROOT / top).rglob("*.py")):
            parts = path.relative_to(ROOT).with_suffix("").parts
            found.append((".".join(parts[:-1] if parts[-1] == "__init__" else parts), path))
    return found


def home(module: str) -> str:
    """The longest entry of the table that holds the module."""
    fitting = [name for name in MAY_IMPORT if module == name or module.startswith(name + ".")]
    return max(fitting, key=len, default="")


def imported(path: Path) -> Iterator[str]:
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: imports are absolute here"
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def within(name: str, package: str) -> bool:
    return name == package or name.startswith(package + ".")


ALL = modules()


@pytest.mark.parametrize(("module", "path"), ALL, ids=[name for name, _ in ALL])
def test_imports_go_one_way(module, path):
    place = home(module)
    assert place, f"{module} has no place in the table of imports"
    assert place not in ("core", "app") or module.count(".") <= 1, f"place {module} in the table"
    for name in imported(path):
        if not name.startswith(("core.", "app.")):
            continue
        allowed = (place, *EVERYONE, *MAY_IMPORT[place])
        assert any(within(name, package) for package in allowed), f"{module} imports {name}"


@pytest.mark.parametrize(("module", "path"), ALL, ids=[name for name, _ in ALL])
def test_the_computation_and_the_log_know_no_screen(module, path):
    if any(within(module, package) for package in QT_FREE):
        assert not [name for name in imported(path) if name.startswith(QT)]


def page_of(module: str) -> str:
    return ".".join(module.split(".")[:3])


@pytest.mark.parametrize(
    ("module", "path"), [entry for entry in ALL if within(entry[0], "app.pages")],
    ids=[name for name, _ in ALL if within(name, "app.pages")],
)  # fmt: skip
def test_no_page_knows_another(module, path):
    pages = {page_of(name) for name, _ in ALL if name.count(".") > 1 and within(name, "app.pages")}
    folders = {page for page in pages if (ROOT / page.replace(".", "/")).is_dir()}
    for name in imported(path):
        other = page_of(name)
        assert other not in folders or other == page_of(module), f"{module} imports {name}"


def test_the_rule_catches_a_breach(tmp_path):
    wrong = tmp_path / "wrong.py"
    wrong.write_text("from app.window import Window\nimport PySide6.QtCore\n", encoding="utf-8")
    names = list(imported(wrong))
    assert names == ["app.window.Window", "PySide6.QtCore"]
    assert not any(within(names[0], package) for package in (SKY, *MAY_IMPORT[SKY]))
    assert names[1].startswith(QT)
