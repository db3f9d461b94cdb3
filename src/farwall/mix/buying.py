"""What to buy of each stain, over all coats that use it, so that the day can be finished.

Lots of one stain are boxed: poured together before any of it is cut.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.facts.settled import SettledJob
from farwall.mix.batch import Batch
from farwall.mix.pack import Pack, pack
from farwall.nouns import dataclass

USUAL_RESERVE_SAMPLED, USUAL_RESERVE_UNSAMPLED = 0.15, 0.25
"""What finishers buy beyond the need, on a sampled slab and on another [common-practice]."""


@dataclass(frozen=True)
class CoatDemand:
    """Cut mix of one coat: litres that will likely go, and litres to be ready for.

    `usual_reserve` is what finishers usually buy beyond the need, as a share,
    and `chance_usual` (0 to 1) that this would do.
    """

    coat: str
    stain: str
    batch: Batch
    likely_l: float
    ready_l: float
    usual_reserve: float
    chance_usual: float

    @property
    def stain_share(self) -> float:
        """Litres of stain in a litre of what is sprayed."""
        return self.batch.stain_l / self.batch.total_l


@dataclass(frozen=True)
class Purchase:
    """One stain: likely need, what to be ready for, and the containers that hold it.

    `usual_l` is the need with the reserve that finishers usually buy, and
    `chance_usual` (0 to 1) that it would do, at most.
    """

    stain: str
    likely_l: float
    ready_l: float
    pack: Pack
    least_left_over: Pack
    currency: str
    lots: tuple[str, ...]
    boxed: bool
    usual_l: float
    usual: Pack
    chance_usual: float


def purchases(demands: Sequence[CoatDemand], settled: SettledJob) -> tuple[Purchase, ...]:
    """One purchase a stain. Raises Refused when the need is beyond reckoning.

    Coats that share a stain are taken to be thirsty together: the amounts to
    be ready for add up, which is the safe side.
    """
    made = []
    for stain in settled.stains:
        own = [one for one in demands if one.stain == stain.id]
        if not own:
            continue
        ready_l = math.fsum(one.ready_l * one.stain_share for one in own)
        usual_l = math.fsum(one.likely_l * (1 + one.usual_reserve) * one.stain_share for one in own)
        shelf = settled.containers_for(stain.id)
        bought = pack(ready_l, shelf)
        made.append(
            Purchase(
                stain=stain.id,
                likely_l=math.fsum(one.likely_l * one.stain_share for one in own),
                ready_l=ready_l,
                pack=bought,
                least_left_over=pack(ready_l, settled.containers_for(stain.id), aim="left over"),
                currency=settled.job.prices.currency,
                lots=stain.lots,
                usual_l=usual_l,
                usual=pack(usual_l, shelf),
                chance_usual=min(one.chance_usual for one in own),
                boxed=len(stain.lots) > 1 or sum(count for _, count in bought.containers) > 1,
            )
        )
    return tuple(made)


def buying_dict(bought: Sequence[Purchase], *, certainty_percent: float) -> dict[str, object]:
    """The purchases as plain values for a plan file; amounts of money as text."""
    return {
        "certainty_percent": certainty_percent,
        "stains": [
            {
                "stain": one.stain,
                "likely_l": one.likely_l,
                "ready_l": one.ready_l,
                "currency": one.currency,
                "lots": list(one.lots),
                "boxed": one.boxed,
                **_pack_dict(one.pack),
                "least_left_over": _pack_dict(one.least_left_over),
                "usual_reserve": {
                    "ready_l": one.usual_l,
                    "chance_enough": one.chance_usual,
                    **_pack_dict(one.usual),
                },
            }
            for one in bought
        ],
    }


def _pack_dict(packed: Pack) -> dict[str, object]:
    return {
        "containers": [
            {"size_l": container.size_l, "count": count, "price": container.price}
            for container, count in packed.containers
        ],
        "cost": str(packed.cost),
        "bought_l": packed.bought_l,
        "left_over_l": packed.left_over_l,
    }
