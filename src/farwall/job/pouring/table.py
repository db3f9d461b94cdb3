"""The standing table of a job: its materials two by two, in words, gathered by what happens."""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from itertools import combinations

from farwall.acid.pouring.gate import RULES, VAGUE, may_pour
from farwall.acid.pouring.nouns import WORDS, Fired, Thing, Verdict, Vessel, Word
from farwall.facts.job import Job
from farwall.facts.materials import Material, MaterialKind
from farwall.job.pouring.listed import Listed, materials_of
from farwall.nouns import dataclass

WHERE: tuple[Vessel, ...] = ("open tub", "floor", "vented drum")
"""A pair is judged where it fares best; everywhere else it fares no better."""

BROUGHT: tuple[MaterialKind, ...] = (
    "bleach", "pool chlorine", "ammonia water", "lye", "peroxide", "vinegar", "solvent", "other",
)  # fmt: skip
"""What somebody may bring that is not on the list: told beside it, against each stain."""


IN_TURN = frozenset(rule.id for rule in RULES if rule.in_turn)

_CALLED: dict[MaterialKind, str] = {"other": "something unknown"}


@dataclass(frozen=True)
class Pair:
    """Two materials: the first stands there, the second is poured into it, in that vessel."""

    first: str
    second: str
    vessel: str
    order_matters: bool


@dataclass(frozen=True)
class Group:
    """All pairs of which the same is said."""

    word: Word
    rule: str
    what: str
    instead: str
    source: str
    rank: str
    pairs: tuple[Pair, ...]


@dataclass(frozen=True)
class Line:
    """One material with all those of which the same is said beside it.

    `into`: the one stands there and the others are poured into it; not the other way about.
    """

    one: str
    others: tuple[str, ...]
    vessel: str
    into: bool


def lines_of(group: Group) -> tuple[Line, ...]:
    """The pairs of a group gathered: the material that stands in most of them comes first."""
    found: list[Line] = []
    for vessel, into in dict.fromkeys((one.vessel, one.order_matters) for one in group.pairs):
        left = [one for one in group.pairs if (one.vessel, one.order_matters) == (vessel, into)]
        while left:
            one = _busiest(left, into=into)
            mine = [pair for pair in left if one in _sides(pair, into=into)]
            others = tuple(_other(pair, one) for pair in mine)
            found.append(Line(one, others, vessel, into))
            left = [pair for pair in left if pair not in mine]
    return tuple(found)


def _sides(pair: Pair, *, into: bool) -> tuple[str, ...]:
    return (pair.first,) if into else (pair.first, pair.second)


def _other(pair: Pair, one: str) -> str:
    return pair.second if pair.first == one else pair.first


def _busiest(pairs: Sequence[Pair], *, into: bool) -> str:
    count = Counter(side for pair in pairs for side in _sides(pair, into=into))
    return count.most_common(1)[0][0]


def groups_of(job: Job) -> tuple[Group, ...]:
    """Every two of the job's materials, the refused first, then those with a warning."""
    found = [
        _judged(one.thing(), other.thing()) for one, other in combinations(materials_of(job), 2)
    ]
    return _gathered(found)


def brought_of(job: Job) -> tuple[Group, ...]:
    """What is not on the list and somebody may bring, against each stain of the job."""
    listed = materials_of(job)
    mixes = [one.thing() for one in listed if one.material.kind in {"stain", "mixed stain"}]
    brought = [one.thing() for one in brought_listed(job)]
    return _gathered([_judged(mix, other) for other in brought for mix in mixes])


def brought_listed(job: Job) -> tuple[Listed, ...]:
    """What is not on the list and somebody may bring."""
    kinds = {one.material.kind for one in materials_of(job)}
    return tuple(
        Listed(Material(kind, kind, _CALLED.get(kind, kind), sheet_read=True))
        for kind in BROUGHT
        if kind not in kinds
    )


def _judged(one: Thing, other: Thing) -> tuple[Pair, Verdict]:
    """The mildest verdict on two things, over both orders and the vessels of `WHERE`."""
    tried = [
        (Pair(a.name, b.name, vessel, order_matters=False), may_pour((a, b), vessel))
        for vessel in WHERE
        for a, b in ((one, other), (other, one))
    ]
    pair, verdict = min(
        tried, key=lambda one: (WORDS.index(one[1].word), bool(_rules(one[1]) & IN_TURN))
    )
    turned = may_pour(
        (other, one) if pair.first == one.name else (one, other), _vessel(pair.vessel)
    )
    matters = turned.word != verdict.word or bool(_rules(turned) & IN_TURN)
    return Pair(pair.first, pair.second, pair.vessel, matters), verdict


def _rules(verdict: Verdict) -> set[str]:
    return {one.rule for one in verdict.fired}


def _vessel(word: str) -> Vessel:
    return next(vessel for vessel in WHERE if vessel == word)


def _gathered(found: Sequence[tuple[Pair, Verdict]]) -> tuple[Group, ...]:
    by_rule: dict[tuple[str, Word], tuple[Fired, list[Pair]]] = {}
    for pair, verdict in found:
        chief = _chief(verdict)
        key = (chief.rule if verdict.word != "allowed" else "", verdict.word)
        by_rule.setdefault(key, (chief, []))[1].append(pair)
    groups = [
        Group(word, chief.rule, chief.what, chief.instead, chief.source, chief.rank, tuple(pairs))
        for (_, word), (chief, pairs) in by_rule.items()
    ]
    return tuple(sorted(groups, key=lambda group: -WORDS.index(group.word)))


def _chief(verdict: Verdict) -> Fired:
    """The rule that says most: one about both things, and not merely that nothing names them."""
    same = [one for one in verdict.fired if one.word == verdict.word]
    about_two = [one for one in same if len({met.name for met in one.met}) > 1]
    telling = [one for one in about_two if one.rule not in VAGUE]
    alone = [one for one in same if one.rule not in VAGUE]
    return (telling or alone or about_two or same)[0]
