"""The seal day: the planner once more, with the sealer's own wet edge, tools and crossed coats."""

from farwall.job.seal_day.day import SealDay, seal_day

__all__ = ["SealDay", "seal_day"]
