"""The office side of a job: quantities, masking, buying, hours, price. Pure."""

from farwall.job.office.day import office_of
from farwall.job.office.ground import OfficeGround
from farwall.job.office.noun import Office

__all__ = ["Office", "OfficeGround", "office_of"]
