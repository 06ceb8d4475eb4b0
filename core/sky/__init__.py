"""Where, when and what is overhead."""
