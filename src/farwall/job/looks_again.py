"""The looks into the last fields, told anew when the rest of a day was laid again. Pure."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.facts.look import Look
from farwall.facts.plan import Field, Mix, Plan
from farwall.job.first_thirst import first_thirst
from farwall.job.mix_needs import mix_needs
from farwall.mix.gate import budget
from farwall.mix.ways import looks_of_coat


def looks_again(plan: Plan, fields: Sequence[Field], *, after_min: float) -> tuple[Look, ...]:
    """The looks still to come in these fields, by the ways that the plan took."""
    found: list[Look] = []
    for way in plan.ways:
        own = sorted((f for f in fields if f.coat == way.coat and f.bands), key=lambda f: f.order)
        if not own or way.way == "at stop lines":
            continue
        belief = first_thirst(plan, way.coat)
        chances = budget(_chance_dry(plan, way.coat), len(own))
        looks = looks_of_coat(replace(way, way="look inside"), mix_needs(own), belief, chances)
        found += [look for look in looks if look.at_min >= after_min]
    return tuple(found)


def boxed_again(
    mixes: Sequence[Mix], fields: Sequence[Field], looks: Sequence[Look]
) -> tuple[Mix, ...]:
    """Mixes inside a field, before a band that there is: that of the look that mixes by the plan.

    Where none does any more, at the field's stop line.
    """
    bands = {band.id for field in fields for band in field.bands}
    mixing = {look.coat: look.band for look in looks if look.mixes}
    return tuple(
        mix
        if not mix.before_band or mix.before_band in bands
        else replace(mix, before_band=mixing.get(mix.coat, ""))
        for mix in mixes
    )


def _chance_dry(plan: Plan, coat: str) -> float:
    """The coat's whole chance of running dry, as its gates share it."""
    gates = (plan.buying or {}).get("gates")
    own = [g for g in gates if g["coat"] == coat] if isinstance(gates, list) else []
    if own:
        return sum(float(gate["chance_dry"]) for gate in own)
    return 0.01 / max(len(plan.inputs.coats), 1)
