"""Whole lines out of bytes that come in pieces."""

from __future__ import annotations


class LineCutter:
    """Lines end with a line feed, a carriage return, or both. `rest`: the line not yet ended."""

    def __init__(self) -> None:
        self.rest = b""
        self._ended_by_return = False

    def cut(self, piece: bytes) -> list[bytes]:
        """The lines that the piece ends, without their ends."""
        if not piece:
            return []
        if self._ended_by_return:
            piece = piece.removeprefix(b"\n")  # of a pair that was torn apart
        self._ended_by_return = piece.endswith(b"\r")
        piece = piece.replace(b"\r\n", b"\n").replace(b"\r", b"\n")
        *lines, self.rest = (self.rest + piece).split(b"\n")
        return lines
