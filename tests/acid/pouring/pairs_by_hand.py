"""Kinds that must never meet, written out by hand, kind by kind.

It knows nothing of traits or rules and shares nothing with the gate: whoever changes a trait finds
out here what it let through. From the same chemistry, told the other way about: from memory, and
40 CFR 265 appendix V where that names the kinds.
"""

ACIDS = ("stain", "mixed stain", "muriatic acid", "etching acid", "acid cleaner", "rust remover")
SOUR = (*ACIDS, "vinegar", "rinse water", "dried stain", "drain opener")
CHLORINE = ("bleach", "pool chlorine", "disinfectant")
AMMONIA = ("ammonia water", "ammonia cleaner")
BURNS = ("solvent", "solvent stripper", "alcohol", "gasoline", "solvent dye", "solvent sealer")
OXYGEN = ("peroxide", "oxygen bleach")
RESINS = ("epoxy part A", "epoxy part B", "urethane part A", "urethane part B")
FILMS = (*RESINS, "water sealer", "solvent sealer", "floor finish", "densifier")
WASHES = ("neutral cleaner", "alkaline cleaner", "trisodium phosphate", "ammonia cleaner",
          "hand soap")  # fmt: skip
FIBRE = ("sawdust", "rags")

NEVER = [
    (CHLORINE, (*SOUR, *AMMONIA, *BURNS, *OXYGEN, *RESINS, *FIBRE, *WASHES[:2], "hand soap",
                "neutralised rinse water", "water sealer", "floor finish", "citrus stripper",
                "dechlorinator")),
    (("bleach",), ("pool chlorine", "disinfectant")),
    (("pool chlorine",), ("disinfectant",)),
    (ACIDS, (*AMMONIA, "lye", "drain opener", *BURNS, *OXYGEN, *FILMS, *WASHES, *FIBRE,
             "dechlorinator", "vinegar", "disinfectant")),
    (("stain", "mixed stain"), ("etching acid", "acid cleaner", "rust remover", "water dye",
                                "citrus stripper", "calcium chloride", "colour hardener")),
    (("muriatic acid",), ("etching acid", "acid cleaner", "rust remover", "dried stain")),
    (("etching acid",), ("acid cleaner", "rust remover", "dried stain", "rinse water")),
    (OXYGEN, (*BURNS, *FIBRE, *AMMONIA, *SOUR, "lye", "lime", "epoxy part B",
              "neutralised rinse water")),
    (("lye",), (*SOUR, *AMMONIA, "solvent stripper", "epoxy part A", "urethane part B")),
    (("lime",), AMMONIA),
    (("urethane part B",), ("water", "epoxy part B", *AMMONIA, *BURNS[:3], "soda ash")),
    (("epoxy part A",), ("urethane part B", "urethane part A")),
    (("solvent", "gasoline", "solvent stripper", "alcohol"), FIBRE),
    (("vinegar",), ("dried stain", "rinse water", *AMMONIA, "dechlorinator")),
    (("rinse water", "neutralised rinse water"), (*AMMONIA, *FILMS, "vinegar", "muriatic acid")),
    (("dried stain",), FILMS),
    (("solvent sealer", "solvent", "solvent dye"), ("water",)),
]  # fmt: skip


def never_pairs():
    """Every pair of kinds that must never meet."""
    pairs = {frozenset((one, other)) for some, others in NEVER for one in some for other in others}
    return sorted(tuple(sorted(pair)) for pair in pairs if len(pair) == 2)


ALONE = ("gasoline", "rust remover", "drain opener", "disinfectant", "other")
"""Refused even by themselves."""
