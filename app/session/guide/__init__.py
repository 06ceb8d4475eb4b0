"""Where the person stands in the procedure, and what the turns of the bolts did."""
