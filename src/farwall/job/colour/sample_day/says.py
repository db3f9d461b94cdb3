"""What is said at each step: what to do, and the caution that stands beside it.

All of it is common practice (no source) where nothing else is said; the sheet of the material in
hand, local codes and licensed practice win.
"""

from __future__ import annotations

from farwall.nouns import dataclass


@dataclass(frozen=True)
class Says:
    """A step in words: its name, its short name for a key, what to do, the caution; "" for none."""

    name: str
    short: str
    do: str
    caution: str = ""


BEFORE = ("clean", "drop", "slab", "air")
"""What is done once, before the first sample."""
WINS = "The sheet of the material in hand, local codes and licensed practice win."
_WORN = (
    "Goggles, face shield, gloves, sleeves; a fit-tested respirator with acid-gas and P100 "
    "cartridges. A window open, nobody alone, eyewash within 10 seconds."
)
SAYS: dict[str, Says] = {
    "clean": Says(
        "Clean it as the floor will be", "cleaned",
        "Scrape, vacuum, scrub and rinse the squares as the floor will be cleaned, and let them "
        "dry overnight. No acid, no etching, no tape on the slab.",
    ),
    "drop": Says(
        "Drop test", "drop",
        "Five drops of water beside the squares: how many seconds until the middle one has gone "
        "in. A bead that stands for a minute: no stain here yet, find the film.",
    ),
    "slab": Says(
        "The slab, by infrared", "slab",
        "Point the infrared gun at the squares, not at the air. Below 50 °F (10 °C) or above "
        "85 °F (29 °C) no sample tells of this floor.",
    ),
    "air": Says(
        "The air", "air",
        "Air and humidity beside the squares, an arm's length over the slab.",
    ),
    "lay": Says(
        "Mix, weigh, lay", "lay",
        "Mix in the jug, pour all of it into the empty, rinsed sprayer and spray into the jug "
        "until it comes. Weigh the sprayer, in grams. Lay the square as the floor will be laid: "
        "same person, same tip, same motion. Tap when it is laid: the stopwatch runs.",
        "Water first, then stain into the water, never the other way; never with bleach or "
        "ammonia. " + _WORN,
    ),
    "weigh": Says(
        "Weigh the sprayer again", "weigh",
        "Weigh the same sprayer, closed and wiped: what is missing lies on the square. Then "
        "empty and rinse it for the next cut.",
    ),
    "sheen": Says(
        "Wait for the gloss to go", "sheen",
        "Kneel and look low over the square against the light. Tap at the moment when the wet "
        "gloss is gone in its middle: that is how long an edge stays live.",
        "Stay on the side that the air comes from.",
    ),
    "dry": Says(
        "Wait until it is dry", "dry",
        "Tap when the colour is even and light and no dark island is left. It looks ugly now; "
        "that means nothing.",
    ),
    "wash": Says(
        "Scrub as hard as the floor", "wash",
        "After the floor's own dwell: vacuum the powder, wet it with neutraliser, scrub it as "
        "hard and as often as the floor will be scrubbed, take it up and rinse it with changed "
        "water. Strip and white rag; does the colour hold?",
        "The water is waste: never to a storm drain, soil or septic tank. Gloves and goggles stay "
        "on. Ammonia never into fresh acid.",
    ),
    "wet": Says(
        "Look at it clean and wet", "wet look",
        "Mop it wet and take the photo: the square fills its middle, the target lies at its edge "
        "in the same light, no glare. Clean and wet is near the sealed colour.",
    ),
    "seal": Says(
        "Dry overnight, then seal", "seal",
        "Overnight and bone dry; then the floor's own sealer, as many coats as the floor will "
        "have, no other one.",
        "By the sealer's label: slab warm enough, pilot lights off, air moving.",
    ),
    "day": Says(
        "Look at it sealed, by day", "by day",
        "At the window, by day, with the target beside it: photo, and look at the middle half; "
        "edges feather.",
    ),
    "lamp": Says(
        "Look at it sealed, by lamp", "by lamp",
        "At night under the house's own lamps: photo with the target beside it.",
    ),
    "judge": Says(
        "Judge it", "judge",
        "Sealed against what is wished, with the owner: too light, right, or too dark. A chart "
        "or a chip is no sample.",
    ),
    "sign": Says(
        "Sign the standard", "sign",
        "The owner signs the card of the sample that is right: it is the standard of this floor, "
        "with its natural range. Write the name, photograph the card.",
    ),
    "done": Says("Done", "done", "Nothing more is to be done at this sample."),
    "out": Says(
        "Left out", "left out",
        "The square beneath was washed before this coat was laid.",
    ),
}  # fmt: skip
FIGURE_NAMES: dict[str, str] = {
    "weighed": "what was laid", "slab": "slab, by infrared", "air": "air", "humidity": "humidity",
    "drop": "drop goes in", "sheen": "gloss gone after", "dry": "dry after",
    "dwell": "dwell", "scrubs": "scrubs", "ph": "pH after", "rag": "white rag",
    "held": "whether the colour holds", "wet": "photo clean and wet", "sealer": "sealer",
    "day": "photo sealed, by day", "lamp": "photo sealed, by lamp", "verdict": "the verdict",
}  # fmt: skip
"""Figures of a sample, as they are asked for."""
HELD: dict[str, str] = {
    "holds": "It holds: go on.",
    "weak": "Weak: a second coat, or open the surface evenly and make the sample anew.",
    "washes off": "It washes off: the slab does not take it. Open the surface, or another floor.",
}
"""What a wash that showed this asks for (common practice)."""
