"""The Mount page: equipment, the load, what a pixel sees, and which mount to choose."""
