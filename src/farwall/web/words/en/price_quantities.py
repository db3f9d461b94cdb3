"""Words of the list of quantities and of its switches."""

from __future__ import annotations

WORDS = {
    "price-quantities-told": "What the job takes. Touch a line for its rule, and how far to trust "
    "it.",
    "price-quantities-change": "Switches and own figures",
    "price-quantities-what": "What",
    "price-quantities-ready": "To have",
    "price-quantities-ends": "Likely, and from low to high",
    "price-quantities-stain": "To stain",
    "price-quantities-mask": "To mask",
    "price-quantities-wash": "To neutralise and wash",
    "price-quantities-seal": "To seal",
    "price-quantities-wear": "To wear",
    "price-quantities-tools": "Tools",
    "price-quantities-range": "likely {likely}, {low} to {high}",
    "price-quantities-likely": "likely {likely}",
    "price-quantities-own": "your own figure; the rule has {ruled}",
    "price-quantities-is-off": "off",
    "price-quantities-lots": "Lots:",
    "price-supplies": "What is taken along",
    "price-supplies-told": "Untick what is not to be bought. A figure of your own takes the place "
    "of the rule’s.",
    "price-supplies-list": "The list with its rules",
    "price-supplies-on": "Taken along",
    "price-supplies-ruled": "By the rule",
    "price-supplies-own": "Your own figure",
    "price-supplies-own-of": "Your own figure for {name}, {unit}",
    "price-supplies-empty": "An empty blank leaves the rule’s figure.",
    "price-supplies-kept": "Kept as facts {n}.",
    "price-supplies-no-plan": "It has no plan yet: open the house, and one is made.",
    "price-supplies-gear": "It is in the price",
    "price-supplies-kept-gear": "Gear that serves many jobs",
    "price-supplies-gear-untold": "as not told (by its share)",
    "price-supplies-gear-share": "by its share of the jobs it lasts",
    "price-supplies-gear-whole": "whole",
    "price-supplies-lasts": "{name}: lasts",
    "price-supplies-lasts-rule": "jobs; else {low} to {high}",
    "price-supplies-person-days": "Days on site, summed over all people",
    "price-supplies-sprayers": "Sprayers bought new",
    "price-supplies-spare-percent": "More of everything that is bought, %",
}
