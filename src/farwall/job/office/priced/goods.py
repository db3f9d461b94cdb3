"""What materials come to in the scope of an offer: its part of what is bought, else allowances."""

from __future__ import annotations

import math
from collections.abc import Sequence
from decimal import Decimal

from farwall.evidence import Rank, weakest
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.kept_gear import Life, lives_of
from farwall.job.office.buying import Buying
from farwall.job.office.ground import OfficeGround
from farwall.job.office.priced.kept import share_of
from farwall.job.office.scope import Scope, scope_of
from farwall.mix.cut import parse_cut
from farwall.nouns import dataclass
from farwall.price.goods import AS_BOUGHT, AS_GUESSED, GROUP_OF, GROUPS, Goods, allowances
from farwall.price.hours import Sizes, Three
from farwall.price.money import NOTHING, added, amount, rounded

LISTED = "as the shopping list has it"
SHARED = "as the shopping list has it, kept gear by its share of the jobs it lasts"
_TOLD = "told by the firm"


@dataclass(frozen=True)
class _Listed:
    """A line of the list, or what an offer takes of it: its cost, its rank, its ends (factors)."""

    cost: Decimal
    rank: Rank
    ends: Three
    shared: bool = False


def _listed(cost: Decimal, rank: str, life: Life | None) -> _Listed:
    """A price that was told is surer than a guessed one; of kept gear a job bears its share."""
    guessed = rank == Rank.GUESS.value
    ends = AS_GUESSED if guessed else AS_BOUGHT
    known = Rank.GUESS if guessed else Rank.MEASURED
    if life is None:
        return _Listed(cost, known, ends)
    low, likely, high = (one * of for one, of in zip(ends, life.ends, strict=True))
    return _Listed(
        share_of(cost, life), weakest(known, life.rank), (low, likely, high), life.likely > 1
    )


def _together(group: str, parts: Sequence[_Listed]) -> Goods:
    """All lines of a group; the weakest gives the rank."""
    whole = added(one.cost for one in parts)
    low, likely, high = (
        math.fsum(float(one.cost / whole) * one.ends[n] for one in parts) for n in range(3)
    )
    rank = weakest(*(one.rank for one in parts if one.cost))
    source = {Rank.GUESS: OUR_GUESS, Rank.PRACTICE: PRACTICE}.get(rank, _TOLD)
    rule = SHARED if any(one.shared for one in parts) else LISTED
    return Goods(group, rounded(whole), rule, rank.value, source, (low, likely, high))


def goods_of(ground: OfficeGround, buying: Buying, scope: Scope, sizes: Sizes) -> tuple[Goods, ...]:
    """Every group in the order of the table. A part of the job takes its part of what is bought:
    containers are not packed anew for it."""
    listed = _of_list(ground, buying, scope)
    litres = sum(stain_l(ground, scope).values())
    guessed = {one.group: one for one in allowances(sizes, stain_l=litres)}
    found = []
    for group in (*GROUPS, "delivery"):
        parts = listed.get(group, [])
        if added(one.cost for one in parts) > 0:
            found.append(_together(group, parts))
        elif group in guessed:
            found.append(guessed[group])
    return tuple(one for one in found if one.likely > 0)


def stain_l(ground: OfficeGround, scope: Scope) -> dict[str, float]:
    """Litres of each stain, undiluted, that the coats of the scope take off the rooms of it."""
    area_m2 = math.fsum(one.net_m2 for one in ground.measured.rooms if one.room in scope.rooms)
    inputs = ground.plan.inputs
    found: dict[str, float] = {}
    for coat in inputs.coats:
        if coat.id in scope.coats:
            much = area_m2 * inputs.l_per_m2[coat.id] * parse_cut(coat.cut).stain_share
            found[coat.stain] = found.get(coat.stain, 0.0) + much
    return found


def _of_list(ground: OfficeGround, buying: Buying, scope: Scope) -> dict[str, list[_Listed]]:
    """What the scope takes of each line, by group; delivery is what the lines leave."""
    groups: dict[str, list[_Listed]] = {}
    lives = lives_of(ground.job.supplies)
    whole = scope_of(ground)
    here, all_ = stain_l(ground, scope), stain_l(ground, whole)
    for one in buying.lines:
        group = GROUP_OF.get(one.kind, "sprayers and tools")
        if group == "stain":
            part = here.get(one.of, 0.0) / all_[one.of] if all_.get(one.of) else 0.0
        else:
            part = _part(ground, scope, whole, group)
        cost = amount(one.cost) * Decimal(str(round(part, 6)))
        groups.setdefault(group, []).append(_listed(cost, one.rank, lives.get(one.quantity)))
    rest = amount(buying.total) - added(amount(one.cost) for one in buying.lines)
    floor = Decimal(str(round(_part(ground, scope, whole, "delivery"), 6)))
    return groups | {"delivery": [_Listed(max(rest, NOTHING) * floor, Rank.MEASURED, AS_BOUGHT)]}


def _part(ground: OfficeGround, scope: Scope, whole: Scope, group: str) -> float:
    """The share of the whole job's list: by floor, by coats where it is laid in coats."""
    areas = {one.room: one.net_m2 for one in ground.measured.rooms}
    floor = sum(areas[one] for one in scope.rooms) / (sum(areas.values()) or 1.0)
    coats = {
        "sealer": (scope.sealer_coats, whole.sealer_coats),
        "floor finish": (scope.finish_coats, whole.finish_coats),
    }
    here, all_ = coats.get(group, (1, 1))
    return floor * here / (all_ or 1)
