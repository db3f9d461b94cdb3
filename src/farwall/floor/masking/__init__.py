"""The edge of a room as a masker walks it: runs of wall, reveals, feet of fixtures, openings."""

from farwall.floor.masking.edge import edges_of, joined_edges
from farwall.floor.masking.nouns import Mouth, RoomEdge, Run

__all__ = ["Mouth", "RoomEdge", "Run", "edges_of", "joined_edges"]
