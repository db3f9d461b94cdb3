"""Words of the pages of colour that all of them share."""

from __future__ import annotations

WORDS = {
    "way-colour": "colour",
    "colour-ways": "Colour of this house",
    "colour-part-next": "the next coat",
    "colour-part-ladder": "the ladder",
    "colour-part-sample-day": "the sample day",
    "colour-part-marks": "marks on the floor",
    "colour-part-pairs": "before and after",
}
