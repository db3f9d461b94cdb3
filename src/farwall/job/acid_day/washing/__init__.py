"""The wash day: rooms in order, passes, water, drums, and when enough is rinsed."""

from farwall.job.acid_day.washing.day import washing_of
from farwall.job.acid_day.washing.noun import WashDay
from farwall.job.acid_day.washing.say import washing_said

__all__ = ["WashDay", "washing_of", "washing_said"]
