"""Writes legs as a drift log, so that reading it back gives the same legs."""

from __future__ import annotations

import io
import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from core.alignment.driftlog.forms import OPTIONAL, REQUIRED
from core.alignment.driftlog.headlines import RANGES
from core.alignment.driftlog.records import Extras, Floats, Header, Leg, UnusableLog
from core.language import say
from core.sky.clock import format_utc


def write(header: Header, legs: Sequence[Leg], extras: Sequence[Extras] = ()) -> str:
    """The text of a log. Times are kept to the microsecond, numbers exactly.

    `extras`: texts (n,) of further columns for each leg, as `DriftLog.extras` has them. Raises
    UnusableLog, a sentence, when legs lack a label or share one.
    """
    labels = [_one_line(leg.label) for leg in legs]
    if not all(labels) or len(set(labels)) < len(labels):
        raise UnusableLog(say("The legs were not written: each needs a label of its own."))
    form = _Form(
        tuple(name for name in OPTIONAL if any(getattr(leg, name) is not None for leg in legs)),
        tuple(dict.fromkeys(name for texts in extras for name in texts)),
    )
    text = io.StringIO()
    text.writelines(f"# {line}\n" for line in _head_lines(header))
    text.write(",".join([*REQUIRED, *form.optional, *map(_field, form.extra)]) + "\n")
    for index, leg in enumerate(legs):
        texts = extras[index] if index < len(extras) else {}
        text.writelines(f"{row}\n" for row in form.rows(leg, texts))
    return text.getvalue()


@dataclass(frozen=True)
class _Form:
    """Names of the columns beyond the required ones."""

    optional: tuple[str, ...]
    extra: tuple[str, ...]

    def rows(self, leg: Leg, texts: Extras) -> Iterator[str]:
        star = f"{float(leg.ra_deg)!r},{float(leg.dec_deg)!r}"
        label = _field(_one_line(leg.label))
        blank = ("",) * leg.utc_s.size
        columns = (
            map(format_utc, leg.utc_s.tolist()),
            map(repr, leg.north_arcsec.tolist()),
            *(_numbers(getattr(leg, name), leg.utc_s.size) for name in self.optional),
            *(map(_field, texts.get(name, blank)) for name in self.extra),
        )
        for utc, *rest in zip(*columns, strict=True):
            yield ",".join([label, utc, star, *rest])


def _numbers(values: Floats | None, count: int) -> Iterator[str]:
    if values is None:
        return iter([""] * count)
    return ("" if math.isnan(value) else repr(value) for value in values.tolist())


def _head_lines(header: Header) -> Iterator[str]:
    values = {**vars(header), **header.stated_priors}
    for name in RANGES:
        value = values.get(name)
        if value is not None:
            yield f"{name}: {float(value)!r}"
    for key, value in header.other:
        yield f"{_one_line(key)}: {_one_line(value)}"
    yield from map(_one_line, header.notes)


def _field(text: str) -> str:
    plain = " ".join(text.splitlines())
    if plain.startswith("#") or any(mark in plain for mark in ',"'):
        return '"' + plain.replace('"', '""') + '"'
    return plain


def _one_line(text: str) -> str:
    return " ".join(text.split())
