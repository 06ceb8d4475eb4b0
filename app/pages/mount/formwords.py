"""What the forms for equipment ask, in which order, and how each figure is found."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from PySide6.QtCore import QCoreApplication

from core.mount.equipment import (
    Accessory,
    Camera,
    Counterweight,
    Eyepiece,
    Guider,
    Mount,
    Record,
    Telescope,
)

CONTEXT = "RecordForm"


def QT_TRANSLATE_NOOP(_context: str, text: str) -> str:
    """Marks a text for the translation tools, which look for a call of this name."""
    return text


def said(text: str) -> str:
    """A marked text in the person's language."""
    return QCoreApplication.translate(CONTEXT, text)


@dataclass(frozen=True)
class Group:
    """Fields under one title, by the names they have in the record."""

    title: str
    names: tuple[str, ...]


@dataclass(frozen=True)
class KindWords:
    """`new` stands above an empty form."""

    kind: type[Record]
    name: str
    new: str
    groups: tuple[Group, ...]


_MASS = Group(
    QT_TRANSLATE_NOOP("RecordForm", "On the mount"), ("mass_kg", "place", "along_mm", "height_mm")
)
_OWN = Group(QT_TRANSLATE_NOOP("RecordForm", "Your own notes"), ("price", "note"))
_CHIP = Group(QT_TRANSLATE_NOOP("RecordForm", "Sensor"), ("pixel_um", "width_px", "height_px"))
_MOUNT_GROUPS = (
    Group(
        QT_TRANSLATE_NOOP("RecordForm", "What it is"),
        ("kind", "capacity_kg", "capacity_distance_mm", "own_mass_kg", "ease_of_use"),
    ),
    Group(
        QT_TRANSLATE_NOOP("RecordForm", "What it has"),
        (
            "is_driven",
            "has_goto",
            "has_object_database",
            "has_autoguider_port",
            "has_computer_control",
            "has_error_training",
        ),
    ),
    Group(
        QT_TRANSLATE_NOOP("RecordForm", "How well it follows and points"),
        (
            "periodic_error_arcsec",
            "worm_period_s",
            "pointing_accuracy_arcmin",
            "drive_limit_deg_per_s",
            "past_meridian_deg",
        ),
    ),
    Group(
        QT_TRANSLATE_NOOP("RecordForm", "For the balance"),
        (
            "saddle_distance_mm",
            "saddle_length_mm",
            "bar_start_mm",
            "bar_length_mm",
            "bar_mass_kg",
            "head_imbalance_kg_m",
        ),
    ),
    Group(
        QT_TRANSLATE_NOOP("RecordForm", "Bolts of the polar axis"),
        ("azimuth_bolt_arcmin_per_turn", "altitude_bolt_arcmin_per_turn"),
    ),
    _OWN,
)
_TUBE = Group(
    QT_TRANSLATE_NOOP("RecordForm", "Tube"),
    (
        "aperture_mm",
        "focal_length_mm",
        "length_mm",
        "diameter_mm",
        "dovetail_length_mm",
        "flexure_arcsec_per_g",
    ),
)

KINDS: Mapping[str, KindWords] = {
    "mount": KindWords(
        Mount,
        QT_TRANSLATE_NOOP("RecordForm", "Mount"),
        QT_TRANSLATE_NOOP("RecordForm", "A mount"),
        _MOUNT_GROUPS,
    ),
    "telescope": KindWords(
        Telescope,
        QT_TRANSLATE_NOOP("RecordForm", "Telescope"),
        QT_TRANSLATE_NOOP("RecordForm", "A telescope, with its rings and dovetail bar"),
        (_TUBE, _MASS, _OWN),
    ),
    "camera": KindWords(
        Camera,
        QT_TRANSLATE_NOOP("RecordForm", "Camera"),
        QT_TRANSLATE_NOOP("RecordForm", "A camera"),
        (_CHIP, _MASS, _OWN),
    ),
    "guider": KindWords(
        Guider,
        QT_TRANSLATE_NOOP("RecordForm", "Guide camera"),
        QT_TRANSLATE_NOOP("RecordForm", "A guide camera, with its guide telescope"),
        (Group(_CHIP.title, (*_CHIP.names, "focal_length_mm")), _MASS, _OWN),
    ),
    "eyepiece": KindWords(
        Eyepiece,
        QT_TRANSLATE_NOOP("RecordForm", "Eyepiece"),
        QT_TRANSLATE_NOOP("RecordForm", "An eyepiece"),
        (
            Group(
                QT_TRANSLATE_NOOP("RecordForm", "What it shows"),
                ("focal_length_mm", "apparent_field_deg"),
            ),
            _MASS,
            _OWN,
        ),
    ),
    "accessory": KindWords(
        Accessory,
        QT_TRANSLATE_NOOP("RecordForm", "Accessory"),
        QT_TRANSLATE_NOOP("RecordForm", "Anything else that rides on the mount"),
        (_MASS, _OWN),
    ),
    "counterweight": KindWords(
        Counterweight,
        QT_TRANSLATE_NOOP("RecordForm", "Counterweight"),
        QT_TRANSLATE_NOOP("RecordForm", "A counterweight"),
        (
            Group(QT_TRANSLATE_NOOP("RecordForm", "The weight"), ("mass_kg", "thickness_mm")),
            _OWN,
        ),
    ),
}
NAMES = {words.kind: name for name, words in KINDS.items()}

YES_NO = {
    "is_driven": QT_TRANSLATE_NOOP("RecordForm", "Driven: follows the sky by itself"),
    "has_goto": QT_TRANSLATE_NOOP("RecordForm", "Goto: finds objects by itself"),
    "has_object_database": QT_TRANSLATE_NOOP("RecordForm", "Object database"),
    "has_autoguider_port": QT_TRANSLATE_NOOP("RecordForm", "Autoguider port"),
    "has_computer_control": QT_TRANSLATE_NOOP("RecordForm", "Computer control"),
    "has_error_training": QT_TRANSLATE_NOOP("RecordForm", "Training of the periodic error"),
}

HINTS = {
    "mass_kg": QT_TRANSLATE_NOOP("RecordForm", "Weigh it with all that is screwed to it."),
    "along_mm": QT_TRANSLATE_NOOP(
        "RecordForm",
        "Of its centre of gravity, from the middle of the dovetail bar; negative towards the rear.",
    ),
    "height_mm": QT_TRANSLATE_NOOP(
        "RecordForm", "Of its centre of gravity, from the saddle's face outward."
    ),
    "capacity_kg": QT_TRANSLATE_NOOP("RecordForm", "Without counterweights, as data sheets do."),
    "capacity_distance_mm": QT_TRANSLATE_NOOP(
        "RecordForm", "From the axis, where the capacity is listed; often not given."
    ),
    "ease_of_use": QT_TRANSLATE_NOOP(
        "RecordForm", "Your own mark: 1 is a struggle, 5 is out and observing at once."
    ),
    "periodic_error_arcsec": QT_TRANSLATE_NOOP("RecordForm", "From peak to peak."),
    "past_meridian_deg": QT_TRANSLATE_NOOP("RecordForm", "How far it may track past it."),
    "saddle_distance_mm": QT_TRANSLATE_NOOP(
        "RecordForm", "From the polar axis to the saddle's face."
    ),
    "saddle_length_mm": QT_TRANSLATE_NOOP("RecordForm", "How much of the dovetail it grips."),
    "bar_start_mm": QT_TRANSLATE_NOOP(
        "RecordForm", "From the polar axis to where a weight can begin."
    ),
    "bar_length_mm": QT_TRANSLATE_NOOP("RecordForm", "From there to the toe stop."),
    "head_imbalance_kg_m": QT_TRANSLATE_NOOP(
        "RecordForm", "Positive when the head alone sinks on the telescope's side; 0 when even."
    ),
    "dovetail_length_mm": QT_TRANSLATE_NOOP("RecordForm", "The bar in the saddle, end to end."),
    "flexure_arcsec_per_g": QT_TRANSLATE_NOOP(  # common practice, no source
        "RecordForm",
        "How far the tube yields when gravity turns round in it: 5 for a stiff small refractor, "
        "20 or more with a loose focuser, a mirror that shifts or a guide scope beside it; empty "
        "counts as the usual 10.",
    ),
    "price": QT_TRANSLATE_NOOP("RecordForm", "In your own currency."),
}
WHOLE = ("width_px", "height_px")
