"""How strong each batch is: the cut, added acid, its heat, moles of acid on a square metre."""

from farwall.job.acid_day.strength.noun import (
    CoatStrength,
    Ends,
    MixFigures,
    Sheet,
    Strength,
    TubPour,
)
from farwall.job.acid_day.strength.part import strength_of
from farwall.job.acid_day.strength.said import strength_said

__all__ = [
    "CoatStrength",
    "Ends",
    "MixFigures",
    "Sheet",
    "Strength",
    "TubPour",
    "strength_of",
    "strength_said",
]
