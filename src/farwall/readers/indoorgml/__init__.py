"""Reads floors out of IndoorGML: cells, the states in them and the transitions between them."""
