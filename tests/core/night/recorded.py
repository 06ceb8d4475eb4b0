"""A whole invented night with everything a night can hold."""

from __future__ import annotations

import numpy as np

from core.alignment.driftlog.records import Leg
from core.night.record import AxisState, Entry, Kind, NightRecord, WatchedLeg
from core.sky.site import Air, Site

BEGUN = 1_795_550_400.0
PIXEL = bytes.fromhex(  # a whole PNG of one white pixel
    "89504e470d0a1a0a0000000d4948445200000001000000010802000000907753de"
    "0000000c49444154789c63f8ffff3f0005fe02fe0def46b80000000049454e44ae426082"
)


def leg(label: str, count: int, drift_arcsec_per_min: float, begun: float, **columns) -> Leg:
    utc_s = begun + 2.0 * np.arange(float(count))
    north = drift_arcsec_per_min * (utc_s - begun) / 60.0 + 0.1 * np.sin(utc_s)
    return Leg(label, 81.2828, 6.3497, utc_s, north, **columns)


def watched(key: int, one: Leg, **changes) -> WatchedLeg:
    values = {"star_name": "Bellatrix", "purpose": "alignment", "is_discarded": False} | changes
    return WatchedLeg(
        key=key, leg=one, began_utc_s=one.utc_s[0], ended_utc_s=one.utc_s[-1], **values
    )


def entry(key: int, kind: str, minutes: float, content: dict, attachment=None) -> Entry:
    return Entry(key, kind, BEGUN + 60.0 * minutes, content, attachment)


def result(state: int, azimuth: float, altitude: float, error: float) -> dict:
    return {
        "axis_state": state,
        "aim": "TRUE_POLE",
        "azimuth_error_arcmin": azimuth,
        "altitude_error_arcmin": altitude,
        "error_arcmin": error,
        "half_width_arcmin": 0.4,
        "sentence": "The axis points east of the pole: turn it west.",
    }


def whole_night() -> NightRecord:
    east = np.where(np.arange(40) % 3 == 0, np.nan, 0.25)
    first = leg("east 1", 40, 2.0, BEGUN, east_arcsec=east)
    second = leg("east 2", 30, 0.2, BEGUN + 1800.0, sigma_arcsec=np.full(30, 0.4))
    away = leg("bumped", 3, 50.0, BEGUN + 1700.0)
    worm = 12.0 * np.sin(2.0 * np.pi * np.arange(600) / 240.0)
    run = leg("run 1", 600, 0.0, BEGUN + 3600.0, east_arcsec=worm)
    turn = {"axis_state": 21, "azimuth_arcmin": -10.0, "altitude_arcmin": 0.5, "note": "stiff"}
    return NightRecord(
        key=11,
        started_utc_s=BEGUN,
        active_utc_s=BEGUN + 7200.25,
        site=Site(47.0, -20.0, 300.0, "Meadow <north> & hill (invented)"),
        air=Air(978.0, -4.0, pressure_is_assumed=True),
        aim_name="REFRACTED_POLE",
        target_arcmin=1.5,
        axis_states=(
            AxisState(21, BEGUN, (watched(31, first),)),
            AxisState(
                22,
                BEGUN + 1500.0,
                (
                    watched(33, away, is_discarded=True),
                    watched(32, second),
                    watched(34, run, purpose="tracking"),
                ),
            ),
        ),
        entries=(
            entry(41, Kind.NOTE, 5.0, {"text": "Dew <script>alert(1)</script> – früh.\nCold."}),
            entry(42, Kind.WEATHER, 1.0, {"text": "clear", "temperature_c": -3.5, "dry": True}),
            entry(43, Kind.TICK, 2.0, {"step": "level", "state": "done", "text": "Level it."}),
            entry(
                44,
                Kind.TICK,
                3.0,
                {"step": "moon", "state": "skipped", "text": "See the Moon.", "reason": "is new"},
            ),
            entry(45, Kind.RESULT, 10.0, result(21, 12.0, 1.0, 8.3)),
            entry(46, Kind.ADJUSTMENT, 20.0, turn),
            entry(47, Kind.RESULT, 40.0, result(22, 1.0, 1.5, 1.7)),
            entry(48, Kind.TRACKING, 90.0, {"leg": 34, "periodic_error_arcsec": 24.0,
                                             "worm_period_s": 480.0}),
            entry(49, Kind.EQUIPMENT, 0.5, {"name": "small refractor (invented)",
                                            "equipment": [{"what": "mount", "name": "M one"}]}),
            entry(50, Kind.PLAN, 0.6, {"target": "M 42", "begin_utc_s": BEGUN + 3600.0}),
            entry(51, Kind.PICTURE, 95.0, {"name": "a.png", "caption": 'The "field"',
                                           "media_type": "image/png"}, PIXEL),
            entry(53, Kind.GUIDING, 91.0, {"leg": None, "guiding_rms_arcsec": 0.61,
                                           "sentence": "Guiding holds the star within 0.61″ rms.",
                                           "sentences": ["In declination the star swings."]}),
            entry(54, Kind.POINTING, 92.0, {"stars": 7, "as_read_rms_arcmin": 17.5,
                                            "sentence": "Seven stars are missed by 17.5′.",
                                            "kept": {"stars": [{"name": "a secret of the file"}]}}),
            entry(55, Kind.VIBRATION, 93.0, {"when": "before a change", "frequency_hz": 2.25,
                                             "settling_s": 3.1, "sentence": "It rings for 3.1 s.",
                                             "kept": {"time_s": [0.0, 0.05]}}),
            entry(52, "of a later version", 96.0, {"depth": [1, None, {"x": "y"}]}),
        ),
    )  # fmt: skip
