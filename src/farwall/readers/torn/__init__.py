"""Whether a file is whole, for formats whose libraries pass over what is torn without a word."""
