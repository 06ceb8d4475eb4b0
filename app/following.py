"""What tonight's session follows without being asked: mount and telescope in use."""

from __future__ import annotations

from typing import TYPE_CHECKING

from core.mount.equipment import Telescope

if TYPE_CHECKING:
    from app.session.equipment import Equipment
    from app.session.session import Session


def follow_equipment(session: Session, equipment: Equipment) -> None:
    """What turns teach of the bolts is kept with the mount of the set in use; the first telescope
    of that set is the one that is looked through.
    """

    def tell() -> None:
        chosen, inventory = equipment.set_in_use(), equipment.inventory
        if chosen is None:
            session.use_equipment(None, None)
            return
        carried = inventory.parts_of(chosen, with_planned=False)
        telescopes = (part for part in carried if isinstance(part, Telescope))
        session.use_equipment(inventory.mount_of(chosen), next(telescopes, None))

    equipment.changed.connect(tell)
    tell()
