"""The pole star in a polar scope, and rough alignment by other marks."""
