"""What a person is told when the libraries cannot be had."""

from pathlib import Path

import pytest

from firstrun.wheels import explain

NO_NAME = """WARNING: Retrying (Retry(total=0, connect=None)) after connection broken by
'NewConnectionError('<urllib3>: Failed to establish a new connection: [Errno -3]')': /simple/x/
ERROR: Could not find a version that satisfies the requirement scipy==1.17.1 (from versions: none)
ERROR: No matching distribution found for scipy==1.17.1
"""
NO_WHEEL = """ERROR: Could not find a version that satisfies the requirement scipy==1.17.1
ERROR: No matching distribution found for scipy==1.17.1
"""
FULL = "ERROR: Could not install packages due to an OSError: [Errno 28] No space left on device\n"


@pytest.mark.parametrize(
    ("errors", "folder", "said"),
    [
        (NO_NAME, None, "Connect this computer once"),
        (NO_NAME, None, "--wheels FOLDER"),
        (NO_NAME, None, "-r packaging/requirements.txt"),
        (NO_WHEEL, None, "no ready-built scipy==1.17.1 for this Python"),
        (NO_WHEEL, Path("stick"), "The folder stick holds no wheel of scipy==1.17.1"),
        (FULL, None, "The disk is full"),
        (FULL, Path("stick"), "The disk is full"),
        ("ERROR: something\nERROR: unheard of\n\n", None, "ERROR: unheard of"),
        ("", None, "no reason given"),
    ],
)
def test_explanation(errors, folder, said):
    assert said in explain(errors, "requirements.txt", folder)
