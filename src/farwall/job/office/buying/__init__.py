"""What is bought for the job, of whom, and what it comes to."""

from farwall.job.office.buying.found import buying_of
from farwall.job.office.buying.noun import Bought, Buying, Delivered, LeftOver, Proven, There, Way
from farwall.job.office.buying.said import buying_said

__all__ = [
    "Bought", "Buying", "Delivered", "LeftOver", "Proven", "There", "Way", "buying_of",
    "buying_said",
]  # fmt: skip
