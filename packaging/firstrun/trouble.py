"""The one kind of failure that a person is shown."""


class Trouble(Exception):
    """Something stands in the way; its text says what, where, and what to do about it."""
