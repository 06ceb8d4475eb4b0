"""What a sub-command found, brought to whoever asked: a terminal, a file, another program."""

from __future__ import annotations

import os
from typing import TextIO


class Undelivered(Exception):
    """The text did not arrive; the message is a sentence for the person."""


def deliver(text: str, stream: TextIO | None) -> None:
    """Writes all of `text`; a reader that has seen enough and left is no error.

    `stream`: None where the program was started with it closed. Raises Undelivered.
    """
    if stream is None:
        raise Undelivered(
            "The result could not be shown: the program was started with its output closed. "
            "Start it again with an open one, or send the output to a file."
        )
    try:
        stream.write(text)
        stream.flush()
    except BrokenPipeError:
        _abandon(stream)
    except OSError as error:
        _abandon(stream)
        raise Undelivered(
            f"The result could not be written ({error.strerror or error}); "
            "make room there, or send it elsewhere."
        ) from error


def _abandon(stream: TextIO) -> None:
    """What is left in the stream goes nowhere, or its own last flush would fail aloud."""
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, stream.fileno())
    os.close(nowhere)
