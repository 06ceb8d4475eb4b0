"""The ways readings come in, one file each."""
