"""The Tracking page: periodic error, training, longest exposure, guiding, pointing, vibration."""
