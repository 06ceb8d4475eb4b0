"""What the checklist knows of the equipment."""

from dataclasses import replace

from app.night.equipment import Equipment
from app.pagetable import known_facts
from core.mount.examples import INVENTED_INVENTORY
from core.night.checklist import KnownFact
from tests.app.night.memory import Memory


def test_the_load_counts_as_checked_by_the_share_the_person_keeps_to() -> None:
    equipment = Equipment(Memory())
    equipment.take(INVENTED_INVENTORY)
    purpose = equipment.set_in_use().purpose
    facts = known_facts(equipment)
    seen = {}
    for share in (0.2, 1.0):
        equipment.adjust(purpose, replace(equipment.adjusted(purpose), share=share))
        seen[share] = KnownFact.LOAD_CHECKED in facts()
    assert seen == {0.2: False, 1.0: True}
