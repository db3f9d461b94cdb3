"""Reads a DXF drawing: lines, arcs and loose words in, a floor with an honest list out."""
