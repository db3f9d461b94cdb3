"""The calendar of many houses and crews: an answer, and what none can undercut.

A quick search, Lagrange's bound, then HiGHS over the columns that the two
leave in play: for small shops that ends in a proof; for large ones stretches
of a few vans are solved anew one after the other, and the gap is told.
"""

from __future__ import annotations

from farwall.days.bound import Pool, Priced, kept, pool, priced
from farwall.days.columns import Column, columns
from farwall.days.exact import chosen
from farwall.days.nouns import Proof, Question
from farwall.days.search import Choice, Choices, Search, cost_of, first_answer, improved
from farwall.days.vans import Way
from farwall.days.why import NoDays, lack_of
from farwall.errors import Mistake, Refused, Unanswerable
from farwall.nouns import dataclass

_WORK = 2_000_000
"""Houses put in while searching: some seconds, whatever their number."""
_MOST_PAIRS = 12_000
_EXACT_S, _PART_S = 20.0, 1.5
_PARTS = 60
_PART_VANS, _PART_DAYS = 3, 21
_ALONE = (
    "One person alone is no crew: nobody works alone with acid, and a fresh floor needs a guard."
)


@dataclass(frozen=True)
class Settled:
    """The choice of each house, by its place in the question, with its proof."""

    choices: Choices
    proof: Proof


def settle(question: Question, *, exact_s: float = _EXACT_S) -> Settled:
    """A way and a van for each house. Raises `Unanswerable` when the days ahead do not hold them.

    exact_s: seconds that HiGHS may take in all; its bound holds whenever it stops.
    """
    _insist(question)
    ways = columns(question)
    _insist_on_ways(question, ways)
    search = Search.of(question, ways)
    first = first_answer(search)
    if first is None:
        raise Unanswerable(
            f"{len(question.houses)} houses do not fit into {question.ahead.days} days.",
            remedies=("Take more days, more crews or fewer houses.",),
        )
    count = len(question.houses)
    rounds = min(1_000 * count, _WORK // count, 20_000)
    best = improved(search, first, rounds=rounds)
    if len(question.houses) == 1:
        return Settled(best, Proof(cost_of(best), cost_of(best), len(ways), "every way tried"))
    pooled = pool(ways, question.crews)
    bound = priced(pooled, best_known=cost_of(best))
    return _closed(search, pooled, bound, best, exact_s)


def _closed(search: Search, pooled: Pool, bound: Priced, best: Choices, exact_s: float) -> Settled:
    """The answer bettered by HiGHS, and the bound raised where the columns left are few."""
    left = kept(bound, best_known=cost_of(best))
    vans = len(search.question.crews)
    if len(left) * vans > _MOST_PAIRS:
        parts = _PARTS if exact_s >= _PART_S else 0
        best = _in_parts(search, pooled, bound, best, parts)
        left = kept(bound, best_known=cost_of(best))
    floor, method = bound.bound, "Lagrange's bound"
    if len(left) * vans <= _MOST_PAIRS:
        ways = [Way.of(pooled.columns[int(n)]) for n in left]
        empty = search.vans({})
        whole = chosen(
            search.question, ways, empty, range(vans), time_limit_s=exact_s
        ) if _all_there(search, ways) else None  # fmt: skip
        # What was left out costs as much as the best known, or more.
        floor = max(floor, min(cost_of(best), whole.bound if whole else cost_of(best)))
        method = "Lagrange's bound, then HiGHS"
        if whole and whole.choices and cost_of(whole.choices) < cost_of(best):
            best = whole.choices
    return Settled(best, Proof(cost_of(best), min(floor, cost_of(best)), len(pooled.cost), method))


def _all_there(search: Search, ways: list[Way]) -> bool:
    return {way.column.house for way in ways} == set(search.ways)


def _in_parts(search: Search, pooled: Pool, bound: Priced, best: Choices, parts: int) -> Choices:
    """Stretches of a few vans solved anew, one after the other, until none gets better."""
    promising = _promising(pooled, bound)
    count = len(search.question.crews)
    starts = sorted(choice.way.column.start // 96 for choice in best.values())
    for turn in range(parts):
        middle = starts[(turn * len(starts) // 7 + turn * 13) % len(starts)]
        some = {(turn + k * (1 + turn % max(count - 1, 1))) % count for k in range(_PART_VANS)}
        out = _stretch(best, some, middle)
        ways = [way for n in out for way in [*promising[n], best[n].way]]
        rest = {n: one for n, one in best.items() if n not in out}
        found = chosen(
            search.question, ways, search.vans(rest), sorted(some), time_limit_s=_PART_S
        )  # fmt: skip
        if found.choices is not None:
            after: dict[int, Choice] = {**rest, **found.choices}
            if cost_of(after) < cost_of(best) - 1e-9:
                best = after
    return best


def _stretch(best: Choices, vans: set[int], middle: int) -> list[int]:
    near = [
        (abs(choice.way.column.start // 96 - middle), n)
        for n, choice in best.items()
        if choice.van in vans
    ]
    return [n for away, n in sorted(near)[:14] if away <= _PART_DAYS]


def _promising(pooled: Pool, bound: Priced) -> dict[int, list[Way]]:
    """The forty ways of each house that would raise the bound least."""
    by_house: dict[int, list[tuple[float, int]]] = {}
    for n, value in enumerate(bound.if_taken.tolist()):
        by_house.setdefault(pooled.columns[n].house, []).append((value, n))
    return {
        house: [Way.of(pooled.columns[n]) for _, n in sorted(mine)[:40]]
        for house, mine in by_house.items()
    }


def _insist(question: Question) -> None:
    mistakes = []
    if not question.houses:
        mistakes.append(Mistake("houses", "There are none.", "Name a job or more."))
    if not question.crews:
        mistakes.append(Mistake("crews", "There are none.", "Name a crew or more."))
    mistakes += [
        Mistake(f"crew {crew.id}", _ALONE, "Give it two people.")
        for crew in question.crews
        if crew.people < 2
    ]
    ids = [house.id for house in question.houses]
    mistakes += [
        Mistake(f"house {name}", "comes twice.", "Give each job an id of its own.")
        for name in sorted({one for one in ids if ids.count(one) > 1})
    ]
    if mistakes:
        raise Refused(*mistakes, about="This calendar cannot be made.")


def _insist_on_ways(question: Question, ways: list[Column]) -> None:
    placed = {column.house for column in ways}
    lost = [house for n, house in enumerate(question.houses) if n not in placed]
    if lost:
        people = max(crew.people for crew in question.crews)
        raise NoDays(question, [lack_of(question, house, people) for house in lost])
