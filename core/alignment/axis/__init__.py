"""The polar axis from evidence of any kind: its nuisances, one solver, contradictions."""
