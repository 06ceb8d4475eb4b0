"""Colours and type of the three looks."""
