"""Water leaving a wet surface: rival published relations, one chooser, one spread.

All of them were made for something else than a film of stain on cured
concrete: the Uno and Menzel relations for bleed water on fresh concrete, the
Carrier form for pools, Shah's for quiet pools indoors. For a stain film each
is an extrapolation, which is why a timed sample always wins over them, and
why evaporation alone is never shown as open time (see `air.suction`).

Wind: Uno and Menzel take it 0.5 m (20 in) above the slab, the others at the
water. None takes the 10 m wind of a weather file (see `air.day`).
"""

from __future__ import annotations

from farwall.air.conditions import Conditions
from farwall.air.relations import RELATIONS, Relation
from farwall.errors import Mistake, Refused
from farwall.evidence import Rank
from farwall.nouns import dataclass

ESTIMATE_MAY_MISS_BY = 0.4
"""True evaporation may differ from the estimate by 40 % of it either way [hover-2020]."""

CHOICE = ("uno", "menzel")
"""The chooser's order: the strongest rank first. Menzel rests on vapour pressure and not on a
fitted power, so it is also what is left where none was made for the conditions."""


@dataclass(frozen=True)
class Evaporation:
    """A rate with its range [kg/(m²·h)], the relation it came from, and what to beware of."""

    rate_kg_m2_h: float
    low_kg_m2_h: float
    high_kg_m2_h: float
    relation: str
    rank: Rank
    source: str
    made_for: str
    warnings: tuple[str, ...] = ()


def named(relation: str) -> Relation:
    """The relation of that name. Raises `Refused` with the names there are."""
    try:
        return RELATIONS[relation]
    except KeyError:
        raise Refused(
            Mistake(
                "relation",
                f"There is no relation called {relation!r}.",
                f"Choose one of {', '.join(RELATIONS)}, or leave it out.",
            )
        ) from None


def chosen(conditions: Conditions) -> Relation:
    """The relation of strongest rank that was made for these conditions, else Menzel's."""
    fitting = (RELATIONS[name] for name in CHOICE if not RELATIONS[name].strays(conditions))
    return next(fitting, RELATIONS["menzel"])


def evaporation(conditions: Conditions, *, relation: str | None = None) -> Evaporation:
    """Water leaving the wet surface, with its range. [kg/(m²·h)], never below zero.

    conditions: slab and air over it. relation: one of `relations.RELATIONS`;
    left out, the chooser's. `low` and `high` span every relation that was made
    for these conditions and 40 % either side of the one used [hover-2020].
    Outside the range a relation was made for the answer carries a warning.
    Raises `Refused` for a relation that does not exist.
    """
    used = chosen(conditions) if relation is None else named(relation)
    signed = used.rate(conditions)
    rate = max(0.0, signed)
    others = [
        each.positive(conditions) for each in RELATIONS.values() if not each.strays(conditions)
    ]
    warnings = list(used.strays(conditions))
    if signed < 0:
        warnings.append("The air is damper than the slab can take up: water condenses on it.")
    return Evaporation(
        rate_kg_m2_h=rate,
        low_kg_m2_h=min([*others, rate * (1 - ESTIMATE_MAY_MISS_BY)]),
        high_kg_m2_h=max([*others, rate * (1 + ESTIMATE_MAY_MISS_BY)]),
        relation=used.name,
        rank=used.rank,
        source=used.source,
        made_for=used.made_for,
        warnings=tuple(warnings),
    )
