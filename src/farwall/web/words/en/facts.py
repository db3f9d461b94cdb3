"""Words of the form that tries other facts, and of what it gained."""

from __future__ import annotations

WORDS = {
    "try-facts": "Try other facts",
    "try-told": "Each change is kept as new facts and planned beside; the facts before stay in "
    "the book.",
    "fact-helper": "Helper",
    "fact-helper-yes": "yes, swaps full tanks",
    "fact-helper-no": "no",
    "fact-sprayers": "Sprayers",
    "fact-one": "one",
    "fact-two": "two",
    "fact-day": "Day",
    "fact-start": "Start",
    "fact-band-us": "Band width, inches",
    "fact-band-metric": "Band width, cm",
    "fact-put": "Plan with these",
    "facts-refused": "These facts were not kept:",
    "facts-same": "These are the facts already; nothing was changed.",
    "facts-other": "somebody else has changed the facts since this page was made. Look at the new "
    "ones, then change them.",
    "facts-other-merged": "somebody else has changed the facts since this page was made. What they "
    "told stands here beside what you typed: look it over, then keep it.",
    "facts-both": "Somebody else put {text} here meanwhile. Yours stands: keep it, or type theirs.",
    "facts-both-empty": "Somebody else emptied this meanwhile. Yours stands: keep it, or empty it.",
    "facts-row-lost": "a row that you changed is no longer there, or was ticked to be taken away: "
    "look at the rows and tell it once more.",
    "facts-day-wrong": "{text} is no day and time. Write them as the fields ask.",
    "facts-choice-wrong": "{text} is no choice here.",
    "facts-band-wrong": "{text} is no width. Write a number, such as {such}.",
    "gain": "Against facts {n} ({told}): {fields}, {spare}, {ends}.",
    "gain-fit": "{fit} of {fields} fields fit, before {was} of {of}",
    "gain-fit-same": "{fit} of {fields} fields fit as before",
    "gain-more": "{by} min more to spare at the tightest edge",
    "gain-less": "{by} min less to spare at the tightest edge",
    "gain-even": "the tightest edge as before",
    "gain-later": "sprayed {by} min later",
    "gain-earlier": "sprayed {by} min earlier",
    "gain-when-same": "sprayed as early as before",
    "told-helper": "a helper",
    "told-alone": "no helper",
    "told-two": "two sprayers",
    "told-one": "one sprayer",
    "told-start": "start {at}",
    "told-band": "bands {width}",
}
