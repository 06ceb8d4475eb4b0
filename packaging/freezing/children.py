"""Runs first in the frozen program: other programs it starts load the system's own libraries.

The frozen program is started with its folder in the search path of libraries; a player of sounds
or the keeper of the screen, started by it, would find the wrong ones there.
"""

import os

for name in ("LD_LIBRARY_PATH", "DYLD_LIBRARY_PATH"):
    own = os.environ.pop(f"{name}_ORIG", None)
    if own is not None:
        os.environ[name] = own
    else:
        os.environ.pop(name, None)
