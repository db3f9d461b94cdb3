"""Hexavalent chromium: what a sheet that names chromate changes, in one place.

29 CFR 1926.1126 [osha-chromium]; 40 CFR 261.24, D007 [epa-toxic]; dust by 29 CFR 1926.1153 Table 1
[silica]. What is asked is named; whether it is met is for a licensed industrial hygienist.
"""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.nouns import dataclass

LIMIT_UG_M3, ACTION_UG_M3, OBJECTIVE_UG_M3 = 5.0, 2.5, 0.5
"""µg/m³ over 8 hours: the limit, the action level, and what objective data must stay below for the
standard not to apply: 29 CFR 1926.1126 (a)(4), (b), (c)."""


@dataclass(frozen=True)
class Change:
    """One thing that chromate on the sheet changes: a key, what it asks, what meets it, source."""

    key: str
    says: str
    do: str
    source: str
    rank: Rank = Rank.PUBLISHED


CHANGES: tuple[Change, ...] = (
    Change("no acid", "No acid is added: an oxidiser with hydrochloric acid sets chlorine free.",
           "Leave it out; open the slab another way.",
           "common-practice", Rank.PRACTICE),
    Change("exposure", "Exposure is assessed before the first stroke: by measuring, or by "
           "objective data that no use can reach 0.5 µg/m³ over 8 hours. The limit is 5 µg/m³, the "
           "action level 2.5. A licensed industrial hygienist says how.",
           "Ask before this stain is bought.", "osha-chromium"),
    Change("area", "A regulated area: the place is marked, and nobody who does not work there "
           "comes in. The rule for general industry asks for one; a hygienist says whether this "
           "job must have it.",
           "Signs and tape at every way in.", "osha-chromium", Rank.MEMORY),
    Change("hygiene", "Nobody eats, drinks, smokes or keeps food there. Hands and face are washed "
           "before every break and at the end; work clothes stay there.",
           "Water, soap and towels at the way out.", "osha-chromium",
           Rank.MEMORY),
    Change("gloves", "Gloves, apron and eye protection wherever stain or rinse water can touch: it "
           "burns, and a skin once sensitised stays so.",
           "By the stain's sheet; changed when torn or wet inside.", "osha-chromium", Rank.MEMORY),
    Change("vacuum", "Dry powder is taken up with a HEPA vacuum or wet: no dry sweeping, no "
           "blowing with air.",
           "A HEPA vacuum stands there before the wash day.", "osha-chromium", Rank.MEMORY),
    Change("waste", "The rinse water is tested for chromium before anything is decided: 5.0 mg/L "
           "or more is hazardous waste, D007. It does not fall out at any pH.",
           "Name the laboratory before the wash day.", "epa-toxic"),
    Change("later", "Nobody sands or grinds this floor dry, now or later; the owner gets that in "
           "writing.",
           "The care sheet and the hand-over say it.", "common-practice", Rank.PRACTICE),
    Change("records", "Papers on exposure are kept for 30 years.",
           "One folder holds them.", "osha-chromium", Rank.MEMORY),
)  # fmt: skip
"""In the order of the day."""

WET_OR_SHROUD = (
    "A walk-behind grinder or sander runs with water, or with the maker's shroud and a dust "
    "collector of 99 % filter or better; indoors a HEPA vacuum takes loose dust between passes."
)
HAND_GRINDER = (
    "A hand grinder has a shroud and a collector of 25 cfm or more for each inch of wheel; indoors "
    "for more than 4 hours a shift a respirator of APF 10 as well."
)
SILICA = (WET_OR_SHROUD, HAND_GRINDER)
"""29 CFR 1926.1153 Table 1, xi and xii [silica]: for any concrete that is ground or sanded."""
