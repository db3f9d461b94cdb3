"""The waste water: how much, what may be in it, what was asked and said, what must be tested."""

from farwall.job.acid_day.waste.noun import Waste
from farwall.job.acid_day.waste.reckon import waste_of
from farwall.job.acid_day.waste.say import waste_said

__all__ = ["Waste", "waste_of", "waste_said"]
