"""Put Poleward into the menu of a Linux desktop: python3 packaging/menu.py

Writes poleward.desktop, with the place of this checkout filled in, into the person's own
applications folder. Run it again after moving the checkout; delete that file to undo it.
"""

import os
import re
from pathlib import Path

HERE = Path(__file__).resolve().parent


def quoted(argument: str) -> str:
    """An argument of an Exec line (Desktop Entry Specification, "The Exec key").

    Reserved characters are escaped for the quotes, then backslashes once more for the string
    value, and a percent sign is doubled because it would begin a field code.
    """
    escaped = re.sub(r'(["`$\\])', r"\\\1", argument).replace("\\", "\\\\")
    return f'"{escaped.replace("%", "%%")}"'


def entry(template: str, start: Path) -> str:
    """The template with the full path of the start script in its command."""
    command = f"Exec=python3 {quoted(str(start))}"
    return re.sub(r"^Exec=.*$", lambda _: command, template, flags=re.MULTILINE)


def main() -> None:
    shared = Path(os.environ.get("XDG_DATA_HOME") or "~/.local/share").expanduser()
    target = shared / "applications" / "poleward.desktop"
    target.parent.mkdir(parents=True, exist_ok=True)
    text = entry((HERE / "poleward.desktop").read_text("utf-8"), HERE / "start.py")
    target.write_text(text, "utf-8")
    print(f"Poleward is in the menu now ({target}).")


if __name__ == "__main__":
    main()
