"""What the page for the utility says, in sentences of the phrasebook."""

from __future__ import annotations

TITLE = "May this water go to your sewer?"
UNDER = "Rinse water of a stained concrete floor: a page for the utility."
STAINED = (
    "A concrete floor of {area} is coloured with a reactive stain, metal chlorides in dilute "
    "hydrochloric acid, in {coats}."
)
THEN = (
    "What did not react is neutralised, scrubbed and rinsed off, and taken up by vacuum into drums."
)
BEGINS = "Work begins on {day}."
WATER = "{likely}, likely; {low} to {high}."
DRUMS = "{count} of {holds}, about {weight} each when full."
PH = "Mostly 6 to 10; lower while residue comes off, up to 12 from new concrete."
WARMTH = "That of the house, well below 104 °F (40 °C)."
HOW = (
    "Reckoned from litres of stain by the plan, from density and shares by its safety sheet, with "
    "{share} % of the metal washing off ({rank}) into the water above."
)
NO_TEST = "No water of this floor has been tested yet."
TESTED = "Tests are laid beside this page."
FARTHEST = (
    "Sewer limits that we have read lie a hundredfold apart, copper from 0.06 to 6.0 mg/L: so we "
    "ask for yours."
)
UNREAD = "Of {stain} the list of contents was not entered: its metals are not in this table."
CHROMATE = "The sheet of {stain} names chromate: hexavalent chromium does not settle at any pH."
ASKS = (
    "May it go to the sewer, raw, or only neutralised and settled?",
    "Which limits hold? Please write them into the table.",
    "Where, at which inlet or station, and how fast?",
    "On which days, and who must be told before?",
    "Which tests, and who gets the paper?",
    "Is raising the pH in a drum treatment that needs a permit here?",
)
NO_YES = "Without a yes in writing it stays in the drums for a licensed hauler."
SETTLES = {
    "falls out": "mostly settles", "much stays": "much stays", "stays": "stays at any pH",
    "": "not on the sheet",
}  # fmt: skip
METAL_NAMES = {
    "copper": "copper", "chromium": "chromium, all", "chromium(VI)": "chromium(VI)",
    "manganese": "manganese", "iron": "iron",
}  # fmt: skip
CEMENT = "traces, from cement"
LOG_UNDER = (
    "A line for each drum, each time it is filled, treated, moved or emptied. Kept with the "
    "receipts."
)
LOG_NEVER = "Never into a storm drain, a street, soil, a pond or a septic tank."
LOG_CLEAR = "Clear is not clean: test, never infer."
