"""Waiting until the Field rotation page has worked out what was asked."""

from app.pages.rotation.page import RotationPage

WORKED_OUT_MS = 20_000


def after(qtbot, page: RotationPage, do) -> None:
    with qtbot.waitSignal(page.worked_out, timeout=WORKED_OUT_MS):
        do()
