"""A night's report as one HTML file that needs nothing else: to read, to send, to print.

Markup and styles are those a plain document widget knows as well, apart from inline SVG:
`draw_plot` may put something else in its place.
"""

from __future__ import annotations

import base64
from collections.abc import Callable
from html import escape

from core.language import say, spoken
from core.night.reportnight import NightRecord
from core.night.reportparts import Picture, Section, Table
from core.night.reportplot import Plot
from core.night.reportsections import sections
from core.night.reportwords import SayTime, when

DrawPlot = Callable[[Plot], str]

_STYLE = """
body { font-family: sans-serif; color: #1b1b1b; background-color: #ffffff; margin: 24px; }
table { border-collapse: collapse; margin-bottom: 12px; }
td, th { border: 1px solid #8a8a8a; padding: 4px 8px; text-align: left; vertical-align: top; }
h1 { font-size: 22px; } h2 { font-size: 17px; margin-top: 22px; }
img { max-width: 100%; }
@media print { h2, svg, img, tr { page-break-inside: avoid; } h2 { page-break-after: avoid; } }
@media screen and (min-width: 908px) { body { width: 860px; margin: 24px auto; } }
"""
# Only what a browser shows as a still picture, and what cannot bring a script along.
_SHOWN = ("image/png", "image/jpeg", "image/gif", "image/webp", "image/bmp")


def inline_svg(plot: Plot) -> str:
    """The plot in the page itself."""
    return f"<p>{plot.svg()}</p>"


def html(night: NightRecord, say_time: SayTime = when, draw_plot: DrawPlot = inline_svg) -> str:
    """The file's text. `say_time` writes a Unix time for the reader."""
    place = night.site.name if night.site is not None and night.site.name else ""
    began = say_time(night.started_utc_s)
    title = say("Night of {time}", time=began)
    if place:
        title = say("Night of {time}, {place}", time=began, place=place)
    body = [_section(one, draw_plot) for one in sections(night, say_time)]
    return "\n".join(
        [
            "<!DOCTYPE html>",
            f'<html lang="{spoken()}"><head><meta charset="utf-8">',
            f"<title>{escape(title)}</title>",
            f"<style>{_STYLE}</style></head><body>",
            f"<h1>{escape(title)}</h1>",
            *body,
            "</body></html>\n",
        ]
    )


def _section(section: Section, draw_plot: DrawPlot) -> str:
    parts = [f"<h2>{escape(section.title)}</h2>"]
    parts += [f"<p>{escape(text)}</p>" for text in section.paragraphs]
    parts += [_table(table) for table in section.tables]
    parts += [draw_plot(plot) for plot in section.plots]
    parts += [_picture(picture) for picture in section.pictures]
    return "\n".join(parts)


def _table(table: Table) -> str:
    head = "".join(f"<th>{escape(cell)}</th>" for cell in table.header)
    lines = ["".join(f"<td>{escape(cell)}</td>" for cell in row) for row in table.rows]
    body = "".join(f"<tr>{line}</tr>\n" for line in ([head] if head else []) + lines)
    title = f"<p><b>{escape(table.title)}</b></p>\n" if table.title else ""
    return f'{title}<table border="1" cellspacing="0" cellpadding="4">\n{body}</table>'


def _picture(picture: Picture) -> str:
    caption = escape(picture.caption or picture.name)
    if picture.media_type not in _SHOWN:
        words = say(
            "{caption}: {name}, {size:.0f} kB, not shown here.",
            caption=picture.caption or picture.name,
            name=picture.name,
            size=len(picture.data) / 1e3,
        )
        return f"<p>{escape(words)}</p>"
    data = base64.b64encode(picture.data).decode("ascii")
    source = f"data:{picture.media_type};base64,{data}"
    return f'<p><img src="{source}" alt="{caption}" width="640"></p>\n<p>{caption}</p>'
