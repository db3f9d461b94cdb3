"""People with acid: who may do what today, when the sprayer is looked in on, who stays out."""

from farwall.job.acid_day.people.noun import People
from farwall.job.acid_day.people.part import people_of
from farwall.job.acid_day.people.say import people_said

__all__ = ["People", "people_of", "people_said"]
