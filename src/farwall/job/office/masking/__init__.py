"""What is masked, room by room: by the true edge of the floor, its openings, what stands on it."""

from farwall.job.office.masking.nouns import (
    Dam,
    FilmRun,
    Gap,
    ItemMasked,
    Jamb,
    Masked,
    MaskFigure,
    RoomMasked,
)
from farwall.job.office.masking.reckon import masked_of
from farwall.job.office.masking.rules import FILM_M
from farwall.job.office.masking.say import masked_said

__all__ = [
    "FILM_M",
    "Dam",
    "FilmRun",
    "Gap",
    "ItemMasked",
    "Jamb",
    "MaskFigure",
    "Masked",
    "RoomMasked",
    "masked_of",
    "masked_said",
]
