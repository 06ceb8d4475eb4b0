"""The Site page: where are you, what is the air like, and is the clock right?"""
