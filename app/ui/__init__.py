"""The look of the program and the parts that pages are built of."""
