"""Lines out of pieces, wherever the pieces were torn."""

import pytest

from core.tracking.runlog import LineCutter

LINES = [b"one", b"", b"three", b"four"]


@pytest.mark.parametrize("end", [b"\n", b"\r", b"\r\n"])
@pytest.mark.parametrize("size", [1, 2, 3, 5, 100])
def test_the_pieces_make_no_difference(end: bytes, size: int) -> None:
    text = end.join([*LINES, b"not ended"])
    cutter = LineCutter()
    found = [line for at in range(0, len(text), size) for line in cutter.cut(text[at : at + size])]
    assert found == LINES
    assert cutter.rest == b"not ended"


def test_a_pair_torn_apart_by_a_silence_ends_one_line() -> None:
    cutter = LineCutter()
    assert [cutter.cut(piece) for piece in (b"one\r", b"", b"\ntwo\n")] == [[b"one"], [], [b"two"]]
