"""What stands on the tripod: drives, limits, what the sky does to them."""
