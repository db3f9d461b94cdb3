"""Whether the log says that the floor is stained, though the plan has more to spray. Pure.

A coat that was judged enough, a floor that is neutralised, rinsed or sealed: what the plan has
beyond it is not begun any more. What is sprayed after it, or a look that asks for another coat,
takes it back.
"""

from __future__ import annotations

from farwall.facts.plan import Plan
from farwall.job.story.noun import Happened, Story
from farwall.nouns import dataclass

_SPRAYS = ("mixed", "field-started", "band-done", "field-done", "coat-done")
_WASHED = ("neutralised", "sealed")
_SLIP_MIN = 30.0
"""Nobody neutralises so soon after the last stroke of a coat that is not whole. Rank: guess."""


@dataclass(frozen=True)
class Stained:
    """The entry that ends the staining; the coat begun last, empty where none is entered."""

    by: Happened
    coat: str


def stained(plan: Plan, story: Story) -> Stained | None:
    """What ends the staining of this floor; None while it goes on.

    Neutralising and sealer end it whatever is entered; a rinse or a look that found the colour
    enough only behind a coat that is whole, for a floor is rinsed before its stain as well.
    """
    judged = story.last("coat-judged")
    if judged is not None and judged.text("next") == "another":
        return None
    laid, whole = _laid(plan, story)
    words = (*_WASHED, "rinsed", "coat-judged") if whole else _WASHED
    sprayed = story.last(*_SPRAYS)
    for one in story.of(*words):
        since = sprayed is None or one.at_min >= sprayed.at_min + (0.0 if whole else _SLIP_MIN)
        if since and (one.word != "coat-judged" or _enough(one, laid)):
            return Stained(one, laid)
    return None


def _laid(plan: Plan, story: Story) -> tuple[str, bool]:
    """The coat that was begun last, and whether all its fields are done."""
    told = {one.coat: one for one in story.coats if one.fields}
    begun = [coat.id for coat in plan.inputs.coats if coat.id in told]
    return (begun[-1], told[begun[-1]].end_min is not None) if begun else ("", False)


def _enough(one: Happened, coat: str) -> bool:
    return one.text("next") == "enough" and one.text("coat") == coat
