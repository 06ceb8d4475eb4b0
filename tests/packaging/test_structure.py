"""The figures of the structure, each on a tree small enough to count by hand."""

from __future__ import annotations

from pathlib import Path

import pytest

import structure


@pytest.fixture
def tree(tmp_path: Path):
    def write(**files: str) -> dict[str, structure.Module]:
        """`core__sky__site="…"` is core/sky/site.py."""
        for name, text in files.items():
            path = tmp_path.joinpath(*name.split("__")).with_suffix(".py")
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(text, encoding="utf-8")
        return structure.modules(tmp_path)

    return write


def test_a_name_is_traced_through_whoever_hands_it_on(tree) -> None:
    found = tree(
        core__site="class Site: ...",
        core__front="from core.site import Site",
        core__user="from core.front import Site",
    )
    assert structure.Imports(found).of(found["core.user"]) == {"core.site"}


def test_imports_in_functions_count_and_twice_the_same_is_one(tree) -> None:
    found = tree(
        core__site="class Site: ...\nclass Air: ...",
        core__user="from core.site import Site\ndef f():\n    from core.site import Air\n",
        core__late="def f():\n    from core.site import Air\n",
    )
    imports = structure.Imports(found)
    assert imports.of(found["core.user"]) == {"core.site"}
    assert imports.of(found["core.late"]) == {"core.site"}
    assert imports.of(found["core.late"], lazy=False) == set()


def test_a_package_that_hands_on_is_seen_through(tree, tmp_path: Path) -> None:
    tree(core__sky__site="class Site: ...")
    front = tmp_path / "core" / "sky" / "__init__.py"
    front.write_text("from core.sky.site import Site as Place", encoding="utf-8")
    found = tree(core__user="from core.sky import Place")
    assert structure.Imports(found).of(found["core.user"]) == {"core.sky.site"}


def test_imports_for_types_count_but_not_at_load_and_tried_ones_do(tree) -> None:
    found = tree(
        core__site="class Site: ...",
        core__typed="if TYPE_CHECKING:\n    from core.site import Site\n",
        core__tried="try:\n    from core.site import Site\nexcept ImportError: ...\n",
    )
    imports = structure.Imports(found)
    assert imports.of(found["core.typed"]) == {"core.site"}
    assert imports.of(found["core.typed"], lazy=False) == set()
    assert imports.of(found["core.tried"], lazy=False) == {"core.site"}


def test_who_is_imported_by_one_and_by_none() -> None:
    graph = {"a": {"b", "c"}, "b": {"c"}, "c": set(), "app.__main__": {"a"}, "d": {"c"}}
    assert structure.imported_by_one(graph) == {"a": "app.__main__", "b": "a"}
    assert structure.imported_by_none(graph) == ["d"]


def test_a_circle_is_found_with_all_who_are_in_it() -> None:
    graph = {"a": {"b"}, "b": {"c"}, "c": {"a"}, "d": {"a"}, "e": set()}
    assert structure.circles(graph) == [["a", "b", "c"]]
    assert structure.circles({"a": {"b"}, "b": set()}) == []


def test_class_names_of_two_modules_are_found(tree) -> None:
    found = tree(core__a="class Night: ...\nclass Leg: ...", app__b="class Night: ...")
    assert structure.shared_class_names(found) == {"Night": ["core.a", "app.b"]}


def test_twice_the_same_class_name_in_one_module_is_not_shared(tree) -> None:
    found = tree(core__a="class One:\n    class Kind: ...\nclass Two:\n    class Kind: ...\n")
    assert structure.shared_class_names(found) == {}


PANEL = '''
class Panel:
    def text(self):
        """What is read."""
        return self._label.text()
    def longer(self):
        return self._label.text() + "!"
    def named(self):
        return self.find("x")
    def __len__(self):
        return self._count
    def sizeHint(self):
        return self._label.sizeHint()
'''


def test_a_method_that_only_hands_out_is_an_accessor(tree) -> None:
    found = tree(app__panel=PANEL)
    names = [one.name for one in structure.accessors(found)]
    assert names == ["text", "__len__", "sizeHint"]


def test_an_accessor_named_in_its_own_class_alone_is_unused(tree) -> None:
    alone = tree(app__panel=PANEL)
    assert structure.unused_accessors(alone) == [("app.panel", "Panel.text")]
    used = tree(app__user="panel.text()")
    assert structure.unused_accessors(used) == []


def test_every_line_is_of_one_kind(tree) -> None:
    text = '"""What it is."""\n\nimport math\n\n# why\nPI = math.pi  # as it is\n'
    found = tree(core__numbers=text)
    assert structure.lines(found["core.numbers"]) == {
        "docstring": 1,
        "blank": 2,
        "import": 1,
        "comment": 1,
        "code": 1,
    }


def test_who_computes_and_speaks_is_named_and_words_may(tree) -> None:
    found = tree(
        core__language="def marked(text): return text",
        core__sky__words="from core.language import marked",
        core__sky__pole="from core.language import marked",
    )
    assert structure.speaking(found, structure.Imports(found)) == ["core.sky.pole"]


def test_pulls_are_counted_where_they_stand(tree) -> None:
    found = tree(app__page="def show(session):\n    return session.snapshot().legs\n")
    assert structure.snapshot_pulls(found) == ["app/page.py:2"]
