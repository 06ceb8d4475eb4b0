"""What happens between a fresh machine and a running program; standard library only."""
