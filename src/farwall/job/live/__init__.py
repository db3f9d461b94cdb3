"""The live day: what to do now, from the plan and the story. Pure."""

from farwall.job.live.again import Again, again
from farwall.job.live.noun import Now
from farwall.job.live.now import now

__all__ = ["Again", "Now", "again", "now"]
