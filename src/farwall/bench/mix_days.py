"""Invented days of mixing: does the gate run dry inside a field, and what does it leave over?

The truth is drawn apart from the model: a day's thirst and each field's own are skewed (nearly
gamma, not log-normal), its spread is between 15 and 25 % where the belief always has 20, it
drifts along the day, every part of a field differs, and tubs are read with an error. What
decides is what decides on the floor: `mix.gate`, and the step of `job.live.thirst`. All spreads
are guesses.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from functools import partial

from farwall.bench.floors_drawn import Chance
from farwall.job.live.thirst import READ_L, after_look, inside
from farwall.job.more_mix import MIXING_MIN
from farwall.mix.gate import budget, mix_now_l, morning_l
from farwall.mix.thirst import Thirst, first_belief
from farwall.nouns import dataclass

TUNING = range(5_001, 7_001)
DAYS, SPREAD_PERCENT, CERTAIN_PERCENT = 5_000, 20.0, 99.0
_SEEDS = 50_000
"""Days begin behind the seeds of the floors that dry."""
_PARTS = 8
_PART_CV = 0.08
_DRIFT = 0.10
_FIELD_SHARE = 0.2
FIRST_SHARE, BEGIN_SHARE, CHANCE_INSIDE = 0.65, 1.0, 0.01
"""Mixed in the morning, of all that is likely needed; on what share of its likely need the last
field is begun; what a look leaves of running dry. Set on other days than those reported (seeds
`TUNING`). The way that a plan keeps is scored by `mix_jobs`."""
_LATE = 0.1
"""A batch that is begun with a tenth less than outlasts it is mixed faster."""
_KEEP_L = MIXING_MIN * 2.8 * 0.2128
"""What is sprayed while a batch is mixed: a common rate of 30 ft² a minute, 200 ft² a gallon."""


@dataclass(frozen=True)
class MixDay:
    """One coat on one day: what each field likely takes, and what its parts take in truth."""

    seed: int
    likely_l: tuple[float, ...]
    taken_l: tuple[tuple[float, ...], ...]

    def reads(self) -> Iterator[float]:
        """Errors of reading tub and tank, one after another, litres."""
        chance = Chance(_SEEDS * 2 + self.seed)
        while True:
            yield chance.normal(READ_L)


@dataclass(frozen=True)
class Outcome:
    """What a rule came to on a day: whether a field ran dry, litres, how often was mixed."""

    mixed_l: float
    left_l: float
    mixes: int
    boxed_inside: int = 0
    short: bool = False


def _dry(mixed_l: float, mixes: int, boxed: int = 0) -> Outcome:
    """A day on which a field ran dry."""
    return Outcome(mixed_l, 0.0, mixes, boxed, short=True)


@dataclass(frozen=True)
class MixScore:
    """A rule over all days: shares in per cent of days, left over in per cent of what was mixed."""

    rule: str
    days: int
    short_percent: float
    short_error: float
    left_percent: float
    left_l: float
    mixes: float
    boxed_inside: float


def mix_day(seed: int) -> MixDay:
    """The day of a seed, always the same."""
    chance = Chance(_SEEDS + seed)
    count = 3 + int(chance.even(0, 8))
    sizes = [2.6 * chance.factor(0.5) for _ in range(count - 1)]
    sizes.append(8.0 * chance.factor(0.35))  # the large room is the way out
    cv = chance.even(0.15, 0.25)
    job = chance.uneven(cv * math.sqrt(1 - _FIELD_SHARE))
    drift = chance.even(-_DRIFT, _DRIFT)
    taken, passed = [], 0.0
    for likely in sizes:
        own = chance.uneven(cv * math.sqrt(_FIELD_SHARE))
        parts = []
        for _ in range(_PARTS):
            along = 2 * passed / math.fsum(sizes) - 1  # from -1 in the morning to 1 at the end
            part = likely / _PARTS
            parts.append(part * job * own * (1 + drift * along) * chance.uneven(_PART_CV))
            passed += part
        taken.append(tuple(parts))
    return MixDay(seed, tuple(sizes), tuple(taken))


def gate(day: MixDay, *, first_share: float | None = None) -> Outcome:
    """The tool's own way: asked at every stop line, of the next field, with all that was taught.

    `first_share` of the likely need is mixed in the morning; None: as the plan does.
    """
    belief, have, mixed, mixes = _morning(day, first_share)
    chances = _chances(day)
    reads, seen = day.reads(), have
    for number, taken in enumerate(day.taken_l):
        more = mix_now_l(seen, day.likely_l[number:], belief=belief, chances=chances[number:])
        if more > 0:
            more = _up(more)
            have, seen, mixed, mixes = have + more, seen + more, mixed + more, mixes + 1
        used = math.fsum(taken)
        if used > have:
            return _dry(mixed, mixes)
        have -= used
        before, seen = seen, max(have + next(reads), 0.0)
        belief = _taught(belief, (day.likely_l[number],), before - seen)
    return Outcome(mixed, have, mixes)


def gate_sparing(day: MixDay) -> Outcome:
    """Another way: at each stop line mix only what the next field asks for, nothing ahead."""
    belief = first_belief(SPREAD_PERCENT)
    chances = _chances(day)
    have = mixed = seen = 0.0
    mixes, reads = 0, day.reads()
    for number, taken in enumerate(day.taken_l):
        need = belief.enough_l(day.likely_l[number], chance_dry=chances[number])
        if seen < need:
            more = _up(need - seen)
            have, seen, mixed, mixes = have + more, seen + more, mixed + more, mixes + 1
        used = math.fsum(taken)
        if used > have:
            return _dry(mixed, mixes)
        have -= used
        before, seen = seen, max(have + next(reads), 0.0)
        belief = _taught(belief, (day.likely_l[number],), before - seen)
    return Outcome(mixed, have, mixes)


def gate_looking_inside(
    day: MixDay,
    *,
    first_share: float = FIRST_SHARE,
    begin_share: float = BEGIN_SHARE,
    chance_inside: float = CHANCE_INSIDE,
) -> Outcome:
    """Another way, with a helper: the last field is begun on its likely need, and looked into.

    After each part of it tub and tank are read; before what is left would no longer outlast the
    mixing, what the rest asks for is mixed and boxed with it. Fields before are gated as ever.
    """
    belief = first_belief(SPREAD_PERCENT)
    chances, reads = _chances(day), day.reads()
    have = seen = mixed = 0.0
    mixes = boxed = 0
    for number, taken in enumerate(day.taken_l):
        rest = day.likely_l[number:]
        likely, last = rest[0], len(rest) == 1
        need = begin_share * likely * belief.factor
        if not last:
            need = belief.enough_l(likely, chance_dry=chances[number])
        if seen < need:
            ahead = begin_share * rest[-1] + math.fsum(rest[:-1])  # the last field's own, not more
            ahead *= belief.factor if number else first_share
            more = _up(max(need, ahead) - seen)
            have, seen, mixed, mixes = have + more, seen + more, mixed + more, mixes + 1
        start = seen
        for part, used in enumerate(taken, 1):
            if used > have:
                return _dry(mixed, mixes, boxed)
            have -= used
            seen = max(have + next(reads), 0.0)
            more = 0.0
            if last and part < _PARTS:
                done = likely * part / _PARTS
                rest_of_it = inside(belief, done_l=done, used_l=max(start - seen, 1e-3))
                more = _inside_l(rest_of_it, likely - done, seen, likely / _PARTS, chance_inside)
            if more > 0:
                more = _up(more)
                have, seen, mixed, start = have + more, seen + more, mixed + more, start + more
                boxed, mixes = boxed + 1, mixes + 1
        belief = _taught(belief, (likely,), start - seen)
    return Outcome(mixed, have, mixes, boxed)


def _inside_l(
    belief: Thirst, to_do_l: float, seen_l: float, part_l: float, chance_dry: float
) -> float:
    """What to mix now inside a field, 0 while it can wait for the next look, or is too late."""
    keep = _KEEP_L * belief.factor
    can_wait = seen_l - part_l * belief.enough_l(1.0, chance_dry=chance_dry) >= keep
    if can_wait or seen_l < min(keep, to_do_l * belief.factor) * (1 - _LATE):
        return 0.0
    return max(belief.enough_l(to_do_l, chance_dry=chance_dry) - seen_l, 0.0)


def extra_gallon(on: int) -> Callable[[MixDay], Outcome]:
    """The habit: one extra gallon on so many, all mixed in the morning."""

    def rule(day: MixDay) -> Outcome:
        return _once(day, math.fsum(day.likely_l) * (1 + 1 / on))

    return rule


def all_at_once(day: MixDay) -> Outcome:
    """For comparison: as much as is enough on 99 % of days, all mixed in the morning."""
    belief = first_belief(SPREAD_PERCENT)
    return _once(day, belief.enough_for_all_l(day.likely_l, chance_dry=1 - CERTAIN_PERCENT / 100))


def _once(day: MixDay, mixed: float) -> Outcome:
    left = mixed - math.fsum(map(math.fsum, day.taken_l))
    return Outcome(mixed, left, 1) if left >= 0 else _dry(mixed, 1)


RULES: dict[str, Callable[[MixDay], Outcome]] = {
    "the gate, at stop lines": gate,
    "the gate, two thirds in the morning": partial(gate, first_share=FIRST_SHARE),
    "the gate, mixing for one field": gate_sparing,
    "looked at inside, boxed at once": gate_looking_inside,
    "one extra gallon on five, once": extra_gallon(5),
    "one extra gallon on six, once": extra_gallon(6),
    "enough on 99 %, once": all_at_once,
}


def score_mix(days: int = DAYS) -> tuple[MixScore, ...]:
    """Every rule over the same days."""
    drawn = [mix_day(seed) for seed in range(1, days + 1)]
    return tuple(_score(name, [rule(day) for day in drawn]) for name, rule in RULES.items())


def _score(name: str, found: Sequence[Outcome]) -> MixScore:
    days = len(found)
    short = sum(one.short for one in found) / days
    whole = [one for one in found if not one.short]
    mixed = math.fsum(one.mixed_l for one in found)
    left = math.fsum(one.left_l for one in whole)
    return MixScore(
        rule=name,
        days=days,
        short_percent=100 * short,
        short_error=100 * math.sqrt(short * (1 - short) / days),
        left_percent=100 * left / mixed,
        left_l=left / max(len(whole), 1),
        mixes=math.fsum(one.mixes for one in found) / days,
        boxed_inside=math.fsum(one.boxed_inside for one in found) / days,
    )


def _morning(day: MixDay, first_share: float | None) -> tuple[Thirst, float, float, int]:
    belief = first_belief(SPREAD_PERCENT)
    chances = _chances(day)
    have = morning_l(day.likely_l, belief=belief, chances=chances)
    if first_share is not None:
        first = belief.enough_l(day.likely_l[0], chance_dry=chances[0])
        have = max(first, first_share * math.fsum(day.likely_l))
    have = _up(have)
    return belief, have, have, 1


def _chances(day: MixDay) -> tuple[float, ...]:
    return budget(1 - CERTAIN_PERCENT / 100, len(day.likely_l))


def _taught(belief: Thirst, parts_l: Sequence[float], used_l: float) -> Thirst:
    return after_look(belief, parts_l=parts_l, used_l=used_l) if used_l > 0 else belief


def _up(litres: float) -> float:
    """To the next tenth of a litre: what can be measured out."""
    return math.ceil(litres * 10 - 1e-9) / 10


def lines(scores: Sequence[MixScore]) -> list[str]:
    """The table on the screen."""
    head = f"{'rule':<38}{'short %':>14}{'left over %':>13}{'left L':>8}{'mixes':>7}{'inside':>8}"
    told = [f"{scores[0].days} days, the same for every rule." if scores else "", "", head]
    return told + [
        f"{one.rule:<38}{one.short_percent:>7.2f} ±{one.short_error:>5.2f}"
        f"{one.left_percent:>13.1f}{one.left_l:>8.2f}{one.mixes:>7.2f}{one.boxed_inside:>8.2f}"
        for one in scores
    ]
