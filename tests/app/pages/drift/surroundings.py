"""What the Drift page needs besides, for a computer that offers nothing."""

from app.session.fieldinview import FieldInView
from app.signals.awake import Awake
from tests.app.session.memory import Memory


def seen_by() -> tuple[FieldInView, Awake]:
    """A field nobody typed, and no way to keep the screen on."""
    return FieldInView(Memory()), Awake(lambda: [])
