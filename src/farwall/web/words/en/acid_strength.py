"""Words of the part on strength."""

from __future__ import annotations

WORDS: dict[str, str] = {
    "acid-strength-head": "Coat {coat}: {stain} at {cut}",
    "acid-strength-added": "With {amount} of trade-strength muriatic acid on the cut mix.",
    "acid-strength-sheet": "Its sheet {chromate}, {oxidiser}.",
    "acid-strength-lists": "It lists {contents}.",
    "acid-strength-read": "Read on {day}.",
    "acid-strength-share-from": "{name} from {share} %",
    "acid-strength-share-to": "{name} up to {share} %",
    "acid-strength-caption": "Hydrochloric acid, % by mass",
    "acid-strength-neat": "Neat, by its sheet",
    "acid-strength-cut": "Cut, before acid is added",
    "acid-strength-tub": "In the tub",
    "acid-strength-laid": "Laid on the floor",
    "acid-strength-warm": "Tub at its warmest",
    "acid-strength-over": "Air just above the tub",
    "acid-strength-by-acid": "Added acid makes of that",
    "acid-strength-by-salts": "Its salts may make of that",
    "acid-strength-from": "from {start}",
    "acid-strength-plain": "at rest, were it plain acid",
    "acid-strength-guess": "a guess, and a wide one",
    "acid-strength-span": "{low} to {high}",
    "acid-strength-times": "{factor} times",
    "acid-strength-pour-water": "{litres} of water",
    "acid-strength-pour-stain": "{litres} of stain",
    "acid-strength-pour-acid": "{litres} of muriatic acid",
    "acid-strength-then": ", then ",
    "acid-strength-sheets": "Enter what the sheets say",
    "acid-strength-name-them": "Name the stains first",
}
