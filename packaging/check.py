"""Run every check of Poleward: python3 packaging/check.py [--wheels FOLDER] [pytest arguments]

Exit code 0 only when style, types and tests are all in order and at least one test ran.
"""

import sys

from firstrun import interpreter

if __name__ == "__main__":
    interpreter.become_new_enough(sys.argv)
    from firstrun import checking

    sys.exit(checking.main(sys.argv[1:]))
