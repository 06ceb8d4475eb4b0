"""The time a sub-command is asked for: a text behind `--utc`, or now."""

from __future__ import annotations

from core.sky.clock import parse_utc

# The series for the Sun, the Moon and the planets (ERFA's) are made for these years.
EARLIEST_UTC_S = -30_610_224_000.0  # 1000-01-01
LATEST_UTC_S = 32_503_680_000.0  # 3000-01-01


class UnusableTime(ValueError):
    """The text is a sentence for the person."""


def moment(text: str | None, now_utc_s: float) -> float:
    """Unix time of an ISO 8601 text; now without one. Raises UnusableTime."""
    if text is None:
        return now_utc_s
    try:
        utc_s = parse_utc(text)
    except ValueError as sentence:
        raise UnusableTime(str(sentence)) from None
    if not EARLIEST_UTC_S <= utc_s < LATEST_UTC_S:
        raise UnusableTime(
            f"--utc “{text.strip()[:40]}” is not within the years 1000 to 2999, for which places "
            "in the sky can be computed; correct it."
        )
    return utc_s
