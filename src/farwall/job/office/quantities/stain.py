"""Stain by colour, coat and field, and added acid where it was told: the plan's own need. Pure."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from statistics import NormalDist
from typing import Any

from farwall.evidence import Rank, weakest
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.numbered import numbered
from farwall.facts.plan import Field, Plan, PlanCoat
from farwall.facts.quantities import Quantity, Share
from farwall.job.first_thirst import first_thirst
from farwall.job.office.quantities.basis import Basis, line
from farwall.mix.buying import USUAL_RESERVE_SAMPLED, USUAL_RESERVE_UNSAMPLED
from farwall.mix.thirst import Thirst, first_belief
from farwall.nouns import dataclass

_EIGHTY = NormalDist().inv_cdf(0.9)
"""Low and high hold four times in five."""
_CERTAINTY_PERCENT = 99.0
"""Where a plan tells none."""


@dataclass(frozen=True)
class CoatNeed:
    """Litres of mix of a coat: of each field, in all with its range, and to be ready for.

    stain_share, acid_share: litres of them in a litre of mix.
    """

    coat: str
    stain: str
    cut: str
    fields: tuple[Field, ...]
    litres: tuple[float, ...]
    belief: Thirst
    ready_l: float
    stain_share: float
    acid_share: float

    @property
    def likely_l(self) -> float:
        """What the plan's bands take."""
        return math.fsum(self.litres)

    @property
    def range_l(self) -> tuple[float, float]:
        """What all fields take together, four times in five."""
        mean, spread = self.belief.total(self.litres)
        low, high = (math.exp(mean + sign * _EIGHTY * spread) for sign in (-1, 1))
        return min(low, self.likely_l), max(high, self.likely_l)


def coat_needs(basis: Basis) -> tuple[CoatNeed, ...]:
    """The coats of a plan that are sprayed, in order; those that have a mix."""
    plan, own = basis.ground.plan, {one.id: one.spread_percent for one in basis.settled.coats}
    found = (
        _coat_need(plan, coat, _belief(plan, coat.id, own.get(coat.id)))
        for coat in plan.inputs.coats
    )
    return tuple(one for one in found if one is not None)


def _belief(plan: Plan, coat: str, spread_percent: float | None) -> Thirst:
    """As the plan's gate had it: what closed jobs taught, else the coat's own spread."""
    taught = any(
        one.name == f"coats.{coat}.spread_percent" and one.rank == Rank.LEARNED.value
        for one in plan.grounds
    )
    if taught or spread_percent is None:
        return first_thirst(plan, coat)
    return first_belief(spread_percent)


def _coat_need(plan: Plan, of: PlanCoat, belief: Thirst) -> CoatNeed | None:
    coat = of.id
    fields = tuple(one for one in plan.fields if one.coat == coat)
    mixes = [one for one in plan.mixes if one.coat == coat]
    mixed = math.fsum(one.stain_l + one.water_l + one.acid_l for one in mixes)
    litres = tuple(math.fsum(band.litres for band in one.bands) for one in fields)
    held = [(field, much) for field, much in zip(fields, litres, strict=True) if much > 0]
    if not held or mixed <= 0:
        return None
    chance_dry = 1 - certainty_percent(plan) / 100
    needed = tuple(much for _, much in held)
    ready = max(mixed, belief.enough_for_all_l(needed, chance_dry=chance_dry))
    return CoatNeed(
        coat, of.stain, of.cut, tuple(field for field, _ in held), needed, belief, ready,
        math.fsum(one.stain_l for one in mixes) / mixed,
        math.fsum(one.acid_l for one in mixes) / mixed,
    )  # fmt: skip


def certainty_percent(plan: Plan) -> float:
    """The certainty that the plan's purchase was reckoned with."""
    told = (plan.buying or {}).get("certainty_percent")
    return float(told) if isinstance(told, int | float) else _CERTAINTY_PERCENT


def stain_lines(basis: Basis) -> tuple[Quantity, ...]:
    """A line for each stain, then one for acid that is added to a mix."""
    plan = basis.ground.plan
    needs = coat_needs(basis)
    bought = _bought(plan)
    made = []
    for stain in dict.fromkeys(one.stain for one in needs):
        own = [one for one in needs if one.stain == stain]
        made.append(_stain_line(basis, stain, own, bought.get(stain, {})))
    acid = [one for one in needs if one.acid_share > 0]
    return (*made, *([_acid_line(acid)] if acid else []))


def _bought(plan: Plan) -> dict[str, dict[str, Any]]:
    told: Any = (plan.buying or {}).get("stains", [])
    return {str(one["stain"]): one for one in told}


def _stain_line(
    basis: Basis, stain: str, own: Sequence[CoatNeed], bought: dict[str, Any]
) -> Quantity:
    """The plan's purchase is the truth of what to be ready for; coats share it as they need it."""
    reckoned = math.fsum(one.ready_l * one.stain_share for one in own)
    ready = float(bought.get("ready_l", reckoned))
    shares = tuple(
        share for one in own for share in _shares(one, ready / reckoned if reckoned else 1.0)
    )
    ends = _ends([(one, one.stain_share) for one in own])
    lots = tuple(map(str, bought.get("lots", ()))) or _lots(basis, stain)
    rank, source = _rank(basis, [one.coat for one in own])
    made = line(
        "stain",
        _called(basis, stain),
        ends,
        _rule(basis, own, ends[1], lots),
        id_=f"stain:{stain}",
        unit="l",
        ready=ready,
        rank=rank,
        source=source,
        of=stain,
    )
    return _with(made, shares, lots)


def _with(made: Quantity, shares: tuple[Share, ...], lots: tuple[str, ...] = ()) -> Quantity:
    coats = {one.coat for one in shares}
    return replace(
        made, shares=shares, lots=lots, coat=next(iter(coats)) if len(coats) == 1 else ""
    )


def _ends(own: Sequence[tuple[CoatNeed, float]]) -> tuple[float, float, float]:
    """Coats that share a stain are thirsty together: their ends add up."""
    return (
        math.fsum(one.range_l[0] * share for one, share in own),
        math.fsum(one.likely_l * share for one, share in own),
        math.fsum(one.range_l[1] * share for one, share in own),
    )


def _shares(one: CoatNeed, scaled: float) -> list[Share]:
    """By field: what the coat is ready for is shared as the fields likely need it."""
    spread = math.sqrt(one.belief.variance + one.belief.field_variance)
    low, high = (math.exp(sign * _EIGHTY * spread) for sign in (-1, 1))
    ready = one.ready_l * one.stain_share * scaled / one.likely_l
    return [
        Share(
            much * one.stain_share * low, much * one.stain_share, much * one.stain_share * high,
            much * ready, coat=one.coat, field=field.id,
        )
        for field, much in zip(one.fields, one.litres, strict=True)
    ]  # fmt: skip


def _rank(basis: Basis, coats: Sequence[str]) -> tuple[Rank, str]:
    """No stronger than the coverage of its coats and the spread that the reserve rests on."""
    told = {one.name: one for one in basis.ground.plan.grounds}
    names = [f"coats.{coat}.m2_per_l" for coat in coats] + ["wishes.spread_percent"]
    held = [told[name] for name in names if name in told]
    ranks = [Rank(one.rank) for one in held] or [Rank.GUESS]
    sources = dict.fromkeys(one.source for one in held if one.source)
    return weakest(*ranks), ", ".join((*sources, "log-normal")) if held else OUR_GUESS


def _rule(basis: Basis, own: Sequence[CoatNeed], likely: float, lots: tuple[str, ...]) -> str:
    """What each coat takes, what it is ready for, what finishers would take."""
    plan = basis.ground.plan
    said = [
        f"coat {numbered(plan, one.coat)}: {basis.said(one.likely_l, 'l')} of mix at {one.cut} on "
        f"{basis.area_said(math.fsum(field.area_m2 for field in one.fields))}, wet laps counted: "
        f"{basis.said(one.likely_l * one.stain_share, 'l')} of stain."
        for one in own
    ]
    said.append(f"Ready so that it is enough {certainty_percent(plan):g} times in 100.")
    sampled = all(
        any(sample.m2_per_l for sample in coat.samples)
        for coat in basis.settled.coats
        if coat.id in {one.coat for one in own}
    )
    share = USUAL_RESERVE_SAMPLED if sampled else USUAL_RESERVE_UNSAMPLED
    usual = basis.said(likely * (1 + share), "l")
    said.append(f"Finishers take {share * 100:g} % more than the need: {usual}.")
    if len(lots) > 1:
        said.append("Its lots are boxed before any of it is cut.")
    else:
        said.append("One lot; all of a field out of one boxed batch.")
    return " ".join(said)


def _lots(basis: Basis, stain: str) -> tuple[str, ...]:
    return next((one.lots for one in basis.settled.stains if one.id == stain), ())


def _called(basis: Basis, stain: str) -> str:
    return next((one.name or one.id for one in basis.settled.stains if one.id == stain), stain)


def _acid_line(own: Sequence[CoatNeed]) -> Quantity:
    ready = math.fsum(one.ready_l * one.acid_share for one in own)
    shares = tuple(
        Share(low, likely, high, one.ready_l * one.acid_share, coat=one.coat)
        for one in own
        for low, likely, high in [_ends([(one, one.acid_share)])]
    )
    coats = ", ".join(one.coat for one in own)
    rule = (
        f"Added to the mix of {coats}, as told. The maker's sheet does not cover it: a sample "
        "with this very mix first."
    )
    made = line(
        "other",
        "muriatic acid",
        _ends([(one, one.acid_share) for one in own]),
        rule,
        id_="added-acid",
        unit="l",
        ready=ready,
        source=PRACTICE,
        of="muriatic acid",
    )
    return _with(made, shares)
