"""The computations behind Poleward; they know no screen, clock, thread or network."""
