"""The Qt palette of a look, so that whatever no style sheet reaches is still in its colours."""

from __future__ import annotations

from PySide6.QtGui import QColor, QPalette

from app.theme.look import Colour, Look

Role = QPalette.ColorRole


def palette(look: Look) -> QPalette:
    """Every role is set: a role left out would be derived by Qt, with blue in it at night."""
    made = QPalette()
    for role, colour in _roles(look).items():
        made.setColor(role, QColor(colour))
    for role in (Role.WindowText, Role.Text, Role.ButtonText, Role.HighlightedText):
        made.setColor(QPalette.ColorGroup.Disabled, role, QColor(look.edge))
    made.setColor(QPalette.ColorGroup.Disabled, Role.Highlight, QColor(look.hover))
    return made


def _roles(look: Look) -> dict[QPalette.ColorRole, Colour]:
    return {
        Role.Window: look.ground,
        Role.WindowText: look.text,
        Role.Base: look.well,
        Role.AlternateBase: look.panel,
        Role.Text: look.text,
        Role.PlaceholderText: look.quiet,
        Role.Button: look.panel,
        Role.ButtonText: look.text,
        Role.BrightText: look.alarm,
        Role.ToolTipBase: look.panel,
        Role.ToolTipText: look.text,
        Role.Highlight: look.chosen,
        Role.HighlightedText: look.text,
        Role.Accent: look.accent,
        Role.Link: look.accent,
        Role.LinkVisited: look.accent,
        Role.Light: look.line,
        Role.Midlight: look.line,
        Role.Mid: look.line,
        Role.Dark: look.line,
        Role.Shadow: look.well,
    }
