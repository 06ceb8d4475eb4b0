"""The guide for developers names every module and draws the procedure as they are."""

import subprocess
import sys
from pathlib import Path

ROOT = Path(__file__).parents[1]


def test_the_guide_is_up_to_date():
    script = ROOT / "packaging" / "guide.py"
    done = subprocess.run(
        [sys.executable, str(script), "--check"], capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stderr


def test_every_module_says_in_a_sentence_what_it_is_for():
    guide = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    listed = [line for line in guide.splitlines() if line.lstrip().startswith("- `")]
    silent = [line for line in listed if len(line.split(".py` ")[1].split()) < 3]
    assert len(listed) > 50
    assert not silent
