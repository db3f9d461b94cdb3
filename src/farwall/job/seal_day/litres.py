"""Litres of each coat with the reserve that keeps it from running dry, and the cans to open."""

from __future__ import annotations

import math
from collections.abc import Sequence

from farwall.facts.plan import Field
from farwall.facts.settled import SettledJob
from farwall.job.seal_day.settle import SEALER_ID
from farwall.mix.pack import Pack, pack
from farwall.mix.plan import MixPlan
from farwall.mix.thirst import first_belief
from farwall.nouns import dataclass

_KEEPS = ("water acrylic", "solvent acrylic", "penetrating", "floor finish")
"""Types whose open can serves the next coat too, shut well; two-part ones harden."""


@dataclass(frozen=True)
class Opened:
    """One coat: litres that will likely go, that are opened first, and to be ready for.

    `containers` hold what is opened, `at_hand` what is to be ready.
    """

    likely_l: float
    open_l: float
    ready_l: float
    containers: tuple[dict[str, object], ...]
    at_hand: tuple[dict[str, object], ...]


def opened(settled: SettledJob, fields: Sequence[Field], mixed: MixPlan) -> dict[str, Opened]:
    """By coat: what the gate has opened first, enough at the job's certainty, and containers.

    What is left of what was opened for one coat is taken for the next, but for two-part sealers.
    """
    found, left_l = {}, 0.0
    keeps = settled.job.sealer.type in _KEEPS
    chance_dry = (1 - settled.certainty_percent / 100) / max(len(settled.coats), 1)
    for coat in settled.coats:
        litres = [
            math.fsum(band.litres for band in one.bands) for one in fields if one.coat == coat.id
        ]
        belief = first_belief(coat.spread_percent)
        planned = math.fsum(mix.stain_l for mix in mixed.mixes if mix.coat == coat.id)
        ready = max(planned, belief.enough_for_all_l(litres, chance_dry=chance_dry))
        shelf = settled.containers_for(SEALER_ID)
        first = pack(max(planned - left_l, 0.0), shelf, aim="left over")
        most = pack(max(ready - left_l, 0.0), shelf, aim="left over")
        found[coat.id] = Opened(
            round(math.fsum(litres), 3),
            round(planned, 3),
            round(ready, 3),
            _told(first),
            _told(most),
        )
        left_l = max(left_l + first.bought_l - planned, 0.0) if keeps else 0.0
    return found


def _told(taken: Pack) -> tuple[dict[str, object], ...]:
    return tuple({"size_l": round(c.size_l, 4), "count": count} for c, count in taken.containers)
