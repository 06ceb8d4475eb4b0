"""Equipment invented for tests; no real product."""

from core.mount.equipment import (
    Accessory,
    Camera,
    Counterweight,
    EquipmentSet,
    Eyepiece,
    Guider,
    Inventory,
    Mount,
    MountingPlace,
    MountKind,
    Purpose,
    Telescope,
)

MOUNT = Mount(
    key="mount-1",
    name="Garden mount",
    is_invented=True,
    kind=MountKind.GERMAN_EQUATORIAL,
    is_driven=True,
    has_goto=True,
    has_autoguider_port=True,
    capacity_kg=15.0,
    capacity_distance_mm=200.0,
    own_mass_kg=12.0,
    periodic_error_arcsec=20.0,
    saddle_distance_mm=150.0,
    saddle_length_mm=120.0,
    bar_start_mm=120.0,
    bar_length_mm=300.0,
    bar_mass_kg=1.2,
)
TUBE = Telescope(
    key="tube-1",
    name="Short refractor",
    is_invented=True,
    mass_kg=4.0,
    along_mm=0.0,
    height_mm=70.0,
    focal_length_mm=600.0,
    aperture_mm=100.0,
    length_mm=550.0,
    diameter_mm=110.0,
    dovetail_length_mm=300.0,
    flexure_arcsec_per_g=6.0,
)
CAMERA = Camera(
    key="camera-1",
    name="Cooled camera",
    is_invented=True,
    mass_kg=1.0,
    along_mm=-320.0,
    height_mm=70.0,
    pixel_um=3.8,
    width_px=6000,
    height_px=4000,
)
GUIDER = Guider(
    key="guider-1",
    name="Guide scope",
    is_invented=True,
    mass_kg=0.8,
    along_mm=50.0,
    height_mm=180.0,
    pixel_um=3.75,
    focal_length_mm=180.0,
)
EYEPIECE = Eyepiece(key="eyepiece-1", name="Wide eyepiece", focal_length_mm=24.0, mass_kg=0.3)
BOX = Accessory(key="box-1", name="Control box", place=MountingPlace.GROUND, mass_kg=2.0)
WHEEL = Accessory(
    key="wheel-1",
    name="Filter wheel",
    is_planned=True,
    mass_kg=3.5,
    along_mm=-280.0,
    height_mm=70.0,
)
WEIGHT = Counterweight(key="weight-1", name="Round weight", mass_kg=5.0, thickness_mm=40.0)
SET = EquipmentSet(
    key="set-1",
    name="Nebulae",
    purpose=Purpose.DEEP_SKY,
    mount="mount-1",
    parts=("tube-1", "camera-1", "guider-1", "box-1", "wheel-1", "weight-1"),
)
INVENTORY = Inventory(
    (MOUNT, TUBE, CAMERA, GUIDER, EYEPIECE, BOX, WHEEL, WEIGHT), (SET,), {"made by": "hand"}
)
