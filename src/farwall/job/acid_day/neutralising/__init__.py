"""What neutralises a spill, a left-over tub, the floor; pH on the way, and why it fizzes."""

from farwall.job.acid_day.neutralising.noun import Doses, Neutralising
from farwall.job.acid_day.neutralising.said import neutralising_said
from farwall.job.acid_day.neutralising.whole import doses_of, neutralising_of

__all__ = ["Doses", "Neutralising", "doses_of", "neutralising_of", "neutralising_said"]
