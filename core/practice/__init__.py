"""A simulated sky and mount for practice by daylight."""
