"""Words of the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "way-acid": "acid",
    "acid-title": "{name}: acid and water",
    "acid-wins": (
        "The sheet of the material in hand, local codes and licensed practice win over all of this."
    ),
    "acid-papers": "On paper:",
    "acid-part-strength": "Strength",
    "acid-part-fumes": "Fumes",
    "acid-part-neutralising": "Neutralising",
    "acid-part-washing": "Wash day",
    "acid-part-waste": "Waste water",
    "acid-part-people": "People",
    "acid-part-pours": "Pouring together",
    "acid-part-title": "{name}: {part}",
    "acid-ways": "Parts of acid and water",
    "acid-all": "All in short",
    "acid-nothing": "Nothing stands out.",
    "acid-told": "What matters most of each part, in the order of the day; all of it behind its "
    "name.",
}
