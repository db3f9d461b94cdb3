"""Words of the page of acid and water."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "way-acid": "Acid",
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
}
