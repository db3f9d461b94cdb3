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
    "houses-show-aside": "set aside ({n})",
    "next-aside": "set aside.",
    "aside-do": "Set this house aside",
    "aside-told": "It leaves the lists, the calendar, the van and the lessons. Nothing is erased:"
    " facts, log, photos and papers stay, and it can be brought back. Who has its "
    "papers is not told by this: tell them.",
    "aside-logged": "Something was entered on its floor. Setting it aside changes nothing there: "
    "what is wet, neutralised or in a drum has to be seen to first.",
    "aside-why": "Why (fell through, entered twice)",
    "aside-is": "This house is set aside: it is in no list, calendar or van.",
    "aside-because": "Why: {why}",
    "aside-back": "Bring it back",
    "aside-not-you": "Setting a house aside is not for your role. Ask a lead or the office.",
}
