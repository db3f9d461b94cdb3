"""Invented jobs, mixed as their plans say: the way chosen, the gates, the looks inside.

A job is one or two coats of `mix_days`' fields, in its days' truth: the slab's thirst skewed and
drifting, tubs misread. Here the last field has bands and a pace that is not the plan's, a batch
takes its own time to mix and the helper carries tanks meanwhile, and stop lines may lie open. What
decides is the plan's own: `mix.ways`, `mix.lean`, `mix.gate`, and `job.live.thirst` after looks.
All spreads are guesses.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator, Sequence
from dataclasses import field, replace

from farwall.bench.floors_drawn import Chance
from farwall.bench.mix_days import MixDay, mix_day
from farwall.job.live.thirst import READ_L, after_look, inside
from farwall.mix.gate import budget, mix_now_l, morning_l
from farwall.mix.lean import Ahead, looks_of, mix_at_line_l, morning_lean_l
from farwall.mix.look import LEAST_BOX_L, STIRRING_MIN, BandNeed, mix_at_look_l, sprayed_l
from farwall.mix.thirst import Thirst, first_belief
from farwall.mix.ways import FieldNeed, ahead_of, way_of
from farwall.nouns import dataclass

JOBS, TUNING = 5_000, range(100_000, 103_000)
SPREAD_PERCENT, CHANCE_DRY = 20.0, 0.01
MOST_FIELDS = (10, 2)
"""Houses as they come, and small jobs, told apart: there the slab says little before the end."""
_SEEDS = 400_000
_L_MIN = 2.8 * 0.2128
"""A common rate of 30 ft² a minute at 200 ft² a gallon."""
_BAND_L, _TANK_L, _SWAP_MIN, _WALK_MIN = 0.45, 7.57, 0.5, 0.5
_PACE_CV, _STIR_CV = 0.10, 0.15
_OPEN_SHARE = 0.5
_BOXES_L = LEAST_BOX_L / 2
"""A batch boxed with less than this shows: half of what is asked for."""


@dataclass(frozen=True)
class CoatDay:
    """One coat of a job, and what is so: its day, pace over the plan's, minutes of mixing."""

    day: MixDay
    needs: tuple[FieldNeed, ...]
    pace: float
    stirring_min: float


@dataclass
class Tub:
    """What stands in tub and tanks, what was mixed, and how it went. Litres."""

    have_l: float
    mixed_l: float
    mixes: int = 1
    inside: int = 0
    fresh: int = 0
    short: bool = False
    last_seen_l: float = field(default=0.0)

    def pour(self, litres: float) -> None:
        """Another batch; the eye counts it as it was measured."""
        made = _up(litres)
        self.have_l += made
        self.last_seen_l += made
        self.mixed_l += made
        self.mixes += 1

    def spray(self, litres: float) -> bool:
        """Whether there was enough."""
        self.short = self.short or litres > self.have_l
        self.have_l = max(self.have_l - litres, 0.0)
        return not self.short


@dataclass(frozen=True)
class JobScore:
    """A rule over all jobs. Shares in per cent: of jobs, of what was mixed; with standard errors.

    fresh_percent: of jobs in which a batch was boxed with next to nothing, or seen beside another.
    """

    rule: str
    jobs: int
    short_percent: float
    short_error: float
    left_percent: float
    left_error: float
    left_l: float
    mixes: float
    inside: float
    fresh_percent: float


def coat_day(seed: int, number: int, *, most_fields: int = 10) -> CoatDay:
    """Coat `number` (0 or 1) of the job of a seed, always the same."""
    day = mix_day(1_000_000 + 2 * seed + number)
    if len(day.likely_l) > most_fields:
        cut = slice(-most_fields, None)
        day = replace(day, likely_l=day.likely_l[cut], taken_l=day.taken_l[cut])
    chance = Chance(_SEEDS + 2 * seed + number)
    bands, busy = _bands(chance, day.likely_l[-1])
    open_ = [chance.even(0, 1) < _OPEN_SHARE for _ in day.likely_l]
    last = len(open_) - 1
    needs = tuple(
        FieldNeed(
            str(n), "coat", litres, seen=n > 0 and open_[n],
            bands=bands if n == last else (), busy=busy if n == last else (),
        )
        for n, litres in enumerate(day.likely_l)
    )  # fmt: skip
    return CoatDay(day, needs, chance.uneven(_PACE_CV), STIRRING_MIN * chance.uneven(_STIR_CV))


def _bands(
    chance: Chance, litres: float
) -> tuple[tuple[BandNeed, ...], tuple[tuple[float, float], ...]]:
    """The last field's bands by the plan, and when the helper is at a tank."""
    rate = _L_MIN * chance.factor(0.15)
    shares = [chance.factor(0.35) for _ in range(max(3, round(litres / _BAND_L)))]
    at_min, tank_l = 0.0, _TANK_L * chance.even(0.2, 1.0)
    bands, busy = [], []
    for number, share in enumerate(shares):
        own = litres * share / math.fsum(shares)
        if own > tank_l:
            busy.append((at_min - _WALK_MIN, at_min + _SWAP_MIN + _WALK_MIN))
            at_min, tank_l = at_min + _SWAP_MIN, _TANK_L
        bands.append(BandNeed(f"b{number}", own, at_min, at_min + own / rate))
        at_min, tank_l = at_min + own / rate + 0.2, tank_l - own
    return tuple(bands), tuple(busy)


def by_plan(coat: CoatDay, coats: int, *, helper: bool = True) -> Tub:
    """The coat mixed as its plan says: the way by the facts, then what that way does."""
    chances = budget(CHANCE_DRY / coats, len(coat.needs))
    belief = first_belief(SPREAD_PERCENT)
    way = way_of("coat", coat.needs, belief, chances, helper=helper, lots=())
    ahead = ahead_of(coat.needs, chances)
    lean = way.way != "at stop lines"
    first = morning_lean_l(ahead, belief) if lean else _morning_l(ahead, belief)
    tub = Tub(_up(first), _up(first), last_seen_l=_up(first))
    eye = Chance(_SEEDS * 3 + coat.day.seed)
    for number in range(len(ahead)):
        rest = ahead[number:]
        more = _at_line(tub.last_seen_l, rest, belief, lean=lean)
        if number and more > 0:
            tub.fresh += rest[0].seen and tub.have_l < _BOXES_L
            tub.pour(more)
        begun_l = tub.last_seen_l
        looked = lean and len(rest) == 1 and bool(looks_of(rest[0], belief, begin_l=begun_l))
        done = (
            _look_inside(tub, coat, rest[0], belief, eye)
            if looked
            else tub.spray(math.fsum(coat.day.taken_l[number]))
        )
        if not done:
            break
        if len(rest) > 1:
            tub.last_seen_l = max(tub.have_l + eye.normal(READ_L), 0.0)
            used_l = begun_l - tub.last_seen_l
            if used_l > 0:
                belief = after_look(belief, parts_l=(rest[0].likely_l,), used_l=used_l)
    return tub


def _morning_l(ahead: Sequence[Ahead], belief: Thirst) -> float:
    likely, chances = [one.likely_l for one in ahead], [one.chance_dry for one in ahead]
    return morning_l(likely, belief=belief, chances=chances)


def _at_line(have_l: float, ahead: Sequence[Ahead], belief: Thirst, *, lean: bool) -> float:
    if lean:
        return mix_at_line_l(have_l, ahead, belief)
    likely, chances = [one.likely_l for one in ahead], [one.chance_dry for one in ahead]
    return mix_now_l(have_l, likely, belief=belief, chances=chances)


def _look_inside(tub: Tub, coat: CoatDay, last: Ahead, belief: Thirst, eye: Chance) -> bool:
    """The last field, looked into by the plan; a batch is boxed once it is stirred in truth."""
    begun_l, start_l = tub.last_seen_l, tub.have_l
    places = looks_of(last, belief, begin_l=begun_l)
    for number, place in enumerate(places):
        left_l = start_l - _taken(coat, place.done_l)
        if left_l < 0:
            break
        seen_l = max(left_l + eye.normal(READ_L), 0.0)
        rest = inside(belief, done_l=place.done_l, used_l=max(begun_l - seen_l, 1e-3))
        more = mix_at_look_l(places, number, left_l=seen_l, rest=rest, chance_dry=last.chance_dry)
        if more > 0:
            _box(tub, coat, place.at_min, more)
            break
    return tub.spray(_taken(coat, last.likely_l))


def _box(tub: Tub, coat: CoatDay, at_min: float, more_l: float) -> None:
    """The batch is there when it is stirred, the helper back from the tanks: too late, or boxed."""
    last = coat.needs[-1]
    ready = at_min + coat.stirring_min * coat.pace + _away(last.busy, at_min)
    left_l = tub.have_l - _taken(coat, sprayed_l(last.bands, ready))
    tub.short = tub.short or left_l < 0
    tub.fresh += left_l < _BOXES_L
    tub.inside += 1
    tub.pour(more_l)


def _away(busy: Sequence[tuple[float, float]], at_min: float) -> float:
    """Minutes at a tank that fall into the mixing."""
    until = at_min + STIRRING_MIN
    return math.fsum(max(min(b, until) - max(a, at_min), 0.0) for a, b in busy)


def _taken(coat: CoatDay, planned_l: float) -> float:
    """What the last field took in truth of its first `planned_l` planned litres."""
    parts = coat.day.taken_l[-1]
    whole = math.fsum(band.litres for band in coat.needs[-1].bands)
    at = min(planned_l / whole, 1.0) * len(parts)
    full = min(int(at), len(parts) - 1)
    return math.fsum(parts[:full]) + parts[full] * (at - full)


def by_habit(on: int) -> Callable[[CoatDay, int], Tub]:
    """One extra gallon on so many, all mixed in the morning."""

    def rule(coat: CoatDay, coats: int) -> Tub:
        del coats
        mixed = math.fsum(coat.day.likely_l) * (1 + 1 / on)
        tub = Tub(mixed, mixed)
        tub.spray(math.fsum(map(math.fsum, coat.day.taken_l)))
        return tub

    return rule


Rule = Callable[[CoatDay, int], Tub]


def _alone(coat: CoatDay, coats: int) -> Tub:
    return by_plan(coat, coats, helper=False)


RULES: dict[str, Rule] = {
    "the plan, with a helper": by_plan,
    "the plan, without": _alone,
    "one extra gallon on five, once": by_habit(5),
    "one extra gallon on six, once": by_habit(6),
}


def score_jobs(jobs: Sequence[int], *, most_fields: int = 10) -> tuple[JobScore, ...]:
    """Every rule over the same jobs, those of odd seeds in two coats."""
    drawn = [list(_coats(seed, most_fields)) for seed in jobs]
    return tuple(_score(name, rule, drawn) for name, rule in RULES.items())


def _coats(seed: int, most_fields: int) -> Iterator[CoatDay]:
    for number in range(1 + seed % 2):
        yield coat_day(seed, number, most_fields=most_fields)


def _score(name: str, rule: Rule, drawn: Sequence[Sequence[CoatDay]]) -> JobScore:
    jobs = len(drawn)
    found = [[rule(coat, len(coats)) for coat in coats] for coats in drawn]
    short = sum(any(tub.short for tub in tubs) for tubs in found) / jobs
    left = [math.fsum(t.have_l for t in tubs if not t.short) for tubs in found]
    mixed = [math.fsum(t.mixed_l for t in tubs) for tubs in found]
    share = math.fsum(left) / math.fsum(mixed)
    off = [one - share * each for one, each in zip(left, mixed, strict=True)]
    tubs = [tub for each in found for tub in each]
    return JobScore(
        rule=name,
        jobs=jobs,
        short_percent=100 * short,
        short_error=100 * math.sqrt(short * (1 - short) / jobs),
        left_percent=100 * share,
        left_error=100 * math.sqrt(math.fsum(one * one for one in off)) / math.fsum(mixed),
        left_l=math.fsum(left) / jobs,
        mixes=sum(tub.mixes for tub in tubs) / len(tubs),
        inside=sum(tub.inside for tub in tubs) / len(tubs),
        fresh_percent=100 * sum(any(t.fresh for t in each) for each in found) / jobs,
    )


def _up(litres: float) -> float:
    """To the next tenth of a litre: what can be measured out."""
    return math.ceil(litres * 10 - 1e-9) / 10


def lines(title: str, scores: Sequence[JobScore]) -> list[str]:
    """The table on the screen."""
    head = f"{title:<34}{'short %':>14}{'left over %':>15}{'left L':>8}{'mixes':>7}{'inside':>8}"
    return [head + f"{'fresh %':>9}"] + [
        f"{one.rule:<34}{one.short_percent:>7.2f} ±{one.short_error:>5.2f}"
        f"{one.left_percent:>9.2f} ±{one.left_error:>4.2f}{one.left_l:>8.2f}{one.mixes:>7.2f}"
        f"{one.inside:>8.2f}{one.fresh_percent:>9.2f}"
        for one in scores
    ]
