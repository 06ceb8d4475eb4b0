"""The Log page: what remains of the nights?"""
