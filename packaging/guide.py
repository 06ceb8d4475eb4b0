"""Writes the parts of DEVELOPERS.md that the code itself knows: the folders and the procedure.

python packaging/guide.py          writes them
python packaging/guide.py --check  tells, by its exit code, whether they are as they should be
"""

import ast
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
GUIDE = ROOT / "DEVELOPERS.md"
FOLDERS = ("core", "app")
sys.path.insert(0, str(ROOT))

from core.alignment.guide.procedure import diagram  # noqa: E402  the checkout is not installed


def folders() -> str:
    """One line a folder: its path and the first sentence of its package."""
    lines = []
    for top in FOLDERS:
        for path in sorted((ROOT / top).rglob("__init__.py")):
            name = path.parent.relative_to(ROOT).as_posix()
            summary = (ast.get_docstring(ast.parse(path.read_text("utf-8"))) or "").split("\n")[0]
            lines.append(f"- `{name}` {summary}")
    return "\n".join(lines) + "\n"


def filled(text: str) -> str:
    """The guide with both parts as the code has them now."""
    for mark, content in (("folders", folders()), ("procedure", f"```mermaid\n{diagram()}```\n")):
        begin, end = f"<!-- {mark}: written by packaging/guide.py -->\n", f"<!-- /{mark} -->"
        before, _, rest = text.partition(begin)
        _, _, after = rest.partition(end)
        text = before + begin + content + end + after
    return text


if __name__ == "__main__":
    wanted = filled(GUIDE.read_text("utf-8"))
    if "--check" in sys.argv:
        sys.exit(0 if wanted == GUIDE.read_text("utf-8") else "Run: python packaging/guide.py")
    GUIDE.write_text(wanted, "utf-8")
