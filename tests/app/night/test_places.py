"""Places kept among the settings."""

from typing import Any

import pytest

from app.night.places import KEY, Place, Places
from core.sky.horizon import parse
from core.sky.site import Site

HILL = Site(48.1, 11.6, 520.0, "Hill")


class Memory:
    def __init__(self, kept: Any = None) -> None:
        self.kept = {} if kept is None else {KEY: kept}

    def get_setting(self, key: str, default: Any = None) -> Any:
        return self.kept.get(key, default)

    def put_setting(self, key: str, value: Any) -> None:
        self.kept[key] = value


def test_what_is_kept_comes_back() -> None:
    memory = Memory()
    Places(memory).keep(Place(HILL, "Europe/Lisbon", parse("0 5\n90 12")))
    place = Places(memory).of(HILL)
    assert place is not None
    assert place.zone == "Europe/Lisbon"
    assert place.horizon.as_text() == "0.00 5.00\n90.00 12.00\n"


def test_a_site_used_again_keeps_its_zone_and_horizon_under_a_new_name_too() -> None:
    places = Places(Memory())
    places.keep(Place(HILL, "UTC+1", parse("0 5")))
    places.keep_site(Site(48.1, 11.6, 530.0, "Hill"))
    places.keep_site(Site(48.1, 11.6, 530.0, "Summit"))
    assert [(place.label, place.zone) for place in places.all()] == [
        ("Hill", "UTC+1"),
        ("Summit", "UTC+1"),
    ]


def test_without_a_name_the_coordinates_are_the_label() -> None:
    assert Place(Site(-33.5, 18.25)).label == "33.5000° S, 18.2500° E"


@pytest.mark.parametrize(
    "foreign",
    [
        "text",
        {"version": 99, "places": [{"anything": 1}]},
        {"version": 1, "places": [{"site": {}}]},
        {"version": 1, "places": "none"},
        {
            "version": 1,
            "places": [
                {
                    "site": {
                        "latitude_deg": 95.0,
                        "longitude_deg": 0.0,
                        "elevation_m": 0.0,
                        "name": "",
                    },
                    "zone": "",
                    "horizon": [],
                }
            ],
        },
    ],
)
def test_what_cannot_be_read_is_neither_used_nor_lost(foreign: Any) -> None:
    memory = Memory(foreign)
    places = Places(memory)
    assert places.all() == []
    places.keep_site(HILL)
    assert [place.label for place in Places(memory).all()] == ["Hill"]
    kept = memory.kept[KEY]["places"]
    inner = foreign["places"] if isinstance(foreign, dict) and foreign["version"] == 1 else foreign
    assert (inner[0] if isinstance(inner, list) else inner) in kept


def test_a_forgotten_place_is_gone() -> None:
    memory = Memory()
    places = Places(memory)
    places.keep_site(HILL)
    places.forget("Hill")
    assert Places(memory).all() == []
