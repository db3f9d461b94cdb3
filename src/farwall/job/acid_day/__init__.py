"""Acid and water of a job: strength, fumes, neutralising, washing, waste, people, pouring."""

from farwall.job.acid_day.day import acid_day
from farwall.job.acid_day.noun import AcidDay

__all__ = ["AcidDay", "acid_day"]
