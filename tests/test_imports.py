"""Who may import whom: every module placed, one direction, no circles."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[1]

# From the ground up: a part may import those that stand before it in the same list, and itself.
CORE = [
    "core.units", "core.language", "core.finding",
    "core.sky",
    "core.alignment.priors", "core.alignment.goal",
    "core.alignment.driftlog", "core.alignment.drift",
    "core.alignment.axis", "core.alignment.guide", "core.alignment.polarscope",
    "core.alignment.words",
    "core.mount", "core.imaging", "core.tracking", "core.night", "core.practice",
    "core.commands", "core.__main__",
]  # fmt: skip
# The screen's side: what each part may import besides itself and `core` without its commands.
APP: dict[str, tuple[str, ...]] = {
    "app.devices": (),
    "app.store": (),
    "app.workers": (),
    "app.night": ("app.devices", "app.store", "app.workers"),
    "app.ui": ("app.workers",),
    "app.pages": ("app.night", "app.ui", "app.workers", "app.devices", "app.store.records"),
    "app.startup": ("app.store",),
    "app.pagetable": ("app",),
    "app.compose": ("app",),
    "app.__main__": ("app",),
}  # fmt: skip
NOT_FOR_SCREENS = ("core.commands", "core.__main__")
QT = ("PySide6", "pyqtgraph", "shiboken6")
QT_FREE = ("core", "app.store")


def modules() -> dict[str, Path]:
    found = {}
    for top in ("core", "app"):
        for path in sorted((ROOT / top).rglob("*.py")):
            parts = path.relative_to(ROOT).with_suffix("").parts
            found[".".join(parts[:-1] if parts[-1] == "__init__" else parts)] = path
    return found


MODULES = modules()


def within(name: str, package: str) -> bool:
    return name == package or name.startswith(package + ".")


def place(module: str) -> str:
    """The longest entry of the tables that holds the module; empty where none does."""
    fitting = [name for name in (*CORE, *APP) if within(module, name)]
    return max(fitting, key=len, default="")


def imported(path: Path, lazy: bool = True) -> Iterator[str]:
    """Dotted names; `lazy`: also those imported inside functions or for types alone."""
    tree = ast.parse(path.read_text(encoding="utf-8"))
    for node in ast.walk(tree) if lazy else tree.body:
        if isinstance(node, ast.Import):
            yield from (alias.name for alias in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{path}: imports are absolute here"
            yield from (f"{node.module}.{alias.name}" for alias in node.names)


def own_imports(path: Path, lazy: bool = True) -> Iterator[str]:
    """Modules of ours that are imported."""
    for name in imported(path, lazy):
        if name.split(".")[0] in ("core", "app"):
            yield name if name in MODULES else name.rpartition(".")[0]


def allowed(module: str, name: str) -> bool:
    here, there = place(module), place(name)
    if here in CORE:
        return there in CORE[: CORE.index(here) + 1]
    if there in CORE:
        return there not in NOT_FOR_SCREENS
    return there == here or any(within(name, package) for package in APP[here])


def test_every_module_has_a_place() -> None:
    packages = {"core", "app", "core.alignment"}
    unplaced = [name for name in MODULES if name not in packages and not place(name)]
    assert not unplaced, f"find these a place in the tables above: {unplaced}"
    loose = [name for name in MODULES if place(name) == "app" and name.count(".") > 1]
    assert not loose, f"these folders need an entry of their own: {loose}"


def test_imports_go_one_way() -> None:
    wrong = [
        f"{module} imports {name}"
        for module, path in MODULES.items()
        if place(module)
        for name in own_imports(path)
        if not allowed(module, name)
    ]
    assert not wrong, "\n".join(wrong)


def circles(graph: dict[str, set[str]]) -> list[list[str]]:
    """What remains when modules that import no other remaining one are taken away, and back."""
    left = {name: {other for other in others if other != name} for name, others in graph.items()}
    while True:
        ends = {name for name, others in left.items() if not others & left.keys()}
        ends |= left.keys() - set().union(*left.values()) if left else set()
        if not ends:
            return [sorted(left)] if left else []
        left = {name: others for name, others in left.items() if name not in ends}


def test_there_is_no_circle_of_imports() -> None:
    found = circles({name: set(own_imports(path, lazy=False)) for name, path in MODULES.items()})
    assert not found, found


def test_the_computation_and_the_log_know_no_screen() -> None:
    wrong = [
        f"{module} imports {name}"
        for module, path in MODULES.items()
        if any(within(module, package) for package in QT_FREE)
        for name in imported(path)
        if name.startswith(QT)
    ]
    assert not wrong, "\n".join(wrong)


def test_no_page_knows_another() -> None:
    def page(module: str) -> str:
        return ".".join(module.split(".")[:3])

    folders = {page(name) for name in MODULES if name.count(".") == 3 and "pages" in name}
    wrong = [
        f"{module} imports {name}"
        for module, path in MODULES.items()
        if within(module, "app.pages")
        for name in own_imports(path)
        if page(name) in folders and page(name) != page(module)
    ]
    assert not wrong, "\n".join(wrong)


def test_the_rules_catch_a_breach(tmp_path: Path) -> None:
    wrong = tmp_path / "wrong.py"
    wrong.write_text(
        "from app.ui.window import Window\ndef f():\n    import PySide6.QtCore\n", encoding="utf-8"
    )
    assert list(imported(wrong)) == ["app.ui.window.Window", "PySide6.QtCore"]
    assert list(imported(wrong, lazy=False)) == ["app.ui.window.Window"]
    assert not allowed("core.sky.site", "app.ui.window")
    assert not allowed("core.sky.site", "core.night.plan")
    assert allowed("core.night.plan", "core.sky.site")
    assert not allowed("app.pages.site.page", "core.commands.drift")
    assert not place("core.elsewhere")
    assert circles({"a": {"b"}, "b": {"c"}, "c": {"b"}, "d": {"a"}}) == [["b", "c"]]
