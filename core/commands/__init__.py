"""The sub-commands of `python -m core`, one file each."""
