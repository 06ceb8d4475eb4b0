"""The names by which the window knows its pages."""

SITE, POLE, DRIFT, MOUNT, BUDGET = "site", "pole", "drift", "mount", "budget"
TRACKING, ROTATION, PLAN = "tracking", "rotation", "plan"
TONIGHT, LOG = "tonight", "log"
