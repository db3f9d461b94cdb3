"""Rules on the order of pouring and on the vessel."""

from __future__ import annotations

from functools import partial

from farwall.acid.pouring.making import a_rule
from farwall.acid.pouring.nouns import CLOSED, METAL, VESSELS

_refuses = partial(a_rule, "refused")
_warns = partial(a_rule, "allowed with warning")
_GAS = "Work in an open plastic tub; drums get a vented lid."
_POURED_INTO = frozenset(VESSELS) - {"floor", "spill"}

PLACES = (
    _refuses("water into acid", "water", "concentrated acid", in_turn=True, vessels=_POURED_INTO,
             what="Water poured into strong acid boils where it lands and throws acid out.",
             instead="Water first in another tub, then the acid into it, slowly.",
             source="stain-sheets, cfr-265-v"),
    _refuses("water into lye", "water", "lye", in_turn=True,
             what="Water poured on lye boils and throws it out.",
             instead="Cold water first, lye into it in small shares; better none on this job.",
             source="epa-chart"),
    _refuses("gas in a closed vessel", "carbonate, lime, may give gas",
             "strong acid, weak acid, spent acid, added acid, rinse", vessels=CLOSED,
             what="Carbon dioxide bursts a closed sprayer, jug or drum.",
             instead=_GAS, source="stain-sheets, common-practice"),
    _refuses("rinse water closed in", "may give gas", vessels=CLOSED,
             what="Rinse water gives off carbon dioxide for hours; it bursts what is closed.",
             instead=_GAS, source="common-practice"),
    _refuses("oxygen in a closed vessel", "peroxide", vessels=CLOSED,
             what="Peroxide gives off oxygen; it bursts what is closed.",
             instead=_GAS, source="epa-chart"),
    _refuses("resin closed in", "epoxide, polyol, isocyanate", "hardener, isocyanate, amine",
             vessels=CLOSED,
             what="A mixed resin sets hot, and bursts what is closed.",
             instead="Mix what can be spread at once, in an open pail, by its sheet.",
             source="common-practice"),
    _refuses("acid in metal",
             "strong acid, weak acid, spent acid, added acid, metal salt, hypochlorite, oxidiser",
             vessels=METAL,
             what="It eats steel, zinc and aluminium, gives off hydrogen, and the metal spoils the "
                  "colour.",
             instead="Plastic for all that touches stain: tub, paddle, wand, spring and valve.",
             source="cfr-265-v, stain-sheets"),
    _refuses("base in metal", "lye, alkali, lime, ammonia, carbonate", vessels=METAL,
             what="A base gives off hydrogen from aluminium and zinc.",
             instead="A plastic pail.", source="cfr-265-v, epa-chart"),
    _refuses("acid on a bare floor", "added acid, unnamed acid, weak acid", vessels=("floor",),
             what="An etch before the stain takes the lime away: the stain no longer reacts.",
             instead="Open a tight slab by sanding, on a sample first.", source="stain-sheets"),
    _refuses("bleach on the floor", "hypochlorite, peroxide", vessels=("floor",),
             what="What stays in the pores gives off chlorine under the stain.",
             instead="Water, a neutral cleaner and scrubbing.", source="common-practice"),
    _refuses("spark in the vacuum", "flammable", vessels=("wet vacuum",),
             what="The motor lights the vapour.",
             instead="Clay takes it up; into a metal can with a lid, outside.",
             source="common-practice"),
    _refuses("acid in the vacuum", "strong acid, hypochlorite", vessels=("wet vacuum",),
             what="Fumes of acid blow out with the air of the motor, and eat it.",
             instead="Bicarbonate first, until the fizz ends; then vacuum.",
             source="common-practice"),
    _refuses("drink bottle",
             "stain, strong acid, weak acid, ammonia, lye, alkali, hypochlorite, oxidiser, "
             "flammable, organic, finish, rinse, residue, carbonate, lime, sulfite, brine, "
             "combustible, clay, dye",
             vessels=("drink bottle",),
             what="Somebody drinks it.",
             instead="Its own jug, with a label.", source="common-practice"),
    _refuses("gas in a sprayer", "hypochlorite, peroxide, ammonia",
             vessels=("sprayer", "metal sprayer"),
             what="Seals and hose of a sprayer hold acid from the stain: a choking "
                  "gas under pressure.",
             instead="Water flushes a sprayer.", source="common-practice"),
    _refuses("acid in a sprayer", "added acid, unnamed acid", vessels=("sprayer",),
             what="Strong acid under pressure comes out as a mist, or all at once.",
             instead="Mix in an open tub; only the cut stain goes into the sprayer.",
             source="common-practice"),
)  # fmt: skip
"""No pressure, no spark, no metal, no etch; acid into water."""

CAUTIONS = (
    _warns("water into a cut", "water", "stain", in_turn=True, vessels=_POURED_INTO,
           what="Water poured into acid splashes and heats where it lands.",
           instead="Water first in another tub, then the mix into it, slowly.",
           source="stain-sheets"),
    _warns("pressure", "stain, emulsion, solvent-borne, silicate, carbonate, cleaner",
           vessels=("sprayer",),
           what="It stands under pressure when pumped.",
           instead="Release the pressure before opening; face and hands out of its way. A sprayer "
                   "that carried stain is flushed with a gallon of water before anything else.",
           source="common-practice"),
    _warns("label", "stain, strong acid, ammonia, rinse",
           vessels=("closed jug", "vented drum"),
           what="Poured over, it has no label.",
           instead="Write contents, cut, batch, day and the danger words on it now.",
           source="hazcom"),
    _warns("keep flames away", "flammable",
           what="Its vapour creeps along the floor to the next flame or spark.",
           instead="Pilot lights and heaters out, air moving out of the house.",
           source="common-practice"),
    _warns("sheet not read", "sheet not read",
           what="Nobody entered that its own sheet was read.",
           instead="Read it, above all what it must not meet, and enter that.",
           source="common-practice"),
    _warns("strong oxidiser", "hypochlorite, peroxide",
           what="It reacts with nearly all that stands on this job.",
           instead="Better not on the van at all.", source="epa-chart"),
    _warns("lye burns", "lye", what="It blinds; it heats in water.",
           instead="Goggles and face shield; better none on this job.", source="epa-chart"),
    _warns("chromate residue", "chromate", "strong acid", vessels=("floor",),
           what="Chromate may lie on the floor, and fresh acid wakes it.",
           instead="A fit-tested respirator with acid-gas and P100 cartridges, air out of the "
                   "house; what a licensed hygienist says wins.",
           source="common-practice, osha-chromium"),
)  # fmt: skip
