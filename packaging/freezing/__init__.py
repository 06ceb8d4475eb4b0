"""How the frozen program is made: what goes into it, and what it does before the window."""
