"""Which traits each kind of material has: the chemistry of the gate in one table.

Where the kind leaves it open (a solvent may be acetone, an acid cleaner may be nitric acid), it
has the traits of the worst that is sold under that word. Groups follow the appendix of the federal
rules on incompatible wastes [cfr-265-v] and the chart of reactivity groups [epa-chart] where these
have one; what a trade product commonly holds is from memory of sheets.
"""

from __future__ import annotations

from typing import cast, get_args

from farwall.acid.pouring.nouns import Has, Trait
from farwall.evidence import Rank
from farwall.facts.materials import MaterialKind

_BY_KIND: dict[MaterialKind, str] = {
    "water": "water, water-borne",
    "stain": "stain, strong acid, concentrated acid, metal salt, water-borne",
    "mixed stain": "stain, strong acid, metal salt, water-borne",
    "dried stain": "residue, spent acid, metal salt, water-borne",
    "muriatic acid": "strong acid, concentrated acid, added acid, water-borne",
    "etching acid": "strong acid, concentrated acid, unnamed acid, water-borne",
    "acid cleaner": "strong acid, unnamed acid, organic, water-borne",
    "rust remover": "strong acid, unnamed acid, fluoride, water-borne",
    "vinegar": "weak acid, organic, water-borne",
    "bicarbonate": "carbonate, water-borne",
    "soda ash": "carbonate, alkali, water-borne",
    "lime": "lime, alkali, water-borne",
    "cement": "lime, alkali, water-borne",
    "colour hardener": "lime, alkali, dye, water-borne",
    "ammonia water": "ammonia, water-borne",
    "ammonia cleaner": "ammonia, cleaner, organic, water-borne",
    "lye": "lye, alkali, water-borne",
    "bleach": "hypochlorite, oxidiser, alkali, water-borne",
    "pool chlorine": "hypochlorite, oxidiser, water-borne",
    "peroxide": "peroxide, oxidiser, water-borne",
    "oxygen bleach": "peroxide, oxidiser, alkali, water-borne",
    "neutral cleaner": "cleaner, organic, water-borne",
    "alkaline cleaner": "cleaner, alkali, amine, organic, water-borne",
    "trisodium phosphate": "cleaner, alkali, water-borne",
    "hand soap": "cleaner, organic, water-borne",
    "disinfectant": "unknown, hypochlorite, oxidiser, amine, organic, water-borne",
    "drain opener": "unknown, lye, strong acid, concentrated acid, water-borne",
    "dechlorinator": "sulfite, water-borne",
    "citrus stripper": "flammable, organic, water-borne",
    "solvent stripper": "flammable, chlorinated solvent, amine, organic",
    "solvent": "flammable, ketone, alcohol, thinner, organic",
    "alcohol": "flammable, alcohol, organic",
    "gasoline": "flammable, organic, no place",
    "solvent dye": "flammable, ketone, dye, solvent-borne, organic",
    "water dye": "dye, emulsion, organic, water-borne",
    "water sealer": "finish, emulsion, amine, organic, water-borne",
    "floor finish": "finish, emulsion, amine, organic, water-borne",
    "solvent sealer": "finish, flammable, solvent-borne, organic",
    "epoxy part A": "finish, epoxide, organic",
    "epoxy part B": "finish, hardener, amine, organic",
    "urethane part A": "finish, polyol, organic",
    "urethane part B": "finish, isocyanate, organic",
    "densifier": "finish, silicate, alkali, water-borne",
    "rinse water": "rinse, spent acid, metal salt, may give gas, water-borne",
    "neutralised rinse water": "rinse, metal salt, may give gas, water-borne",
    "absorbent": "clay",
    "sawdust": "combustible, organic",
    "rags": "combustible, organic",
    "calcium chloride": "brine, water-borne",
    "other": "unknown",
}

_CHART: frozenset[str] = frozenset({
    "strong acid", "concentrated acid", "lye", "alkali", "lime", "hypochlorite", "peroxide",
    "chromate", "oxidiser", "flammable", "ketone", "alcohol", "chlorinated solvent", "combustible",
    "isocyanate", "epoxide", "amine", "weak acid", "organic",
})  # fmt: skip
"""Traits that are groups of the chart; which product falls into them is from memory."""

ONE_SUBSTANCE: frozenset[MaterialKind] = frozenset({
    "water", "dried stain", "muriatic acid", "bicarbonate", "soda ash", "lime", "ammonia water",
    "lye", "bleach", "peroxide", "rinse water", "neutralised rinse water", "absorbent", "sawdust",
    "rags", "cement", "vinegar", "trisodium phosphate", "calcium chloride",
})  # fmt: skip
"""Kinds that are the same whoever sells them; any other kind is a maker's own mixture."""

STRONG: frozenset[Trait] = frozenset({
    "strong acid", "lye", "oxidiser", "flammable", "isocyanate", "epoxide", "amine", "fluoride",
})  # fmt: skip
"""What must not meet anything else before its own sheet was read."""

_KNOWN: frozenset[str] = frozenset(get_args(Trait))


def traits_of(kind: MaterialKind) -> tuple[Has, ...]:
    """The traits of a kind, each with what says so."""
    return tuple(_has(kind, word) for word in _BY_KIND[kind].split(", "))


def _has(kind: MaterialKind, word: str) -> Has:
    if word not in _KNOWN:
        raise KeyError(word)
    source = "epa-chart" if word in _CHART else "stain-sheets" if _in_sheets(kind) else ""
    return Has(cast("Trait", word), f"it is {kind}", source or "common-practice", Rank.MEMORY)


def _in_sheets(kind: MaterialKind) -> bool:
    return kind in {"stain", "mixed stain", "dried stain", "muriatic acid"}
