"""What to do tonight, and when."""
