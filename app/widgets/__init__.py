"""Small widgets used by pages."""
