"""What materials come to in the scope of an offer: its part of what is bought, else allowances."""

from __future__ import annotations

import math
from dataclasses import dataclass
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


@dataclass(frozen=True)
class _Listed:
    """What the list has of a group: at prices that were told, and at guessed ones."""

    told: Decimal = NOTHING
    guessed: Decimal = NOTHING

    def and_(self, cost: Decimal, rank: str) -> _Listed:
        """With one line more."""
        if rank == Rank.GUESS.value:
            return _Listed(self.told, self.guessed + cost)
        return _Listed(self.told + cost, self.guessed)

    def goods(self, group: str) -> Goods:
        """Both together; what is told is surer, and the weaker part gives the rank."""
        whole = self.told + self.guessed
        part = float(self.told / whole)
        low, likely, high = (
            part * told + (1 - part) * guessed
            for told, guessed in zip(AS_BOUGHT, AS_GUESSED, strict=True)
        )
        rank, source = (
            (Rank.GUESS.value, OUR_GUESS)
            if self.guessed
            else (Rank.MEASURED.value, "told by the firm")
        )
        return Goods(group, rounded(whole), LISTED, rank, source, (low, likely, high))


def goods_of(ground: OfficeGround, buying: Buying, scope: Scope, sizes: Sizes) -> tuple[Goods, ...]:
    """Every group in the order of the table. A part of the job takes its part of what is bought:
    containers are not packed anew for it."""
    listed = _of_list(ground, buying, scope)
    litres = sum(stain_l(ground, scope).values())
    guessed = {one.group: one for one in allowances(sizes, stain_l=litres)}
    found = []
    for group in (*GROUPS, "delivery"):
        one = listed.get(group, _Listed())
        if one.told + one.guessed > 0:
            found.append(one.goods(group))
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


def _of_list(ground: OfficeGround, buying: Buying, scope: Scope) -> dict[str, _Listed]:
    """What the scope takes of each line, summed by group; delivery is what the lines leave."""
    groups: dict[str, _Listed] = {}
    whole = scope_of(ground)
    here, all_ = stain_l(ground, scope), stain_l(ground, whole)
    for one in buying.lines:
        group = GROUP_OF.get(one.kind, "sprayers and tools")
        if group == "stain":
            part = here.get(one.of, 0.0) / all_[one.of] if all_.get(one.of) else 0.0
        else:
            part = _part(ground, scope, whole, group)
        cost = amount(one.cost) * Decimal(str(round(part, 6)))
        groups[group] = groups.get(group, _Listed()).and_(cost, one.rank)
    rest = amount(buying.total) - added(amount(one.cost) for one in buying.lines)
    floor = Decimal(str(round(_part(ground, scope, whole, "delivery"), 6)))
    return groups | {"delivery": _Listed(max(rest, NOTHING) * floor)}


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
