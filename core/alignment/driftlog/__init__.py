"""The drift log: a text form for readings of watched stars.

Optional lines `# key: value` or `# key = value` and free text behind `#`; a key that is not known
though it seems to state a quantity is reported. Keys of the place and its air are latitude_deg,
longitude_deg, elevation_m, pressure_hpa and temperature_c. Errors that the readings cannot show and
the ± contains are those of `core.alignment.priors`, 0 leaves one out: reading_step_arcsec,
angle_sigma_deg, periodic_error_arcsec, slow_wander_arcsec, slow_wander_s and flexure_arcsec_per_g.
Then a line of column names and the readings:

    leg,utc,ra_deg,dec_deg,north_arcsec[,east_arcsec][,sigma_arcsec]

`leg`: any label; `utc`: ISO 8601, without an offset it is UTC; `ra_deg`, `dec_deg`: ICRS place of
the star; offsets from any origin fixed within the leg, north towards the pole of the mount’s own
axis, as the hand control moves a star, east at right angles to it. Columns may stand in any order
and others may stand among them. Separators are comma, semicolon or tab; with the latter two a comma
may be the decimal sign. Meaning is taken strictly: a line that cannot be used is reported with its
reason.
"""
