"""The mixes of a day: what is boxed in the morning, when each field may start, what is bought."""

from __future__ import annotations

import itertools
import math
from collections.abc import Sequence

from farwall.evidence import Rank
from farwall.facts.look import Look, MixWay
from farwall.facts.plain import plain
from farwall.facts.plan import Ground, Mix
from farwall.facts.settled import SettledCoat, SettledJob
from farwall.mix.batch import Batch, fills, make_batch
from farwall.mix.buying import (
    USUAL_RESERVE_SAMPLED,
    USUAL_RESERVE_UNSAMPLED,
    CoatDemand,
    Purchase,
    buying_dict,
    purchases,
)
from farwall.mix.cut import parse_cut
from farwall.mix.gate import Gate, budget, gates, planned_mixes
from farwall.mix.lean import LeanMix, lean_mixes
from farwall.mix.thirst import FIELD_SHARE, Thirst, first_belief
from farwall.mix.usual_rule import UsualRule, usual_rule
from farwall.mix.ways import FieldNeed, ahead_of, lean_gates, looks_of_coat, way_of
from farwall.nouns import dataclass

OWN_SHARE = "share of the spread that is the field's own"
"""Name of a ground: alone the guess for all coats, with a coat behind it what was learned."""

FL_OZ_PER_GAL_TO_ML_PER_L = 1000 / 128

__all__ = ["OWN_SHARE", "BoxedBatch", "FieldNeed", "MixPlan", "plan_mixes"]


@dataclass(frozen=True)
class BoxedBatch:
    """One boxed batch of a coat, its sprayer fills, and whether it will be enough.

    `before` is the field at whose stop line it is mixed (inside it before `mix.before_band`,
    where that is told); `chance_enough` (0 to
    1) that with it nothing more need be mixed for this coat.
    """

    mix: Mix
    batch: Batch
    before: str
    chance_enough: float
    tanks_l: tuple[float, ...]
    lots: tuple[str, ...]


@dataclass(frozen=True)
class MixPlan:
    """The mixes for the plan file, and beside them the gate, the usual rule and the purchase."""

    mixes: tuple[Mix, ...]
    batches: tuple[BoxedBatch, ...]
    gates: tuple[Gate, ...]
    usual_rule: tuple[UsualRule, ...]
    bought: tuple[Purchase, ...]
    buying: dict[str, object]
    grounds: tuple[Ground, ...]
    warnings: tuple[str, ...]
    looks: tuple[Look, ...] = ()
    ways: tuple[MixWay, ...] = ()

    def gate(self, field: str, coat: str) -> Gate:
        """The start rule of a field in a coat; KeyError when there is none."""
        for one in self.gates:
            if (one.field, one.coat) == (field, coat):
                return one
        raise KeyError((field, coat))


def plan_mixes(fields: Sequence[FieldNeed], settled: SettledJob) -> MixPlan:
    """The mixes of a day for fields given in order of spraying, each with litres above 0.

    A boxed batch for each coat is mixed before its first field; where the
    reserve of the last fields is more than a trifle it is cut later, at their
    stop line, and boxed with what is left. With a helper, one lot and bands told the leaner way is
    taken (`mix.lean`): less in the morning, and the last field looked into. The chance of running
    dry that the job allows (100 % less its certainty) is shared equally by its coats.

    Raises Refused when a cut is none, when acid is to be added to a stain
    with chromate, or when the need is beyond reckoning.
    """
    own = {coat.id: [one for one in fields if one.coat == coat.id] for coat in settled.coats}
    sprayed = [coat for coat in settled.coats if own[coat.id]]
    chance_dry = (1 - settled.certainty_percent / 100) / max(1, len(sprayed))
    coats = [_coat_mixes(coat, own[coat.id], settled, chance_dry) for coat in sprayed]
    bought = purchases([coat.demand for coat in coats], settled)
    all_gates = tuple(gate for coat in coats for gate in coat.gates)
    usual = tuple(coat.usual for coat in coats)
    return MixPlan(
        mixes=tuple(batch.mix for coat in coats for batch in coat.batches),
        batches=tuple(batch for coat in coats for batch in coat.batches),
        gates=all_gates,
        usual_rule=usual,
        bought=bought,
        buying={
            **buying_dict(bought, certainty_percent=settled.certainty_percent),
            "gates": plain(all_gates),
            "usual_rule": plain(usual),
            "batches": [_batch_dict(batch) for coat in coats for batch in coat.batches],
        },
        grounds=_grounds(sprayed),
        warnings=tuple(
            f"{coat.demand.coat}: {warning}"
            for coat in coats
            for warning in coat.batches[0].batch.warnings
        ),
        looks=tuple(look for coat in coats for look in coat.looks),
        ways=tuple(coat.way for coat in coats),
    )


@dataclass(frozen=True)
class _CoatMixes:
    batches: tuple[BoxedBatch, ...]
    gates: tuple[Gate, ...]
    usual: UsualRule
    demand: CoatDemand
    looks: tuple[Look, ...]
    way: MixWay


def _coat_mixes(
    coat: SettledCoat, own: Sequence[FieldNeed], settled: SettledJob, chance_dry: float
) -> _CoatMixes:
    litres = [one.litres for one in own]
    share = FIELD_SHARE if coat.field_share is None else coat.field_share
    belief = first_belief(coat.spread_percent, field_share=share)
    chances = budget(chance_dry, len(own))
    helper, lots = settled.job.crew.helper, coat.stain.lots
    way = way_of(coat.id, own, belief, chances, helper=helper, lots=lots)
    if way.way == "at stop lines":
        begins = gates(
            [(o.id, o.litres) for o in own], coat=coat.id, belief=belief, chances=chances
        )
        gated = planned_mixes(litres, belief=belief, chances=chances)
        planned: Sequence[LeanMix] = [LeanMix(one.before, one.litres) for one in gated]
    else:
        planned = lean_mixes(ahead_of(own, chances), belief)
        begins = lean_gates(coat.id, own, belief, chances)
    sampled = any(sample.m2_per_l is not None for sample in coat.samples)
    reserve = USUAL_RESERVE_SAMPLED if sampled else USUAL_RESERVE_UNSAMPLED
    in_all = list(itertools.accumulate(one.litres for one in planned))
    batches = tuple(
        BoxedBatch(
            mix=_mix(f"mix-{coat.id}-{number}", coat, batch, own[one.before :], one.band),
            batch=batch,
            before=own[one.before].id,
            chance_enough=belief.chance_enough(litres, so_far_l),
            tanks_l=fills(batch.total_l, settled.tools.tank_l),
            lots=coat.stain.lots,
        )
        for number, (one, so_far_l) in enumerate(zip(planned, in_all, strict=True), 1)
        for batch in [_batch(coat, one.litres)]
    )
    return _CoatMixes(
        batches=batches,
        gates=begins,
        usual=usual_rule(litres, coat=coat.id, belief=belief),
        demand=CoatDemand(
            coat=coat.id,
            stain=coat.stain.id,
            batch=batches[0].batch,
            likely_l=math.fsum(litres),
            ready_l=_ready_l(litres, belief, in_all[-1], settled.certainty_percent),
            usual_reserve=reserve,
            chance_usual=belief.chance_enough(litres, math.fsum(litres) * (1 + reserve)),
        ),
        looks=looks_of_coat(way, own, belief, chances),
        way=way,
    )


def _batch_dict(one: BoxedBatch) -> dict[str, object]:
    """What a boxed batch has beside its mix: where it is mixed, fills, strength, chance."""
    return {
        "mix": one.mix.id,
        "before": one.before,
        "tanks_l": list(one.tanks_l),
        "chance_enough": one.chance_enough,
        "hcl_percent_low": one.batch.hcl_percent_low,
        "hcl_percent_high": one.batch.hcl_percent_high,
    }


def _mix(
    mix_id: str, coat: SettledCoat, batch: Batch, serves: Sequence[FieldNeed], band: str
) -> Mix:
    return Mix(
        id=mix_id,
        coat=coat.id,
        cut=coat.cut,
        stain_l=batch.stain_l,
        water_l=batch.water_l,
        acid_l=batch.acid_l,
        fields=tuple(one.id for one in serves),
        before_band=band,
        lots=coat.stain.lots,
    )


def _ready_l(
    litres: Sequence[float], belief: Thirst, planned_l: float, certainty_percent: float
) -> float:
    """Cut mix to be ready for: never less than is planned, enough at the job's certainty."""
    enough_l = belief.enough_for_all_l(litres, chance_dry=1 - certainty_percent / 100)
    return max(planned_l, enough_l)


def _batch(coat: SettledCoat, total_l: float) -> Batch:
    """The batch whose whole content, added acid too, is `total_l`."""
    acid_ml_per_l = (coat.coat.added_acid_fl_oz_per_gal or 0.0) * FL_OZ_PER_GAL_TO_ML_PER_L
    low, high = coat.stain.hcl_percent_low, coat.stain.hcl_percent_high
    low, high = (high if low is None else low), (low if high is None else high)
    return make_batch(
        cut=parse_cut(coat.cut, where=f"coats.{coat.id}.cut"),
        total_l=total_l / (1 + acid_ml_per_l / 1000),
        acid_ml_per_l=acid_ml_per_l,
        stain_hcl_percent=None if low is None or high is None else (low, high),
        stain_density_kg_l=coat.stain.density_kg_l,
        chromate=coat.stain.names_chromate,
        oxidiser=coat.stain.names_oxidiser,
        where=f"coats.{coat.id}.added_acid_fl_oz_per_gal",
    )


def _grounds(coats: Sequence[SettledCoat]) -> tuple[Ground, ...]:
    guess, practice = Rank.GUESS.value, Rank.PRACTICE.value
    learned = tuple(
        Ground(
            f"{OWN_SHARE}, {coat.id}", f"{coat.field_share * 100:.3g}", "%", Rank.LEARNED.value,
            "learned from closed jobs",
        )
        for coat in coats
        if coat.field_share is not None
    )  # fmt: skip
    guessed = Ground(OWN_SHARE, f"{FIELD_SHARE * 100:g}", "%", guess, "house-guess")
    return (
        *(learned if len(learned) == len(coats) else (guessed, *learned)),
        Ground("usual rule: extra on the need", "1/6 to 1/5", "", practice, "common-practice"),
    )
