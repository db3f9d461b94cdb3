"""Words of the settings."""

from __future__ import annotations

WORDS = {
    "way-settings": "Settings",
    "settings": "Settings",
    "settings-browser": "This browser",
    "settings-tongue": "Speak",
    "settings-tongue-browser": "what the browser asks for",
    "settings-tongue-en": "English",
    "settings-tongue-es": "Español",
    "settings-light": "Show pages",
    "settings-light-paper": "as usual, on warm paper",
    "settings-light-sun": "for the sun, black on white",
    "settings-browser-keep": "Set it so",
    "settings-kept-browser": "Set in this browser.",
    "settings-kept-firm": "Kept. Each new house begins with it; houses in the book stay as they "
    "are.",
    "firm": "What each new house begins with",
    "firm-told": "Your crew, your sprayer, your stains. A house may say otherwise; a brought "
    "job.json keeps what it says.",
    "firm-terms": "Its name, rates, taxes and terms are told with a house, under price: the next "
    "houses begin with them too.",
    "firm-terms-way": "Firm, customer and terms",
    "firm-keep": "Keep for new houses",
    "firm-units": "Units",
    "help-tongue": "The language of the screens in this browser. Names of houses and rooms stay "
    "as they were typed.",
    "help-light": "In bright light warm paper is hard to read: black on white, thicker lines.",
    "rooms-unit-us": "feet",
    "rooms-unit-metric": "metres",
}
