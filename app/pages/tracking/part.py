"""A part of the answer: what was found, or the sentence that says why nothing was."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from typing import Generic, TypeVar

T = TypeVar("T")


@dataclass(frozen=True, eq=False)
class Part(Generic[T]):
    """`value` None and `problem` empty: nothing was asked. `key`: what it was made from."""

    value: T | None = None
    problem: str = ""
    key: tuple[object, ...] = ()

    def words(self, said: Callable[[T], str]) -> str:
        """What is said of the value, else the problem."""
        return self.problem if self.value is None else said(self.value)


def part_of(old: Part[T] | None, key: tuple[object, ...], make: Callable[[], T | None]) -> Part[T]:
    """`old` again when it was made from the same; a ValueError of `make` becomes the problem."""
    if old is not None and old.key == key:
        return old
    try:
        return Part(make(), "", key)
    except ValueError as reason:
        return Part(None, str(reason), key)
