"""Gathers every sentence for the translators and makes the catalogues the program reads.

    python packaging/language.py                 # gather, keep what is translated, make catalogues
    python packaging/language.py --missing FILE  # write what is still to be translated, as JSON
    python packaging/language.py --take FILE ... # take translations from such files, then gather

A sentence is the literal argument of `tr`, `translate`, `say` or `marked`, or stands in the tables
of the checklist and the help. All have one context: a sentence means the same everywhere.
"""

from __future__ import annotations

import argparse
import ast
import json
import shutil
import subprocess
import sys
import xml.etree.ElementTree as ET
from collections.abc import Iterator
from pathlib import Path

ROOT = Path(__file__).parents[1]
sys.path.insert(0, str(ROOT))

from app.ui import help as help_texts  # noqa: E402
from app.ui import translation  # noqa: E402
from core.language import ENGLISH  # noqa: E402
from core.night import checklist  # noqa: E402

CALLS = {
    "tr": 0,
    "say": 0,
    "marked": 0,
    "translate": 1,
    "QT_TRANSLATE_NOOP": 1,
}  # which argument is the sentence
CODES = tuple(code for code in translation.NAMES if code != ENGLISH)


def sentences() -> dict[str, str]:
    """Every English sentence and the file it was first met in."""
    found: dict[str, str] = {}
    for top in ("core", "app"):
        for path in sorted((ROOT / top).rglob("*.py")):
            for text in _said(ast.parse(path.read_text(encoding="utf-8"))):
                found.setdefault(text, path.relative_to(ROOT).as_posix())
    for name, texts in (
        ("resources/checklist.json", checklist.source_texts()),
        ("resources/help_texts.json", help_texts.source_texts()),
    ):
        for text in texts:
            found.setdefault(text, name)
    return found


def _said(tree: ast.AST) -> Iterator[str]:
    for node in ast.walk(tree):
        if not isinstance(node, ast.Call):
            continue
        name = (
            node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        )
        place = CALLS.get(name)
        if place is None or len(node.args) <= place:
            continue
        argument = node.args[place]
        if (
            isinstance(argument, ast.Constant)
            and isinstance(argument.value, str)
            and argument.value
        ):
            yield argument.value


def source_of(code: str) -> Path:
    """The catalogue as people edit it."""
    return translation.FOLDER / f"poleward_{code}.ts"


def translated(code: str) -> dict[str, str]:
    """What the catalogue holds, finished sentences only."""
    path = source_of(code)
    if not path.exists():
        return {}
    held = {}
    for message in ET.parse(path).getroot().iter("message"):
        words = message.find("translation")
        if words is not None and words.text and words.get("type") != "unfinished":
            held[message.findtext("source", "")] = words.text
    return held


def write(code: str, held: dict[str, str]) -> None:
    """The catalogue as people edit it, in the order of the files, and as the program reads it."""
    root = ET.Element("TS", version="2.1", language=code, sourcelanguage="en")
    context = ET.SubElement(root, "context")
    ET.SubElement(context, "name").text = translation.CONTEXT
    for text, where in sorted(sentences().items(), key=lambda entry: (entry[1], entry[0])):
        message = ET.SubElement(context, "message")
        ET.SubElement(message, "location", filename=where)
        ET.SubElement(message, "source").text = text
        words = ET.SubElement(message, "translation")
        if text in held:
            words.text = held[text]
        else:
            words.set("type", "unfinished")
    ET.indent(root, " ")
    path = source_of(code)
    path.parent.mkdir(exist_ok=True)
    body = ET.tostring(root, encoding="unicode")
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', "utf-8")
    tool = shutil.which("pyside6-lrelease", path=str(Path(sys.executable).parent))
    if tool is None:
        raise SystemExit("pyside6-lrelease is not beside this Python: install PySide6 there.")
    made = path.with_suffix(".qm")
    subprocess.run([tool, "-silent", str(path), "-qm", str(made)], check=True)


def main() -> int:
    """0 when nothing is left to translate."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else None)
    parser.add_argument("--missing", type=Path, metavar="FILE")
    parser.add_argument("--take", type=Path, nargs="+", default=[], metavar="FILE")
    wanted = parser.parse_args()
    left = 0
    for code in CODES:
        held = translated(code)
        for path in wanted.take:
            held |= {a: b for a, b in json.loads(path.read_text("utf-8")).items() if b}
        write(code, held)
        missing = {text: "" for text in sentences() if text not in held}
        left += len(missing)
        print(f"{code}: {len(sentences()) - len(missing)} sentences, {len(missing)} missing")
        if wanted.missing:
            wanted.missing.write_text(json.dumps(missing, indent=1, ensure_ascii=False), "utf-8")
    return 1 if left else 0


if __name__ == "__main__":
    sys.exit(main())
