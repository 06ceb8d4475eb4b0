"""Measures how the house is built, so that a rebuild can be compared before and after.

    python3 packaging/structure.py [--root DIR] [--json] [--run]

`--root` measures another checkout. Files are parsed, never imported; `--run` also starts that
checkout's program offscreen (`structure_run.py`) and measures what happens in it.
"""

from __future__ import annotations

import argparse
import ast
import io
import json
import subprocess
import sys
import tokenize
from collections import Counter, defaultdict
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

TOPS = ("core", "app")
MARKING = "marked"  # the function that marks a sentence for translation: its module is the language
LONG_FUNCTION = 30


@dataclass(frozen=True, eq=False)
class Module:
    name: str
    path: Path
    text: str
    tree: ast.Module

    @property
    def is_package(self) -> bool:
        return self.path.name == "__init__.py"


def modules(root: Path) -> dict[str, Module]:
    """By dotted name; packages that hold nothing but a docstring are left out."""
    found = {}
    for top in TOPS:
        for path in sorted((root / top).rglob("*.py")):
            parts = path.relative_to(root).with_suffix("").parts
            name = ".".join(parts[:-1] if parts[-1] == "__init__" else parts)
            text = path.read_text(encoding="utf-8")
            tree = ast.parse(text)
            if path.name == "__init__.py" and all(isinstance(one, ast.Expr) for one in tree.body):
                continue
            found[name] = Module(name, path, text, tree)
    return found


# Lines.


def lines(module: Module) -> Counter[str]:
    """Each line once: blank, comment, docstring, import or code."""
    count = len(module.text.splitlines())
    kinds = ["blank" if not line.strip() else "code" for line in module.text.splitlines()]
    tokens = tokenize.generate_tokens(io.StringIO(module.text).readline)
    for token in tokens:
        row = token.start[0] - 1
        if token.type == tokenize.COMMENT and token.line.strip().startswith("#"):
            kinds[row] = "comment"
    for node in ast.walk(module.tree):
        if isinstance(node, ast.Import | ast.ImportFrom):
            _fill(kinds, node, "import")
        elif isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef):
            first = node.body[0] if node.body else None
            if isinstance(first, ast.Expr) and _is_text(first.value):
                _fill(kinds, first, "docstring")
    assert len(kinds) == count
    return Counter(kinds)


def _fill(kinds: list[str], node: ast.stmt, kind: str) -> None:
    for row in range(node.lineno - 1, node.end_lineno or node.lineno):
        kinds[row] = kind


def _is_text(node: ast.expr) -> bool:
    return isinstance(node, ast.Constant) and isinstance(node.value, str)


# Imports.


def definitions(module: Module) -> set[str]:
    """Names that the module itself defines at its top."""
    found: set[str] = set()
    for node in at_load(module.tree.body, for_types=True):
        if isinstance(node, ast.FunctionDef | ast.ClassDef | ast.AsyncFunctionDef):
            found.add(node.name)
        elif isinstance(node, ast.Assign):
            found |= {one.id for target in node.targets for one in ast.walk(target) if _named(one)}
        elif isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            found.add(node.target.id)
    return found


def _named(node: ast.AST) -> bool:
    return isinstance(node, ast.Name)


def at_load(body: Iterable[ast.stmt], for_types: bool = False) -> Iterator[ast.stmt]:
    """The statements run while a module loads, under `if` and `try` too but in no class.

    `for_types`: also those that only a type checker sees.
    """
    for node in body:
        yield node
        if isinstance(node, ast.If):
            seen = node.body if for_types or not _asks_for_types(node.test) else []
            yield from at_load([*seen, *node.orelse], for_types)
        elif isinstance(node, ast.Try):
            handlers = [one for handler in node.handlers for one in handler.body]
            parts = [*node.body, *handlers, *node.orelse, *node.finalbody]
            yield from at_load(parts, for_types)
        elif isinstance(node, ast.With):
            yield from at_load(node.body, for_types)


def _asks_for_types(test: ast.expr) -> bool:
    return ast.unparse(test) in ("TYPE_CHECKING", "typing.TYPE_CHECKING")


class Imports:
    """Who imports whom, with every name traced to the module that defines it."""

    def __init__(self, of: Mapping[str, Module]) -> None:
        self._modules = of
        self._defined = {name: definitions(module) for name, module in of.items()}
        self._brought = {name: dict(_brought(module.tree)) for name, module in of.items()}

    def of(self, module: Module, lazy: bool = True) -> set[str]:
        """Other modules; `lazy`: also in functions and for types alone."""
        nodes = ast.walk(module.tree) if lazy else at_load(module.tree.body)
        found = {name for node in nodes for name in self._targets(node)}
        return found - {module.name}

    def _targets(self, node: ast.AST) -> Iterator[str]:
        if isinstance(node, ast.Import):
            yield from (one.name for one in node.names if one.name in self._modules)
        elif isinstance(node, ast.ImportFrom) and node.module:
            for one in node.names:
                home = self.home(node.module, one.name)
                if home is not None:
                    yield home

    def home(self, module: str, name: str) -> str | None:
        """The module that defines a name imported from `module`; None for one that is not ours."""
        seen: set[tuple[str, str]] = set()
        while (module, name) not in seen:
            seen.add((module, name))
            if name in self._defined.get(module, ()):
                return module
            if f"{module}.{name}" in self._modules:
                return f"{module}.{name}"
            if name not in self._brought.get(module, {}):
                return module if module in self._modules else None
            module, name = self._brought[module][name]
        return None


def _brought(tree: ast.Module) -> Iterator[tuple[str, tuple[str, str]]]:
    for node in at_load(tree.body, for_types=True):
        if isinstance(node, ast.ImportFrom) and node.module:
            for one in node.names:
                yield one.asname or one.name, (node.module, one.name)


def circles(graph: Mapping[str, set[str]]) -> list[list[str]]:
    """Groups of modules that reach one another, by Tarjan's method."""
    order: dict[str, int] = {}
    low: dict[str, int] = {}
    stack: list[str] = []
    found: list[list[str]] = []

    def visit(name: str) -> None:
        order[name] = low[name] = len(order)
        stack.append(name)
        for other in graph.get(name, ()):
            if other not in order:
                visit(other)
                low[name] = min(low[name], low[other])
            elif other in stack:
                low[name] = min(low[name], order[other])
        if low[name] == order[name]:
            at = stack.index(name)
            group = stack[at:]
            del stack[at:]
            if len(group) > 1:
                found.append(sorted(group))

    for name in graph:
        if name not in order:
            visit(name)
    return found


# Names, pulls, accessors.


def shared_class_names(of: Mapping[str, Module]) -> dict[str, list[str]]:
    """Class names that stand in more than one module, and in which."""
    where: dict[str, list[str]] = defaultdict(list)
    for name, module in of.items():
        for node in ast.walk(module.tree):
            if isinstance(node, ast.ClassDef) and name not in where[node.name]:
                where[node.name].append(name)
    return {name: homes for name, homes in where.items() if len(homes) > 1}


def snapshot_pulls(of: Mapping[str, Module]) -> list[str]:
    """Calls of `….snapshot()` in the application, as file:line."""
    return [
        f"{_file(module)}:{node.lineno}"
        for name, module in of.items()
        if name.startswith("app.")
        for node in ast.walk(module.tree)
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Attribute)
        and node.func.attr == "snapshot"
    ]


def _file(module: Module) -> str:
    """From the root on."""
    depth = module.name.count(".") + (2 if module.is_package else 1)
    return "/".join(module.path.parts[-depth:])


@dataclass(frozen=True, eq=False)
class Accessor:
    """A method that only hands out something of its object."""

    module: str
    home: ast.ClassDef
    name: str


def accessors(of: Mapping[str, Module]) -> list[Accessor]:
    return [
        Accessor(name, one, function.name)
        for name, module in of.items()
        for one in ast.walk(module.tree)
        if isinstance(one, ast.ClassDef)
        for function in one.body
        if isinstance(function, ast.FunctionDef) and _hands_out(function)
    ]


def _hands_out(function: ast.FunctionDef) -> bool:
    body = [one for one in function.body if not (isinstance(one, ast.Expr) and _is_text(one.value))]
    if len(body) != 1 or not isinstance(body[0], ast.Return) or body[0].value is None:
        return False
    value = body[0].value
    if isinstance(value, ast.Call) and not value.args and not value.keywords:
        value = value.func
    if not isinstance(value, ast.Attribute):
        return False
    while isinstance(value, ast.Attribute):
        value = value.value
    return isinstance(value, ast.Name) and value.id == "self"


def unused_accessors(of: Mapping[str, Module]) -> list[tuple[str, str]]:
    """(module, Class.name) of those the product names nowhere but in their own class.

    Left out: what Python calls by itself (`__len__`) and what Qt calls (`sizeHint`).
    """
    used: Counter[str] = Counter()
    for module in of.values():
        used += _looked_up(module.tree)
    within = {one.home: _looked_up(one.home) for one in accessors(of)}
    return [
        (one.module, f"{one.home.name}.{one.name}")
        for one in accessors(of)
        if not _called_from_outside(one.name) and used[one.name] == within[one.home][one.name]
    ]


def _looked_up(tree: ast.AST) -> Counter[str]:
    return Counter(node.attr for node in ast.walk(tree) if isinstance(node, ast.Attribute))


def _called_from_outside(name: str) -> bool:
    return name.startswith("__") or name != name.lower()


def speaking(of: Mapping[str, Module], imports: Imports) -> list[str]:
    """Modules of the computation that import the language and are no `words`."""
    language = {name for name in of if MARKING in definitions(of[name])}
    return [
        name
        for name, module in of.items()
        if name.startswith("core.")
        and not name.rpartition(".")[2].endswith("words")
        and language & imports.of(module)
    ]


def function_lengths(of: Mapping[str, Module]) -> list[int]:
    return [
        (node.end_lineno or node.lineno) - node.lineno + 1
        for module in of.values()
        for node in ast.walk(module.tree)
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef)
    ]


def imported_by_one(graph: Mapping[str, set[str]]) -> dict[str, str]:
    """Each module that a single other one imports, with that other."""
    users = _users(graph)
    return {name: min(users[name]) for name in sorted(graph) if len(users[name]) == 1}


def imported_by_none(graph: Mapping[str, set[str]]) -> list[str]:
    """Those that are started (`__main__`) excepted."""
    users = _users(graph)
    return sorted(one for one in graph if not users[one] and not one.endswith("__main__"))


def _users(graph: Mapping[str, set[str]]) -> dict[str, set[str]]:
    return {name: {user for user in graph if name in graph[user]} for name in graph}


# The table.


def share(values: Iterable[int], of_all: float) -> int:
    """The value that so large a share of all does not exceed."""
    ordered = sorted(values)
    return ordered[min(len(ordered) - 1, int(of_all * len(ordered)))] if ordered else 0


def measured(root: Path) -> dict[str, Any]:
    """Every figure by its name; lists of names where there is something to look for."""
    found = modules(root)
    imports = Imports(found)
    graph = {name: imports.of(module) for name, module in found.items()}
    eager = {name: imports.of(module, lazy=False) for name, module in found.items()}
    sums: Counter[str] = Counter()
    for module in found.values():
        sums += lines(module)
    sizes = [len(module.text.splitlines()) for module in found.values()]
    counts = [len(others) for others in graph.values()]
    names = shared_class_names(found)
    lengths = function_lengths(found)
    return {
        "modules": len(found),
        "modules of core": sum(name.startswith("core") for name in found),
        "lines": sum(sizes),
        "lines of code": sums["code"],
        "lines of imports": sums["import"],
        "blank lines": sums["blank"],
        "lines of docstrings and comments": sums["docstring"] + sums["comment"],
        "lines per module, median": share(sizes, 0.5),
        "lines per module, 90 %": share(sizes, 0.9),
        "modules per 10,000 lines": round(10_000 * len(found) / max(sum(sizes), 1)),
        "own imports, median": share(counts, 0.5),
        "own imports, 90 %": share(counts, 0.9),
        "own imports, most": sorted(((len(v), k) for k, v in graph.items()), reverse=True)[:10],
        "modules imported by one other": imported_by_one(graph),
        "modules imported by none": imported_by_none(graph),
        "circles": circles(graph),
        "circles without lazy imports": circles(eager),
        "class names shared": {k: v for k, v in names.items() if not k.startswith("_")},
        "private class names shared": {k: v for k, v in names.items() if k.startswith("_")},
        "snapshot pulls": snapshot_pulls(found),
        "accessors of one line": len(accessors(found)),
        "accessors that the product does not use": unused_accessors(found),
        "files of core that speak outside words": speaking(found, imports),
        "lines per function, median": share(lengths, 0.5),
        "lines per function, 90 %": share(lengths, 0.9),
        f"functions over {LONG_FUNCTION} lines": sum(length > LONG_FUNCTION for length in lengths),
    }


def table(figures: Mapping[str, Any]) -> str:
    """A line for each figure; of a list its length, then what it holds."""
    told = []
    for name, value in figures.items():
        if isinstance(value, list | dict):
            told.append(f"{name:44s} {len(value)}")
            items = value.items() if isinstance(value, dict) else value
            told += [f"    {_item(one)}" for one in items]
        else:
            told.append(f"{name:44s} {value}")
    return "\n".join(told)


def _item(one: Any) -> str:
    return " ".join(map(str, one)) if isinstance(one, tuple | list) else str(one)


def main() -> int:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else "")
    parser.add_argument("--root", type=Path, default=Path(__file__).resolve().parents[1])
    parser.add_argument("--json", action="store_true")
    parser.add_argument("--run", action="store_true", help="start that program too")
    given = parser.parse_args()
    figures = measured(given.root)
    if given.run:
        script = Path(__file__).with_name("structure_run.py")
        ran = subprocess.run(
            [sys.executable, str(script)],
            cwd=given.root,
            stdout=subprocess.PIPE,
            text=True,
            check=True,
        )
        figures |= json.loads(ran.stdout.splitlines()[-1])
    print(json.dumps(figures, indent=1) if given.json else table(figures))
    return 0


if __name__ == "__main__":
    sys.exit(main())
