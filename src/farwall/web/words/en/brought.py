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
    "brought-room": "1 room",
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
    "brought-length-like": "41' 6\"",
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
    "stated-size-text": "Sizes lettered in the drawing: {agree} of {rooms} rooms agree with the"
    " outline; stated {stated}, drawn {drawn}.",
    "stated-why-size-text": "A lettered size is rounded, and tells two sides of a room that may "
    "have more. The outline counts.",
    "stated-net": "Net areas in the file: {agree} of {rooms} rooms agree with the "
    "outline; stated {stated}, drawn {drawn}.",
    "stated-why-net": "Net figures may leave out plaster, built-in things or low headroom. "
    "The outline counts.",
    "stated-gross": "Gross areas in the file: {agree} of {rooms} rooms agree with the "
    "outline; stated {stated}, drawn {drawn}.",
    "stated-why-gross": "Gross figures may take walls in. The outline counts.",
    "stated-wall-centre": "Areas to wall centres in the file: {agree} of {rooms} rooms agree with"
    " the outline; stated {stated}, drawn {drawn}.",
    "stated-why-wall-centre": "They run to the middle of the walls; the outline is the floor "
    "between them, and it counts.",
    "brought-stated": "Sizes that the file states",
}
