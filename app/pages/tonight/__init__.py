"""The Tonight page: where is the night, and what comes next?"""
