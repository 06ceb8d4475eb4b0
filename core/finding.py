"""What a computation has to tell a person: a code of its subject, and the numbers with it.

Whatever computes returns and raises these and knows no language. The sentences of a subject stand
in its `words` module, by code; `core.language.sentence` puts the two together.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from enum import Enum


class Code(Enum):
    """Something that can be told: a code defined in `core.mount.…` is worded in `core.mount.words`.

    Values are short names in English for logs and tests, never shown.
    """


@dataclass(frozen=True)
class Finding:
    """`values`: what the sentence names, by field; a Code or Finding among them is worded too."""

    code: Code
    values: Mapping[str, object] = field(default_factory=dict)


def found(code: Code, /, **values: object) -> Finding:
    """A finding with the fields of its sentence."""
    return Finding(code, values)


class Refused(ValueError):
    """What cannot be done with what was given; `finding` says why."""

    def __init__(self, code: Code, /, **values: object) -> None:
        super().__init__(code, values)
        self.finding = Finding(code, values)

    def __str__(self) -> str:
        """For logs; a person reads `core.language.sentence`."""
        return f"{self.finding.code.value} {self.finding.values or ''}".strip()
