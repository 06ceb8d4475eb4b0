"""What a computation has to tell a person: a code of its subject, and the numbers with it.

Whatever computes returns and raises these and knows no language. The sentences of a subject stand
in its `words` module, by code; `str` puts the two together when someone reads them.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from enum import Enum
from functools import cache
from importlib import import_module

from core.language import say

# A template, or what makes the sentence of the values where one template is not enough.
Wording = str | Callable[..., str]


class Code(Enum):
    """Something that can be told; the value is a short name for logs, files and tests.

    A code defined anywhere in `core.sky` is worded in `core.sky.words.SENTENCES`; so for every
    subject. `str` gives the words in the person's language.
    """

    def __str__(self) -> str:
        return str(Finding(self))


@dataclass(frozen=True)
class Finding:
    """`values`: what the sentence names, by field. `str` gives the sentence."""

    code: Code
    values: Mapping[str, object] = field(default_factory=dict)

    @classmethod
    def of(cls, code: Code, /, **values: object) -> Finding:
        """With the fields of its sentence."""
        return cls(code, values)

    def __str__(self) -> str:
        wording = _sentences(type(self.code).__module__.split(".")[1])[self.code]
        if isinstance(wording, str):
            return say(wording, **self.values)
        return wording(**self.values)


class Refused(ValueError):
    """What cannot be done with what was given; `finding` says why, `str` its sentence."""

    def __init__(self, code: Code, /, **values: object) -> None:
        super().__init__(code, values)
        self.finding = Finding(code, values)

    def __str__(self) -> str:
        return str(self.finding)


class BrokenInstallation(Refused, RuntimeError):
    """A file that came with the program is missing or damaged."""


@cache
def _sentences(subject: str) -> Mapping[Code, Wording]:
    table: Mapping[Code, Wording] = import_module(f"core.{subject}.words").SENTENCES
    return table
