"""Words of the page on which a drawing is asked about."""

from __future__ import annotations

WORDS = {
    "brought-title": "{name}: before it is a house",
    "brought-told": "The drawing was read. Something in it only you can say; the rest is corrected "
    "on the floor.",
    "brought-refused": "Not brought yet:",
    "brought-storey": "Which storey is this job?",
    "brought-one": "A job is one storey. The others can be brought from this page too, one by one.",
    "brought-there": "in the book already",
    "brought-rooms": "{n} rooms",
    "brought-area": "{m2} m² ({ft2} ft²)",
    "brought-height": "floor at {m} m ({ft} ft)",
    "brought-scale": "How large is it?",
    "brought-scale-told": "The drawing does not say how long its unit is. Type one length that you "
    "know, from wall to wall, or choose the unit; the length wins.",
    "brought-measure": "Measured",
    "brought-across": "the whole floor, left to right",
    "brought-up": "the whole floor, bottom to top",
    "brought-across-of": "{room}, left to right",
    "brought-up-of": "{room}, bottom to top",
    "brought-length": "Length",
    "brought-unit": "Or its unit",
    "brought-unit-none": "not known",
    "brought-go": "Bring it",
    "brought-seen": "What was read",
    "brought-picture": "The rooms of {name} as they were read, storey by storey",
    "brought-notes": "What the reader asks and leaves open",
    "brought-notes-told": "These are answered on the floor, one by one.",
    "brought-no-storey": "no storey was chosen. Choose the one that is to be stained.",
    "brought-no-length": "“{text}” is no length of a floor. Write it such as 41' 6\" or 12.65 m.",
    "brought-no-measure": "what was measured is not in the list. Choose it there.",
    "brought-no-scale": "without a length or a unit no area is known. Type one or choose one.",
}
