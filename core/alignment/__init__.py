"""From a drifting star to the bolts of the mount."""
