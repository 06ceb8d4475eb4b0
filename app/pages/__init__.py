"""The pages of the program, one folder each."""
