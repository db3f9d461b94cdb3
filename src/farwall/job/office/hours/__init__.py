"""Person-hours of the job, task by task, with their ranges; and the days on site."""

from farwall.job.office.hours.noun import Hours, RoomHours
from farwall.job.office.hours.part import hours_of, hours_said
from farwall.price.hours import TaskHours

__all__ = ["Hours", "RoomHours", "TaskHours", "hours_of", "hours_said"]
