"""The Pole page: where is the pole, and how does the axis get near it?"""
