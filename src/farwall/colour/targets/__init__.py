"""Colour targets: their patches, places and values. Data, read by papers and by the reader."""
