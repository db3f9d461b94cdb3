"""Words of the people's part of the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-people-form": "Tell of people, cartridges and your own emergency numbers",
    "acid-people-looks": "Looked in on",
    "acid-people-eyewash": "Eyewash",
    "acid-people-out": "Everybody else",
    "acid-people-aid": "First aid",
    "acid-people-papers": "For the morning and for the door, on paper:",
    "papers-name-people-pdf": "People",
    "papers-for-people-pdf": "For the morning: who may do what, looks at who sprays, eyewash, "
    "minutes in the respirator.",
    "papers-name-keep-out-pdf": "Sign for the door",
    "papers-for-keep-out-pdf": "No entry until rinsed and aired, in English and Spanish.",
}
