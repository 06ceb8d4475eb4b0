"""The log of nights on disk."""
