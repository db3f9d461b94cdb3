"""First aid in plain words: what to do before anybody calls, and what must not be done.

Water first, at once, is said by every sheet of such stain; the words are common practice [MEM]. The
sheet of the material in hand, the poison centre and the doctor win over them.
"""

from __future__ import annotations

from farwall.facts.workers import Emergency
from farwall.job.acid_day.people.noun import FirstAid, Number

FIRST_AID = (
    FirstAid(
        "In the eyes",
        "Water, at once, for 15 minutes, lids held open; lenses out if that is easy, and go on "
        "rinsing. Somebody else calls. Then a doctor, with the sheet.",
    ),
    FirstAid(
        "On the skin",
        "Running water at once; gloves, boots and clothes off under it, 15 minutes. Water alone: "
        "no bicarbonate on skin. Burns or blisters: a doctor.",
    ),
    FirstAid(
        "Breathed in",
        "Everybody out into fresh air; sit upright, stay with the person. Cough or a tight chest: "
        "call at once. The lungs can swell hours later: a doctor in any case. Nobody goes back "
        "in for tools.",
    ),
    FirstAid(
        "Swallowed",
        "Rinse the mouth with water and spit. Never make anybody vomit. Call the poison centre "
        "at once, and do what they say.",
    ),
)
CHROMATE_AID = FirstAid(
    "Stain with chromate, anywhere on the skin",
    "As above, and a doctor in any case, with the sheet: it goes in through a burn.",
)


def first_aid(*, chromate: bool) -> tuple[FirstAid, ...]:
    """What to do at once, one for each kind of harm."""
    return (*FIRST_AID, CHROMATE_AID) if chromate else FIRST_AID


def numbers_of(told: Emergency) -> tuple[Number, ...]:
    """Numbers and places as the firm entered them, in the order in which they are needed."""
    return (
        Number("Emergency", told.number),
        Number("Poison centre", told.poison_centre),
        Number("Hospital", told.hospital),
        Number("Say where we are", told.address),
        Number("Spill", told.spill_line),
    )
