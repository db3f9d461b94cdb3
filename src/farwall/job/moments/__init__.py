"""What the floor looks like at a moment of the plan: wet bands, live edge, people, tank."""

from farwall.job.moments.chosen import telling_moments
from farwall.job.moments.edge import LiveEdge, live_edge_at, oldest_edge
from farwall.job.moments.state import Moment, Person, WetPart, moment_at

__all__ = [
    "LiveEdge",
    "Moment",
    "Person",
    "WetPart",
    "live_edge_at",
    "moment_at",
    "oldest_edge",
    "telling_moments",
]
