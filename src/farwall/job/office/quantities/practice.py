"""What finishers take along, by floor, by wall and by person: one table for list, van and price.

All of it is common practice, no source, where nothing else is said; a sheet or a list of one's own
wins.
"""

from __future__ import annotations

from farwall.facts.van import StockKind, Unit

Ends = tuple[float, float, float]
"""Low, usual, high."""

PER_1000_FT2: tuple[tuple[StockKind, Ends, Unit], ...] = (
    ("pads", (4, 5, 6), "count"),
    ("mops", (2, 2.5, 3), "count"),
    ("rags", (10, 15, 20), "count"),
    ("bags", (6, 8, 10), "count"),
)
"""For each 1,000 ft² of floor."""
STRIPS_PER_1000_FT2: Ends = (20, 20, 30)
"""Twenty and more; what the high end is, is a guess."""
BICARBONATE_KG_PER_1000_FT2: Ends = (2, 3, 4)
"""4 to 8 lb of it are taken along, whatever is reckoned."""
CLING_ROLLS_PER_1000_FT2: Ends = (1, 1.5, 2)

PUTTY_KG_PER_FOOT: Ends = (0.03, 0.05, 0.08)
"""A rope of 10 mm, a foot and more long, around the foot of a jamb: a guess."""
TOWELS_PER_DAM = 2
"""Film and towels at an outside door; how many towels is a guess."""

WASH_L_M2: Ends = (0.4, 0.6, 0.8)
"""Wash solution for a pass, 1 to 2 gal on 100 ft²."""
CLEANER_L_L = 0.03125
"""Half a cup of alkaline cleaner in a gallon: 1 part in 32."""
CLEANER_PASSES = 2
"""Once before the stain, once after neutralising."""

FINISH_FT2_PER_GAL: Ends = (1500, 2000, 2500)
FINISH_COATS = (2, 2, 4)
"""Floor finish at hand-over: two to four thin coats."""
LEFT_WITH_OWNER_L = 0.946352946
"""A quart of finish is left with the owner."""

GLOVES_PER_PERSON_DAY: Ends = (2, 2.5, 3)
SUITS_PER_PERSON_DAY = 1
CARTRIDGES_PER_PERSON_DAY = 1
"""A pair where no schedule was told; the maker's schedule wins."""
SPARE_SPRAYERS = 1
"""Carry two, alike: one that fails in mid-field leaves a seam."""
FLUSH_L = 3.785411784
"""A gallon and more of water through a sprayer every day."""
EYEWASH_L = 15 * 0.4 * 3.785411784
"""15 min at 0.4 gal a minute [eyewash]: published."""
