"""What neutralises a spill, a left-over tub, the floor; pH on the way, and why it fizzes."""

from farwall.job.acid_day.neutralising.noun import Neutralising
from farwall.job.acid_day.neutralising.said import neutralising_said
from farwall.job.acid_day.neutralising.whole import neutralising_of

__all__ = ["Neutralising", "neutralising_of", "neutralising_said"]
