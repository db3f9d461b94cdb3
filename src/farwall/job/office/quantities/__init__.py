"""How much of everything the job takes: by its plan, its walls, its acid day and its people."""

from farwall.job.office.quantities.lines import quantities_of
from farwall.job.office.quantities.said import quantities_said

__all__ = ["quantities_of", "quantities_said"]
