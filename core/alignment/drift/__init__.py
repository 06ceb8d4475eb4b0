"""One star watched: its path on a displaced mount, noise, steps, trend."""
