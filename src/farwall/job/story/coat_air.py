"""What slab and air were when a coat of sealer went down, as the log has it. Pure."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.air.moist import dew_point_c
from farwall.job.story.noun import Happened, Reading
from farwall.nouns import dataclass

NEAR_MIN = 180.0
"""A reading older than this tells nothing of the air at a coat: a guess."""


@dataclass(frozen=True)
class CoatAir:
    """The last reading before a coat, None where none is near; the slab as entered with the coat,
    else as that reading has it. [°C]"""

    reading: Reading | None
    slab_c: float | None

    @property
    def air_c(self) -> float | None:
        """The air. [°C]"""
        return None if self.reading is None else self.reading.air_c

    @property
    def rh_percent(self) -> float | None:
        """Its humidity. [%]"""
        return None if self.reading is None else self.reading.rh_percent

    @property
    def dew_c(self) -> float | None:
        """Its dew point. [°C]"""
        if self.air_c is None or self.rh_percent is None:
            return None
        return dew_point_c(air_c=self.air_c, rh_percent=self.rh_percent)

    @property
    def margin_k(self) -> float | None:
        """How far the slab was above the dew point. [K]"""
        return None if self.slab_c is None or self.dew_c is None else self.slab_c - self.dew_c


def coat_air(readings: Sequence[Reading], coat: Happened, *, room: str = "") -> CoatAir:
    """What was read before a coat, not too long before: in its room, or where no room was named.

    readings: of the story, in order. room: the one that is asked about, else the coat's own; for a
    coat of all rooms a reading of any counts.
    """
    asked = room or coat.text("room")
    near = [
        one for one in readings
        if 0 <= coat.at_min - one.at_min <= NEAR_MIN
        and (not asked or one.room in {"", asked})
        and one.air_c is not None and one.rh_percent is not None
    ]  # fmt: skip
    reading = near[-1] if near else None
    slab_c = coat.number("slab_c")
    if slab_c is None and reading is not None:
        slab_c = reading.slab_c
    return CoatAir(reading, slab_c)
