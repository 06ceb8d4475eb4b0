"""The Drift page: where does the axis point, and what do I turn?"""
