"""What the equipment in use says of the figures that a plan needs."""

from __future__ import annotations

from app.session.equipment import Equipment
from core.mount.equipment import Camera, Mount

OF_MOUNT = {
    "drive_deg_per_s": "drive_limit_deg_per_s",
    "past_meridian_deg": "past_meridian_deg",
}
OF_CAMERA = {"frame_width_px": "width_px", "frame_height_px": "height_px"}


def known_of(equipment: Equipment, name: str) -> float | str | None:
    """A figure or word by the name the plan has for it; None where it is not known."""
    chosen = equipment.set_in_use()
    if chosen is None:
        return None
    mount = equipment.inventory.mount_of(chosen)
    if name == "purpose":
        return chosen.purpose.name
    if name == "mount_kind":
        return None if mount is None else mount.kind.name
    if name in OF_MOUNT:
        return _figure(mount, OF_MOUNT[name])
    if name in OF_CAMERA:
        parts = equipment.inventory.parts_of(chosen, with_planned=False)
        camera = next((part for part in parts if type(part) is Camera), None)
        return _figure(camera, OF_CAMERA[name])
    return None


def _figure(thing: Mount | Camera | None, name: str) -> float | None:
    value = getattr(thing, name, None)
    return None if value is None else float(value)
