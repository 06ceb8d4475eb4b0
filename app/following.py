"""What tonight's session follows without being asked: the mount in use."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from app.session.equipment import Equipment
    from app.session.session import Session


def follow_mount(session: Session, equipment: Equipment) -> None:
    """What turns teach of the bolts is kept with the mount of the set in use."""

    def tell() -> None:
        chosen = equipment.set_in_use()
        session.use_mount(None if chosen is None else equipment.inventory.mount_of(chosen))

    equipment.changed.connect(tell)
    tell()
