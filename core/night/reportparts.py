"""The parts a night's report is made of, no markup in them: tables, pictures, sections."""

from __future__ import annotations

from dataclasses import dataclass

from core.night.reportplot import Plot


@dataclass(frozen=True)
class Table:
    """Rows of texts; without a header the first column names what the second says."""

    header: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    title: str = ""


@dataclass(frozen=True)
class Picture:
    """A picture dropped into the night."""

    name: str
    caption: str
    media_type: str
    data: bytes


@dataclass(frozen=True, eq=False)
class Section:
    """A heading and what stands under it, in this order."""

    title: str
    paragraphs: tuple[str, ...] = ()
    tables: tuple[Table, ...] = ()
    plots: tuple[Plot, ...] = ()
    pictures: tuple[Picture, ...] = ()
