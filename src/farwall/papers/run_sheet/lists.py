"""The checklists of the evening before and the morning.

Habits of the trade (common practice, no source) but for the eyewash (29 CFR
1926.50(g) and ANSI/ISEA Z358.1 as the bibliography has them) and the limits
of the slab (common practice). The sheet of the material in hand wins.
"""

from __future__ import annotations

from farwall.papers.wall_clock import Units

EVENING = (
    "Pencil, chalk and mud off the slab; vacuum, then look again at low light.",
    "Doors, tubs, cabinets and jambs covered. Tape on wall or base, never on the slab.",
    "The gap between door and jamb sealed, jamb feet wrapped.",
    "Band edges ticked on the film from the field pages: letter of the wall, then the distances.",
    "Windows filmed against the sun; registers and return taped, metal wrapped.",
    "Spray pattern tried on a board, or where tile will come and then rinsed like the floor.",
    "Mixing place where a spill harms nothing; a pail of bicarbonate water open beside it.",
    "Slab outside the doors wetted and covered: a drip there stays.",
)


def morning(units: Units) -> tuple[str, ...]:
    """The morning's list, temperatures and flow in the user's units first."""
    us = units == "us"
    limits = "50 to 85 °F (10 to 29 °C)" if us else "10 to 29 °C (50 to 85 °F)"
    flow = "0.4 gal (1.5 L) a minute" if us else "1.5 L (0.4 gal) a minute"
    return (
        f"Slab read at five spots, the sunny one too: {limits}, or no stain today.",
        "A second adult is here, within call. Nobody works alone; nobody else in the house.",
        "Goggles and face shield, chemical gloves, sleeves, boots; fit-tested respirator.",
        f"Eyewash reached in 10 s, running 15 min at {flow}.",
        "Air moves out, its inlet far off: no jet on the wet edge. Never shut it out to gain time.",
        "Water in the tub first, stain into the water, slowly, with plastic. Never the other way.",
        "All lots boxed in one tub, stirred; tanks filled, labelled, pumped alike.",
        "Never bleach or ammonia near. Phones away: nobody answers inside a field.",
    )


CARRY = (
    "full spare sprayer",
    "rag on the tip",
    "dry gloves",
    "funnel",
    "bucket for the nozzle, at the way out",
    "spare tip and seals",
    "sponge, mist bottle",
    "this sheet and a pen",
)

DRIP_INSIDE = (
    "widen it at once into a random cloud, feather it with damp sponge and mist, put cousins "
    "elsewhere. Never wipe a hard ring."
)
DRIP_OUTSIDE = (
    "blot it at once, never hose it; bicarbonate till the fizz ends, nylon brush, lift it wet."
)
MID_FIELD = "nobody answers inside a field; the next stop line is the next pause."
SUN = "on wet floor it kills the edge. Stop at the stop line, wait for shade."
EMERGENCY = ("Hurt? Walk straight across.", "The floor does not matter.")
