"""The owner of the state of tonight."""
