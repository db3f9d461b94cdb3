"""Words of the papers from the first call to the quote, and of what the owner keeps."""

from __future__ import annotations

WORDS = {
    "papers-name-enquiry-pdf": "The first call (PDF)",
    "papers-for-enquiry-pdf": "Twelve questions to fill in on the phone, what makes a no, and what "
    "may be said of a price.",
    "papers-name-survey-pdf": "Survey (PDF)",
    "papers-for-survey-pdf": "Map of the rooms with drop seconds, what was found in each, tests "
    "still to do, photos to take.",
    "papers-name-sample-day-pdf": "Sample day (PDF)",
    "papers-for-sample-day-pdf": "The steps with their waits, what to mix, and a ruled place for "
    "every figure of every cut.",
    "papers-name-sample-card-pdf": "Sample card and approval (PDF)",
    "papers-for-sample-card-pdf": "A card for each coat with three dilutions, places for photos, "
    "and the owner’s signature: the sample is the standard.",
    "papers-name-colour-target-pdf": "Colour target (PDF)",
    "papers-for-colour-target-pdf": "Grey and coloured squares to print and lay beside a "
    "sample or on the floor, so that photos can be compared.",
    "papers-name-schedule-pdf": "Schedule for the trades (PDF)",
    "papers-for-schedule-pdf": "Who stays out until when, what is done before, who comes back on "
    "which day: a page for the builder to sign.",
    "papers-name-before-after-pdf": "Before and after (PDF)",
    "papers-for-before-after-pdf": "Two photos of a room or a sample side by side, the "
    "first and the last of the log; others are chosen under colour, before and after. With what "
    "a photo does not tell.",
    "papers-name-care-pdf": "Care sheet (PDF)",
    "papers-for-care-pdf": "What not to do for a day, a week, a month; with what to clean; what "
    "lies on the floor. For the owner and whoever cleans.",
    "papers-name-warranty-pdf": "Warranty (PDF)",
    "papers-for-warranty-pdf": "A draft to have checked by a lawyer of the place: what is made "
    "good, for how long, what is left out.",
}
