"""The Budget page: how good must the alignment be tonight?"""
