"""Open Poleward on any machine: python3 packaging/start.py [--wheels FOLDER] [arguments]

Makes a virtual environment of its own at the first start. Arguments go to the program.
"""

import sys

from firstrun import interpreter

if __name__ == "__main__":
    interpreter.become_new_enough(sys.argv)
    from firstrun import opening

    sys.exit(opening.main(sys.argv[1:]))
