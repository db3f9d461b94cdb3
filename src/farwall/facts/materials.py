"""What stands on the floor and in the van to be poured: the job's own list of materials."""

from __future__ import annotations

from typing import Annotated, Literal

from annotated_types import Ge, Le, MaxLen, MinLen

from farwall.nouns import dataclass

MaterialKind = Literal[
    "water", "stain", "mixed stain", "dried stain", "muriatic acid", "etching acid", "bicarbonate",
    "soda ash", "lime", "ammonia water", "lye", "bleach", "pool chlorine", "peroxide",
    "oxygen bleach", "vinegar", "neutral cleaner", "alkaline cleaner", "trisodium phosphate",
    "ammonia cleaner", "acid cleaner", "hand soap", "disinfectant", "drain opener", "rust remover",
    "dechlorinator", "citrus stripper", "solvent stripper", "solvent", "alcohol", "gasoline",
    "solvent dye", "water dye", "water sealer", "solvent sealer", "epoxy part A", "epoxy part B",
    "urethane part A", "urethane part B", "floor finish", "densifier", "rinse water",
    "neutralised rinse water", "absorbent", "sawdust", "rags", "cement", "colour hardener",
    "calcium chloride", "other",
]  # fmt: skip
"""`dried stain`: the floor after its dwell, with all that lies on it. `absorbent`: of clay."""


@dataclass(frozen=True)
class Material:
    """One material in hand: its own name, the kind of thing it is, whether its sheet was read.

    `stain`: id of the job's stain that it is, for `stain` and `mixed stain`. `sheet_ph`: as its
    sheet or a strip says. `never_with`: kinds that its sheet forbids to meet it.
    `may_with`: kinds that its sheet allows by name. `sampled_with`: ids of materials or stains
    with which a sample of the very mix was made on this slab.
    """

    id: Annotated[str, MinLen(1), MaxLen(80)]
    kind: MaterialKind
    name: Annotated[str, MaxLen(120)] = ""
    stain: str = ""
    sheet_read: bool = False
    sheet_ph: Annotated[float, Ge(-2), Le(16)] | None = None
    never_with: tuple[MaterialKind, ...] = ()
    may_with: tuple[MaterialKind, ...] = ()
    sampled_with: tuple[str, ...] = ()


def plain_name(word: str) -> str:
    """A name as it is compared: `Muriatic-acid ` is `muriatic acid`."""
    return word.strip().casefold().replace("-", " ").replace("_", " ")
