"""What the air of each room holds while its film dries, against the limits."""

from farwall.job.acid_day.fumes.noun import Fumes
from farwall.job.acid_day.fumes.reckoned import fumes_of
from farwall.job.acid_day.fumes.said import fumes_said

__all__ = ["Fumes", "fumes_of", "fumes_said"]
