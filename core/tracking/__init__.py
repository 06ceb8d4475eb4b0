"""How well the mount follows the sky once it is aligned, and what to do about it.

`run` is a stretch of tracking with the axis error's drift taken out, `periodic` its periodic error,
`training` what a trained correction would bring, `exposure` how long one may expose, `guiding`,
`pointing` and `vibration` the other ways a mount shows itself, `verdict` the one paragraph. The
drive's lead is how far it runs ahead of the sky, arcseconds of hour angle (at the equator): a
leading drive points too far west, and its star is seen to move east.
"""
