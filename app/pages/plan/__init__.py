"""The Night plan page: what can I do tonight, and when?"""
