"""What materials come to in the scope of an offer: its part of what is bought, else allowances."""

from __future__ import annotations

import math
from decimal import Decimal

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS
from farwall.job.office.buying import Buying
from farwall.job.office.ground import OfficeGround
from farwall.job.office.scope import Scope, scope_of
from farwall.mix.cut import parse_cut
from farwall.price.goods import AS_BOUGHT, AS_GUESSED, GROUP_OF, GROUPS, Goods, allowances
from farwall.price.hours import Sizes
from farwall.price.money import NOTHING, added, amount, rounded

LISTED = "as the shopping list has it"


def goods_of(ground: OfficeGround, buying: Buying, scope: Scope, sizes: Sizes) -> tuple[Goods, ...]:
    """Every group in the order of the table. A part of the job takes its part of what is bought:
    containers are not packed anew for it."""
    groups = _bought(buying)
    guessed = {
        one.group: one for one in allowances(sizes, stain_l=sum(stain_l(ground, scope).values()))
    }
    found = []
    for group in (*GROUPS, "delivery"):
        listed = groups.get(group, NOTHING)
        part = _part(ground, scope, group)
        if group == "stain":
            listed, part = _stains(ground, buying, scope), 1.0
        if listed > 0:
            found.append(_listed(ground, group, listed * Decimal(str(round(part, 6)))))
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


def _bought(buying: Buying) -> dict[str, Decimal]:
    groups: dict[str, Decimal] = {}
    for one in buying.lines:
        group = GROUP_OF.get(one.kind, "tools")
        groups[group] = groups.get(group, NOTHING) + amount(one.cost)
    rest = amount(buying.total) - added(groups.values())
    return groups | {"delivery": max(rest, NOTHING)}


def _stains(ground: OfficeGround, buying: Buying, scope: Scope) -> Decimal:
    """Each stain's containers by the share that the scope takes of it."""
    here, all_ = stain_l(ground, scope), stain_l(ground, scope_of(ground))
    total = NOTHING
    for one in buying.lines:
        if one.kind == "stain":
            whole = all_.get(one.of, 0.0)
            part = here.get(one.of, 0.0) / whole if whole else 0.0
            total += amount(one.cost) * Decimal(str(round(part, 6)))
    return total


def _part(ground: OfficeGround, scope: Scope, group: str) -> float:
    """The share of the whole job's list: by floor, by coats where it is laid in coats."""
    whole = scope_of(ground)
    areas = {one.room: one.net_m2 for one in ground.measured.rooms}
    floor = sum(areas[one] for one in scope.rooms) / (sum(areas.values()) or 1.0)
    coats = {
        "sealer": (scope.sealer_coats, whole.sealer_coats),
        "floor finish": (scope.finish_coats, whole.finish_coats),
    }
    here, all_ = coats.get(group, (1, 1))
    return floor * here / (all_ or 1)


def _listed(ground: OfficeGround, group: str, cost: Decimal) -> Goods:
    """Prices of a list, or of the job's own containers, are the firm's; stand-ins are guesses."""
    told = ground.wares is not None or (group == "stain" and bool(ground.job.prices.containers))
    told = told or (group == "sealer" and bool(ground.job.sealer.containers))
    if told:
        return Goods(group, rounded(cost), LISTED, Rank.MEASURED.value, "price list", AS_BOUGHT)
    return Goods(group, rounded(cost), LISTED, Rank.GUESS.value, OUR_GUESS, AS_GUESSED)
