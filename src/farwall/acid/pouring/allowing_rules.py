"""Rules that say what goes together, and what may stand in which vessel. What none names, no."""

from __future__ import annotations

from functools import partial

from farwall.acid.pouring.making import a_rule
from farwall.acid.pouring.nouns import OPEN

_allows = partial(a_rule, "allowed", source="common-practice")
_warns = partial(a_rule, "allowed with warning")

ADDED_ACID = (
    "The maker's sheet does not cover a mix with added acid; make a sample with this very mix "
    "first; fumes rise."
)

TOGETHER = (
    _allows("with water", "water", "water-borne", what="Water thins it or rinses it."),
    _allows("coat over coat", "stain", "residue", vessels=("floor",),
            what="A coat goes over a dry one."),
    _warns("added acid", "stain", "added acid", vessels=("open tub",),
           what=ADDED_ACID, instead="Opening the slab by sanding is the honest way; record how "
           "much acid went in.", source="common-practice"),
    _warns("sampled mix", "stain", "stain, dye",
           what="A sample of this very mix was entered; no sheet covers it.",
           instead="Watch the tub for fizz, heat and lumps; all of a coat from one batch.",
           unless_sampled=True, source="common-practice"),
    _warns("fizz", "carbonate", "strong acid, spent acid, rinse, residue", vessels=OPEN,
           what="It fizzes and foams: carbon dioxide, and fumes of acid with it. What was "
                "neutralised stains no more.",
           instead="Small shares, an open tub less than half full, air out of the house; never "
                   "closed.",
           source="stain-sheets"),
    _warns("lime on acid", "lime", "strong acid, spent acid, rinse, residue", vessels=OPEN,
           what="It heats as it neutralises, and ends strongly alkaline.",
           instead="Small shares, stirred with plastic; goggles. Bicarbonate is kinder.",
           source="stain-sheets"),
    _warns("ammonia on a dry floor", "ammonia", "residue", vessels=("floor",),
           what="Ammonia chokes where it is not aired, and holds copper dissolved.",
           instead="Only when the floor is dry and the acid smell is gone, aired, never near "
                   "bleach; bicarbonate is kinder.",
           source="common-practice"),
    _allows("scrubbing", "cleaner", "residue, rinse", vessels=("floor", "wet vacuum"),
            what="This scrubs the residue off."),
    _allows("cleaner with bicarbonate", "cleaner", "carbonate",
            what="Bicarbonate and detergent scrub together."),
    _allows("bases together", "carbonate, lime", "carbonate, lime",
            what="Bases of a spill do not hurt each other."),
    _allows("rinse water together", "rinse", "rinse, water, cleaner, residue",
            vessels=("vented drum", "wet vacuum", "open tub", "floor"),
            what="Rinse water goes to rinse water."),
    _allows("clay", "clay",
            "water-borne, strong acid, residue, rinse, carbonate, lime, lye, clay",
            what="Clay takes it up and does not react."),
    _warns("clay and solvent", "clay", "flammable",
           what="Clay takes it up; its vapour still burns.",
           instead="Into a metal can with a lid, outside.", source="common-practice"),
    _warns("two parts of a kit", "epoxide", "hardener", vessels=("open tub", "floor"),
           what="It sets hot in a heap.",
           instead="Only parts of one kit, by its sheet; spread at once.",
           source="common-practice"),
    _warns("two parts of urethane", "polyol", "isocyanate", vessels=("open tub", "floor"),
           what="It sets, and its isocyanate sensitises.",
           instead="Only parts of one kit, by its sheet, with the respirator that it names.",
           source="common-practice"),
    _warns("thinner", "thinner", "solvent-borne",
           what="Thinned, it is more flammable and may leave the sheet's limits.",
           instead="Only the thinner and the share that its sheet names.",
           source="common-practice"),
    _warns("thinned with water", "emulsion, silicate", "water",
           what="Too much water weakens a film.",
           instead="Only the share that its sheet names.", source="common-practice"),
)  # fmt: skip

STANDS = (
    _allows("stands in a tub",
            "water-borne, flammable, finish, clay, combustible, organic",
            vessels=("open tub",), what="It may stand in an open plastic tub."),
    _allows("lies on the floor",
            "water, stain, residue, carbonate, lime, cleaner, ammonia, finish, dye, flammable, "
            "rinse, clay",
            vessels=("floor",), what="It is used on the floor."),
    _allows("is spilt", "water-borne, flammable, finish, clay, organic", vessels=("spill",),
            what="It was spilt, and is taken up."),
    _allows("stands in the sprayer",
            "water, stain, emulsion, solvent-borne, silicate, carbonate, cleaner",
            vessels=("sprayer",), what="It is sprayed."),
    _allows("stands in a jug",
            "water, stain, added acid, cleaner, finish, flammable, ammonia, carbonate, weak acid, "
            "hypochlorite",
            vessels=("closed jug",), what="It keeps in a closed jug."),
    _allows("stands in a closed drum", "water, clay", vessels=("closed drum",),
            what="It keeps in a closed drum."),
    _allows("stands in a vented drum", "water, rinse, carbonate, lime, clay",
            vessels=("vented drum",), what="It is kept under a vented lid."),
    _allows("stands in a metal pail", "water, clay, thinner, solvent-borne, flammable",
            vessels=("metal pail",), what="It may stand in metal."),
    _allows("is vacuumed", "water, rinse, residue, carbonate, cleaner",
            vessels=("wet vacuum",), what="A wet vacuum takes it up."),
    _allows("is drunk", "water", vessels=("drink bottle",), what="Water is for drinking."),
    _allows("stands in a metal sprayer", "water", vessels=("metal sprayer",),
            what="Water hurts no metal."),
)  # fmt: skip
