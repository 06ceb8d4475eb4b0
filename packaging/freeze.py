"""Build the frozen program and try it: python3 packaging/freeze.py [--wheels FOLDER]

The result is the folder dist/poleward, for systems like this one with no older C library.
"""

import sys

from firstrun import interpreter

if __name__ == "__main__":
    interpreter.become_new_enough(sys.argv)
    from freezing import building

    sys.exit(building.main(sys.argv[1:]))
