"""The sample day: which samples, step by step, what now and what next, from facts and log."""

from farwall.job.colour.sample_day.course import course_of
from farwall.job.colour.sample_day.standing import day_of

__all__ = ["course_of", "day_of"]
