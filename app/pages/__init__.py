"""The pages of the program, one file each."""
