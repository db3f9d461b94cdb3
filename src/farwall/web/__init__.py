"""The door for phones: the same use cases over HTTP."""
