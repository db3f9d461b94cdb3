"""Prices that are taken where nobody told one: invented, every one a guess, in US dollars.

They let a first list be made before a price list is there; a total says how much of it is guessed.
Sizes are as such things are sold [common-practice]; no shop was asked.
"""

from __future__ import annotations

from farwall.facts.default_table import CONTAINERS_GAL
from farwall.facts.van import StockKind, Unit
from farwall.facts.wares import Ware
from farwall.units import KG_PER_LB, L_PER_US_GAL, M_PER_FT

_GAL = L_PER_US_GAL
_SOLD: tuple[tuple[StockKind, float, Unit, str], ...] = (
    *(("stain", size * _GAL, "l", price) for size, price in CONTAINERS_GAL),
    ("sealer", _GAL, "l", "45.00"), ("sealer", 5 * _GAL, "l", "205.00"),
    ("finish", _GAL, "l", "25.00"), ("cleaner", _GAL, "l", "18.00"),
    ("bicarbonate", 12 * KG_PER_LB, "kg", "11.00"),
    ("tape", 180 * M_PER_FT, "m", "7.50"), ("film", 100 * M_PER_FT, "m", "14.00"),
    ("paper", 180 * M_PER_FT, "m", "9.00"), ("jamb-wrap", 1, "count", "4.00"),
    ("gloves", 1, "count", "3.00"), ("suit", 1, "count", "12.00"),
    ("goggles", 1, "count", "14.00"), ("cartridges", 1, "count", "22.00"),
    ("boots", 1, "count", "28.00"), ("pads", 1, "count", "5.00"), ("rags", 25, "count", "12.00"),
    ("ph-strips", 100, "count", "9.00"), ("bags", 20, "count", "18.00"),
    ("mops", 1, "count", "11.00"), ("drums", 1, "count", "45.00"),
    ("sprayer", 1, "count", "60.00"), ("spill-kit", 1, "count", "45.00"),
    ("dams", 1, "count", "3.00"), ("plugs", 1, "count", "4.00"),
    ("plugs", 17 * M_PER_FT, "m", "6.00"),
)  # fmt: skip
_OTHER: tuple[tuple[str, float, Unit, str], ...] = (
    ("sealer applicators", 1, "count", "9.00"), ("spare tip", 1, "count", "6.00"),
    ("spare wand", 1, "count", "18.00"), ("set of seals and O-rings", 1, "count", "12.00"),
    ("eyewash for 15 min", 1, "count", "90.00"), ("muriatic acid", _GAL, "l", "9.00"),
    ("removable putty", KG_PER_LB, "kg", "5.00"),
)  # fmt: skip
GUESSED: tuple[Ware, ...] = (
    *(
        Ware(id=f"guess-{kind}-{n}", kind=kind, size=size, unit=unit, price=price)
        for n, (kind, size, unit, price) in enumerate(_SOLD)
    ),
    *(
        Ware(id=f"guess-other-{n}", kind="other", size=size, unit=unit, price=price, of=of)
        for n, (of, size, unit, price) in enumerate(_OTHER)
    ),
)
"""Of no seller and of no make."""

NOT_BOUGHT: frozenset[StockKind] = frozenset({"water"})
KEPT: frozenset[StockKind] = frozenset({
    "sprayer", "spill-kit", "goggles", "boots", "drums", "plugs", "dams",
})  # fmt: skip
"""Things that are used again: no spare of them is bought."""

SECOND_TRIP = ("400", "650", "900")
"""Dollars that one more day on site costs two people, with the way: low, middle, high
[common-practice]."""
