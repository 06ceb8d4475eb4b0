"""The guided procedure: judgement, the next star, the bolts, when it is good enough."""
