"""The desktop program around `core`."""
