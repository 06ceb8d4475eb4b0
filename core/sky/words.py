"""The sky in words: what was typed and cannot be, how far tables reach, compass and shadow."""

from __future__ import annotations

import math
from functools import reduce

from core.finding import Code, Wording
from core.language import marked, say
from core.sky.almanac import Light, light_at
from core.sky.bodies import Body, BodyNow, Ephemeris, body_now
from core.sky.catalogues import ObjectKind, TableFault
from core.sky.clocks import RotationTable, TimeFault, ZoneDoubt
from core.sky.compass import Compass, Declination, NoonShadow, Shadow
from core.sky.coordinates import Angle, Coordinates
from core.sky.horizon import Skyline
from core.sky.pressure import Doubt, PressureUnit
from core.sky.site import Air, Site

# Directions.

_WINDS = (
    *(marked("north"), marked("north-north-east"), marked("north-east"), marked("east-north-east")),
    *(marked("east"), marked("east-south-east"), marked("south-east"), marked("south-south-east")),
    *(marked("south"), marked("south-south-west"), marked("south-west"), marked("west-south-west")),
    *(marked("west"), marked("west-north-west"), marked("north-west"), marked("north-north-west")),
)


def direction_words(azimuth_deg: float) -> str:
    """The nearest of sixteen winds: 250° is "west-south-west"."""
    return say(_WINDS[round(azimuth_deg / 22.5) % len(_WINDS)])


# The compass.

IRON = marked(
    "Keep the compass two metres from the mount, a car or anything of iron; rock and "
    "cables nearby can add degrees that no model knows."
)


def compass_words(found: Declination) -> str:
    """How to set the polar axis by compass."""
    bearing = round(found.pole_bearing_deg, 1) % 360.0
    template = marked("True south is at compass bearing {bearing:.1f}° here ± {sigma}°.")
    if found.latitude_deg >= 0.0:
        template = marked("True north is at compass bearing {bearing:.1f}° here ± {sigma}°.")
    return say(template, bearing=bearing, sigma=_up(found.sigma_deg))


def _up(sigma_deg: float) -> str:
    """Rounded up to a tenth, so that the ± never promises too much."""
    return f"{math.ceil(sigma_deg * 10.0 - 1e-9) / 10.0:.1f}"


# The Sun as a check of the clock, and its shadow.
#
# Nothing here leads anyone to look at the Sun or to point anything at it.

SUN_CAUTION = marked(
    "Never look at the Sun, and never point a telescope, finder, camera or polar-axis "
    "sight at it or near it: eyes are destroyed at once and without pain, and "
    "instruments can catch fire. Keep every cap on and every finder covered until the "
    "Sun has set."
)
SHADOW_CAUTION = marked(
    "Use the shadow only, with your back to the Sun and all optics capped or still "
    "packed. Never aim along the shadow towards the Sun."
)
IF_NOT = marked("If it is not, the clock, the time zone or the longitude is wrong.")
BY_SHADOWS = marked("Judge by the shadows; never look at the Sun.")

_WITH_ARTICLE: dict[Body, str] = {Body.SUN: marked("The Sun"), Body.MOON: marked("The Moon")}
_OVERHEAD_DEG = 80.0


def shadow_words(noon: NoonShadow) -> str:
    """What to do, without the time, which the screen writes in its own way."""
    return say(
        "At local noon the shadow of a plumb line points true {towards}. It is "
        "{length:.1f} times as long as the line is high and turns {turn:.1f}° a "
        "minute, so mark it within half a minute.",
        towards=say(noon.towards),
        length=noon.length_per_height,
        turn=noon.turns_deg_per_min,
    )


def where_words(now: BodyNow) -> str:
    """Where a body should be, as a check by eye; for the Sun below the horizon, how light it is."""
    name = say(_WITH_ARTICLE[now.body]) if now.body in _WITH_ARTICLE else str(now.body)
    where = direction_words(now.azimuth_deg)
    height = round(now.altitude_deg if now.altitude_deg > 0.0 else now.true_altitude_deg)
    if height > _OVERHEAD_DEG:
        return say(
            "{name} should now be almost overhead, {height}° high in the {where}.",
            name=name,
            height=height,
            where=where,
        )
    if height > 0:
        return say(
            "{name} should now be {height}° above the {where} horizon.",
            name=name,
            height=height,
            where=where,
        )
    if height == 0:
        return say("{name} should now be on the {where} horizon.", name=name, where=where)
    template = marked("{name} should now be {height}° below the {where} horizon.")
    if now.body is Body.SUN:
        template = marked("{name} should now be {height}° below the {where} horizon: {dark}.")
    dark = _dark_words(now.true_altitude_deg)
    return say(template, name=name, height=-height, where=where, dark=dark)


def sun_check(site: Site, air: Air, utc_s: float) -> str:
    """The check of clock, zone and longitude that a person can make without an instrument."""
    sun = body_now(Body.SUN, site, air, utc_s)
    up = light_at(sun.true_altitude_deg) is Light.DAY
    return " ".join([where_words(sun), say(IF_NOT), *([say(BY_SHADOWS)] if up else [])])


def _dark_words(sun_altitude_deg: float) -> str:
    light = light_at(sun_altitude_deg)
    if light is Light.NIGHT:
        return say("it should be night")
    return say("it should be {light}", light=str(light))


# Time zones.


def _several_zones(text: str, names: tuple[str, ...]) -> str:
    return say("“{text}” may be {names}: write which.", text=text, names=reduce(_either, names))


def _either(first: str, second: str) -> str:
    return say("{first} or {second}", first=first, second=second)


# What computations find and refuse, by code.

SENTENCES: dict[Code, Wording] = {
    # coordinates
    Angle.LATITUDE: marked("latitude"),
    Coordinates.SAYS_EAST_OR_WEST: marked(
        "“{text}” is a longitude, since it says {letter}; a latitude says N or S. Latitude and "
        "longitude may be swapped."
    ),
    Coordinates.LATITUDE_IN_HOURS: marked(
        "“{text}” is in hours; a latitude is in degrees. Latitude and longitude may be swapped."
    ),
    Coordinates.NO_LATITUDE: marked(
        "A latitude lies between 90° S and 90° N; “{text}” does not. Latitude and longitude "
        "may be swapped."
    ),
    Angle.LONGITUDE: marked("longitude"),
    Coordinates.SAYS_NORTH_OR_SOUTH: marked(
        "“{text}” is a latitude, since it says {letter}; a longitude says E or W. Latitude and "
        "longitude may be swapped."
    ),
    Coordinates.HOURS_AND_DEGREES: marked(
        "“{text}” mixes hours with degrees. Write a longitude in one of them, like 11.6° or "
        "0h46m24s."
    ),
    Coordinates.NO_LONGITUDE: marked(
        "A longitude lies between 180° W and 180° E; “{text}” does not."
    ),
    Coordinates.NO_PAIR: marked(
        "“{text}” is not a latitude and a longitude. Write them like 48.1, 11.6."
    ),
    Angle.RIGHT_ASCENSION: marked("right ascension"),
    Coordinates.HOURS_OR_DEGREES: marked(
        "“{text}” may be hours or degrees. Write 5.24h or 78.6°, or 5 14 32 for hours, "
        "minutes, seconds."
    ),
    Coordinates.NO_RIGHT_ASCENSION: marked(
        "A right ascension lies between 0 and 24 hours, or 0° and 360°; “{text}” does not."
    ),
    Angle.DECLINATION: marked("declination"),
    Coordinates.DECLINATION_IN_HOURS: marked(
        "“{text}” is in hours; a declination is in degrees. Right ascension and declination "
        "may be swapped."
    ),
    Coordinates.NO_DECLINATION: marked(
        "A declination lies between −90° and +90°; “{text}” does not. Right ascension and "
        "declination may be swapped."
    ),
    Coordinates.EMPTY: marked("The {what} is empty."),
    Coordinates.UNREADABLE: marked(
        "“{text}” cannot be read as a {what}. Write it like 48.137 or 48 08 14."
    ),
    Coordinates.SIGN_AND_LETTER: marked(
        "“{text}” has a sign and the letter {letter}. Leave one of them out."
    ),
    Coordinates.EARLY_DECIMALS: marked("In “{text}” only the last number may have decimals."),
    Coordinates.SIXTY_OR_MORE: marked("In “{text}” minutes and seconds stay below 60."),
    # horizon
    Skyline.NO_PAIR: marked(
        "Line {number} of the horizon, “{line}”, is not an azimuth and an altitude; write two "
        "numbers in degrees, like 135 12.5."
    ),
    Skyline.LINE: marked("Line {number} of the horizon: {problem}"),
    Skyline.AZIMUTH: marked(
        "azimuth {azimuth:g}° is not between 0 and 360; count from north through east."
    ),
    Skyline.ALTITUDE: marked(
        "altitude {altitude:g}° is not between {low:g} and {high:g}; the azimuth goes first, "
        "the altitude second."
    ),
    # pressure
    PressureUnit.INCHES_OF_MERCURY: marked("inches of mercury"),
    PressureUnit.MILLIMETRES_OF_MERCURY: marked("millimetres of mercury"),
    PressureUnit.KILOPASCALS: marked("kilopascals"),
    PressureUnit.AT_SEA_LEVEL: marked("{unit} reduced to sea level"),
    Doubt.SEA_LEVEL_PRESSURE: marked(
        "{typed:g} hPa is too much for {elevation:.0f} m; it looks like the weather report's "
        "pressure, reduced to sea level. Use {station:.1f} hPa, the pressure at the station?"
    ),
    Doubt.ABOVE_ALL_GROUND: marked(
        "An elevation of {typed:g} m is higher than any mountain. Were these feet? That is "
        "{metres:.0f} m."
    ),
    Doubt.FEET: marked(
        "An elevation of {typed:g} m does not fit a pressure of {station:.0f} hPa, but feet "
        "would. Were these feet? That is {metres:.0f} m."
    ),
    Doubt.OTHER_UNIT: marked(
        "{typed:g} cannot be hPa here. Was it in {unit}? That makes {guess:.1f} hPa at the station."
    ),
    # clocks
    RotationTable.ENDS: marked(
        "The table of the Earth's rotation ends on {day}: UT1 may be off by up to about "
        "{seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by "
        "less than {percent} % of its size."
    ),
    RotationTable.BEGINS: marked(
        "The table of the Earth's rotation begins on {day}: UT1 may be off by up to about "
        "{seconds:.1f} s and hour angles by {arcsec:.0f}″, which changes the axis error by "
        "less than {percent} % of its size."
    ),
    RotationTable.OUT_OF_ORDER: marked("its days are missing or out of order"),
    RotationTable.UP_TO: marked("The Earth's rotation is known or predicted up to {end}."),
    RotationTable.MEASURED: marked(
        "The Earth's rotation is measured up to {day} and predicted up to {end}."
    ),
    RotationTable.MEASURED_LONG_AGO: marked(
        "The Earth's rotation is measured up to {day}, {days} days ago, and predicted up to {end}."
    ),
    RotationTable.UNUSABLE: marked(
        "The table of the Earth's rotation {path} cannot be used ({reason}). Install Poleward "
        "again, or the package astropy-iers-data by itself."
    ),
    TimeFault.OUTSIDE_ALL_YEARS: marked("{seconds} seconds is no time in the years 1 to 9999."),
    TimeFault.NO_TIME: marked(
        "“{text}” is not a date and time; write it like 2026-11-24T20:15:30Z."
    ),
    ZoneDoubt.FAR_FROM_THE_SUN: marked(
        "{zone} is {hours:.0f} hours away from the Sun's time at this longitude: the time zone "
        "is that of another place, or the longitude has the wrong side (E or W)."
    ),
    ZoneDoubt.UNREADABLE: marked(
        "The rules of {zone} cannot be read on this computer ({problem}); give the offset "
        "instead, like UTC+2."
    ),
    ZoneDoubt.NO_OFFSET: marked("“{text}” is no offset from UTC: they go from −12 to +14 hours."),
    ZoneDoubt.EMPTY: marked(
        "The time zone is empty; write a name like Europe/Lisbon or an offset like UTC+2."
    ),
    ZoneDoubt.SEVERAL: _several_zones,
    ZoneDoubt.UNKNOWN: marked(
        "“{text}” is no time zone known here. An offset like UTC+2 will do as well."
    ),
    ZoneDoubt.UNKNOWN_BUT_NEAR: marked(
        "“{text}” is no time zone known here. Is {place} meant? An offset like UTC+2 will do "
        "as well."
    ),
    # bodies
    Ephemeris.OUTSIDE_ITS_YEARS: marked(
        "The precise table of the Sun, Moon and planets runs from 1900 to 2053; for this date "
        "shorter series stand in: the Sun stays good to 0.1″, the Moon to 20″, planets to 1.5′."
    ),
    Ephemeris.UNREADABLE: marked(
        "The table of the Sun, Moon and planets {path} cannot be read ({problem}). Install "
        "Poleward again, or the package skyfield-data by itself."
    ),
    # catalogues
    TableFault.OTHER_COLUMNS: marked("its columns are not the ones expected"),
    TableFault.STARS_UNREADABLE: marked(
        "The table of stars {path} cannot be read ({problem}). Install Poleward again; until "
        "then stars can be entered by their coordinates."
    ),
    TableFault.DEEP_SKY_UNREADABLE: marked(
        "The table of clusters, nebulae and galaxies {path} cannot be read ({problem}). "
        "Install Poleward again; until then targets can be entered by their coordinates."
    ),
    TableFault.NO_KIND: marked("“{kind}” is no kind of object"),
    # What stands in the sky, and how light it is.
    ObjectKind.GALAXY: marked("galaxy"),
    ObjectKind.OPEN_CLUSTER: marked("open cluster"),
    ObjectKind.STAR: marked("star"),
    ObjectKind.OBJECT_OF_UNKNOWN_KIND: marked("object of unknown kind"),
    ObjectKind.DOUBLE_STAR: marked("double star"),
    ObjectKind.PAIR_OF_GALAXIES: marked("pair of galaxies"),
    ObjectKind.GLOBULAR_CLUSTER: marked("globular cluster"),
    ObjectKind.PLANETARY_NEBULA: marked("planetary nebula"),
    ObjectKind.NEBULA: marked("nebula"),
    ObjectKind.EMISSION_NEBULA: marked("emission nebula"),
    ObjectKind.CLUSTER_WITH_NEBULA: marked("cluster with nebula"),
    ObjectKind.STAR_GROUP: marked("star group"),
    ObjectKind.REFLECTION_NEBULA: marked("reflection nebula"),
    ObjectKind.TRIPLET_OF_GALAXIES: marked("triplet of galaxies"),
    ObjectKind.GROUP_OF_GALAXIES: marked("group of galaxies"),
    ObjectKind.SUPERNOVA_REMNANT: marked("supernova remnant"),
    ObjectKind.NOVA: marked("nova"),
    ObjectKind.DARK_NEBULA: marked("dark nebula"),
    Body.SUN: marked("Sun"),
    Body.MOON: marked("Moon"),
    Body.MERCURY: marked("Mercury"),
    Body.VENUS: marked("Venus"),
    Body.MARS: marked("Mars"),
    Body.JUPITER: marked("Jupiter"),
    Body.SATURN: marked("Saturn"),
    Light.DAY: marked("day"),
    Light.CIVIL: marked("civil twilight"),
    Light.NAUTICAL: marked("nautical twilight"),
    Light.ASTRONOMICAL: marked("astronomical twilight"),
    Light.NIGHT: marked("night"),
    # compass
    Compass.OUTSIDE_THE_MODEL: marked(
        "The magnetic model holds from {first:.0f} to the end of {last:.0f}, not in {year}: "
        "set the axis by a star, by the Sun's shadow at noon, or with the declination printed "
        "on a current map."
    ),
    Compass.NO_FIELD: marked(
        "A compass is no use here: so near the magnetic pole the field is almost upright "
        "(horizontal part {field:.0f} nT, under {least:.0f}). Set the axis by a star or by the "
        "Sun's shadow at noon."
    ),
    Compass.WEAK_FIELD: marked(
        "Doubt the compass here: near the magnetic pole its needle is weak and sluggish "
        "(horizontal field {field:.0f} nT, under {least:.0f}) and magnetic storms turn it by "
        "degrees."
    ),
    Shadow.NONE: marked("{reason} Set the axis by compass or by a star."),
    Shadow.TOO_SHORT: marked(
        "At the next noon the Sun is almost overhead ({altitude:.0f}°): the shadow is too "
        "short and turns too fast."
    ),
    Shadow.NO_SUN: marked("The Sun stays below the horizon at the next noon: there is no shadow."),
    Shadow.ENDLESS: marked(
        "At the next noon the Sun is only {altitude:.0f}° high: the shadow has no end."
    ),
}
