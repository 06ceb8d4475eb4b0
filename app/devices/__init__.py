"""What delivers readings, and later frames: one file and one row of a table each."""
