"""The Field rotation page: how fast does the field turn, and how long may I expose?"""
