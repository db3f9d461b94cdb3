"""The story of a day: entries put in order, doubled ones once, struck ones out. Pure."""

from farwall.job.story.noun import Story
from farwall.job.story.tell import story

__all__ = ["Story", "story"]
