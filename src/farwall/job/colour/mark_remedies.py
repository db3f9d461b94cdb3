"""What can be done about a mark on a stained floor. Common practice, no source, unless it says so.

Nothing here is done by itself: a person names the mark first, and a person decides.
"""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.facts.log_colour import UNKNOWN
from farwall.nouns import dataclass

MOST_TOUCHED = 0.05
"""Of a field: beyond this touching up shows, and the whole field is misted. Common practice."""
OUTLINE_GROWS = 2.0
"""Area touched to area of the mark: a ragged outline of twice its size. Rank: common practice; that
the size is an area is our reading."""

_TOUCH_UP = (
    "Same batch, same day: a damp sponge or a spray bottle, a ragged outline twice the size of the "
    "mark, feathered out, never square."
)
_GHOST = (
    "Blend it with the second coat, with a dye or a tinted sealer, or have it accepted in writing."
)
DECIDES = "The finisher says what can be done, the owner whether it is done; write down both."
SHEET_WINS = "The sheet of the material in hand wins over this."


@dataclass(frozen=True)
class Remedy:
    """What can be done about a kind of mark, in the order in which it is tried.

    touch_up: whether a part of the field is touched · whole_field: whether nothing less than a coat
    over the whole field, or a cut, takes it away.
    """

    says: tuple[str, ...]
    touch_up: bool = False
    whole_field: bool = False
    rank: Rank = Rank.PRACTICE


_WHY_LIGHT = (
    "Find out first why it is light: a tight place, something on the slab, sprayed too dry."
)
_TIGHT = (
    "Where it takes no stain: clean or sand the place and stain it again, else a dye or a tinted "
    "sealer."
)
_ALL_OVER = "A feathered second coat over the whole field, the wand in circles and never in rows."
_WET_DRIP = (
    "Still wet: widen it at once into a random cloud, feather it with a damp sponge or mist, and "
    "put cousins of it elsewhere."
)
_NO_LIGHTER = (
    "Later mostly none, for darker is one-way: lightening changes the texture and yellows. Try it "
    "on a sample, else a tinted sealer, or have it accepted in writing."
)

REMEDIES: dict[str, Remedy] = {
    "light patch": Remedy((_WHY_LIGHT, _TOUCH_UP, _TIGHT), touch_up=True),
    "missed crescent": Remedy((_TOUCH_UP,), touch_up=True),
    "stripe": Remedy(
        (_ALL_OVER, "Touching up single stripes makes more of them."),
        whole_field=True, rank=Rank.GUESS,
    ),
    "lap line": Remedy(
        (
            "None truly.",
            "A feathered second coat over the whole field, or a saw cut designed on the line.",
        ), whole_field=True,
    ),
    "drip": Remedy(
        (
            _WET_DRIP, "Dry, it is a dot for good: hide it among cousins with the second coat.",
            "Never wipe a hard ring.",
        ), touch_up=True,
    ),
    "ring": Remedy(
        ("In the first minute: brush the puddle out or lift it with a sponge.", _NO_LIGHTER)
    ),
    "tape ghost": Remedy((_GHOST,)),
    "footprint": Remedy((_GHOST,)),
    UNKNOWN: Remedy(
        ("Do not seal. Ask what stood or lay there; seal only a small area and look.",)
    ),
}  # fmt: skip


def remedy_of(kind: str) -> Remedy:
    """What can be done about a kind of mark; of one that nobody knows, not to seal."""
    return REMEDIES.get(kind, REMEDIES[UNKNOWN])
