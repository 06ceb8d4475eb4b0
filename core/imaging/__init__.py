"""What an exposure does to stars: sampling, trails, the smear budget, field rotation.

The stars of the field are seen through the air from the turning Earth, the mount turns about its
displaced axis, and the trail on the sensor is what remains: `task` says what is taken and where its
stars are seen, `trail` what the sensor catches, from which guide star it is worst, and why that is
near the pole. From these follow the largest error, the curve against exposure and the aim that
serves a target best (`tolerance`), the verdict on the alignment (`verdict`) and the map (`skymap`).
`rotation` is the same question for an alt-azimuth mount. Periodic error, seeing, flexure and wind
are not in it.
"""
