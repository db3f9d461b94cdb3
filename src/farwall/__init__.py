"""Farwall plans the acid staining of bare concrete floors, from the far wall to the door."""

__version__ = "0.1.0"
