"""Try a frozen program as on a fresh computer: python3 packaging/smoke.py dist/poleward/poleward"""

import sys

from firstrun import interpreter

if __name__ == "__main__":
    interpreter.become_new_enough(sys.argv)
    from firstrun import handover
    from freezing import trial

    sys.exit(handover.in_words(lambda: trial.main(sys.argv[1:])))
