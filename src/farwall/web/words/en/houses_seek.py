"""Words of the list of houses: seeking, filters, the next thing."""

from __future__ import annotations

WORDS = {
    "houses-seek": "Seek by name",
    "houses-seek-do": "Seek",
    "houses-filters": "Which houses",
    "houses-none-such": "No house is so.",
    "houses-show-all": "all ({n})",
    "houses-show-plan": "to plan ({n})",
    "houses-show-week": "this week ({n})",
    "houses-show-work": "in work ({n})",
    "houses-show-drying": "drying ({n})",
    "houses-show-done": "handed over ({n})",
    "line-unread": "its facts cannot be read as they stand",
    "next-done": "handed over.",
    "next-no": "it cannot be planned as its facts stand: open it and see why.",
    "next-choose-day": "choose its day.",
    "next-to-plan": "open it, and its plan is made.",
    "next-step": "{what}, {when}.",
    "next-day-past": "its day, {day}, is past and nothing was entered: choose another, or enter "
    "what was done.",
    "next-go-on": "in work; last entered {word}, {at}.",
    "next-dry": "it is dry: {what} now.",
    "next-another": "another coat, as judged.",
    "next-neutralise": "neutralise, when the colour is enough.",
    "next-rinse": "rinse until the white rag stays clean.",
    "next-dries": "it dries; then {then}.",
    "next-dries-by": "it dries; {then} from {low}, most likely {likely}.",
    "next-damp": "still damp {at}; look again, then {then}.",
    "next-then-neutralise": "neutralise",
    "next-then-seal": "sealer, coat 1",
    "next-then-sealed": "the next coat of sealer, or the finish",
}
