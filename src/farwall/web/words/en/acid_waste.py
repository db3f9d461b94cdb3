"""Words of waste water: the part of the acid page, its form, its paper."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-waste-water": "About {likely} of rinse water, {low} to {high}: {drums} of {holds}, about "
    "{weight} each when full.",
    "acid-waste-drums": "{n} drums",
    "acid-waste-drums-1": "1 drum",
    "acid-waste-metals": "What it may hold before anything settles, in mg/L",
    "acid-waste-metal": "metal",
    "acid-waste-laid": "laid, g",
    "acid-waste-raw": "raw rinse water",
    "acid-waste-local": "local limits read",
    "acid-waste-settles": "at pH 8 to 9",
    "acid-waste-local-told": "Local limits lie up to a hundredfold apart: six US tables of 1991 to "
    "2021. They bind nobody but those who live under them; yours is what your utility says.",
    "acid-waste-share": "Reckoned with {share} % of the metal laid washing off ({rank}).",
    "acid-waste-sludge": "{low} to {high} of metal sludge; cement fines come on top.",
    "acid-waste-sludge-open": "{low} of metal sludge and more; cement fines come on top.",
    "acid-waste-asks": "Still to be asked",
    "acid-waste-words": "Who said what",
    "acid-waste-tests": "Drums that were tested",
    "acid-waste-by": "Drum {drum}, by the word of {office}:",
    "acid-waste-none": "Drum {drum}: not allowed to say. No limit was named.",
    "acid-waste-hazard": "Drum {drum}:",
    "acid-waste-seen": "Drum {drum}: {share} % of the {metal} laid washed off, measured here.",
    "acid-waste-steps": "What to do with it",
    "acid-waste-chromium": "Hexavalent chromium changes the job",
    "acid-waste-dust": "Where concrete is ground or sanded",
    "acid-waste-form": "Enter who said what, and tests",
    "acid-waste-paper": "The page for the utility, with the log (PDF)",
    "acid-waste-until": "until {day}",
    "waste": "Waste water",
    "waste-told": "Whose word lets it go, and what was found in it. Nothing here decides: it is "
    "kept so that it can be read.",
    "waste-words": "Licensed or official words",
    "waste-words-told": "Of the utility, the state agency, a licensed hauler: name, office and "
    "day. A no is worth keeping too.",
    "waste-tests": "Drums that were tested",
    "waste-tests-told": "By a laboratory; a strip shows pH and no metal.",
    "waste-shares": "What washes off",
    "waste-shares-told": "A stain tested once is worth entering for every house after.",
    "s-waste-word": "{waste-way}: {waste-who} of {waste-office} said so on {waste-on}, "
    "{waste-writing}; it holds until {waste-until}.",
    "s-waste-said": "In their words: {waste-said}",
    "s-waste-limits": "Limits named: pH from {least-ph} to {most-ph}; copper {copper}, chromium of "
    "every kind {chromium}, hexavalent {chromium-vi}, manganese {manganese}, iron {iron}, zinc "
    "{zinc}, solids {solids}.",
    "s-waste-test": "Drum {waste-drum}, tested on {waste-tested-on} by {waste-by}; the sample "
    "stands for {waste-water} of untreated rinse water.",
    "s-waste-found": "Found: pH {found-ph}; copper {copper}, chromium of every kind {chromium}, "
    "hexavalent {chromium-vi}, manganese {manganese}, iron {iron}, zinc {zinc}, solids {solids}.",
    "s-waste-share": "Of the metals laid, {washed-off} washed off again.",
    "name-waste-way": "The way",
    "name-waste-who": "Who said it",
    "name-waste-office": "Office",
    "name-waste-on": "Day it was said",
    "name-waste-writing": "In writing",
    "name-waste-until": "Last day",
    "name-waste-said": "What was said",
    "name-least-ph": "Lowest pH",
    "name-most-ph": "Highest pH",
    "name-copper": "Copper",
    "name-chromium": "Chromium of every kind",
    "name-chromium-vi": "Hexavalent chromium",
    "name-manganese": "Manganese",
    "name-iron": "Iron",
    "name-zinc": "Zinc",
    "name-solids": "Suspended solids",
    "name-waste-drum": "Drum",
    "name-waste-tested-on": "Day of the test",
    "name-waste-by": "Tested by",
    "name-waste-water": "Water that the sample stands for",
    "name-found-ph": "pH found",
    "name-washed-off": "Washed off",
    "pick-waste-way-sewer": "To the sewer",
    "pick-waste-way-hauled": "Hauled",
    "pick-waste-way-treatment-works": "To the treatment works",
    "pick-waste-way-not-allowed": "Not allowed",
    "pick-in_writing-yes": "in writing",
    "pick-in_writing-no": "by word of mouth",
    "pick-in_writing-": "in writing or not",
    "help-waste-word": "Write days as year-month-day, such as 2027-05-04. A word without a last "
    "day is asked for again after a year. For a sewer only a word in writing counts, and nothing "
    "below pH 5 in any case (40 CFR 403.5).",
    "help-waste-limits": "Only what they named: an empty blank is a limit that nobody named. A "
    "test is held to every one.",
    "help-waste-test": "Where the sample is of all the rinse water of one floor before it settles, "
    "enter how much water that was: it measures how much of the stain washes off.",
    "help-waste-share": "Grams found in all the water of one floor against grams laid, once for "
    "each stain. Until then 1 to 30 % stands in (guess).",
    "unit-mg-l": "mg/L",
    "papers-name-waste-page-pdf": "Waste water: page for the utility, and log (PDF)",
    "papers-for-waste-page-pdf": "What the water may hold and what is asked, with room for a yes "
    "and its limits; then a line for each drum, from the log where it tells.",
}
