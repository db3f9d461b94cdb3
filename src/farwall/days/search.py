"""Find a calendar: put houses in one by one, then take some out and put them back better.

Each house goes to the cheapest way that some van still takes. What is tried
next is drawn from a fixed sequence, so the same question gives the same
answer. Nothing is claimed here; `bound` says how good it is.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.days.columns import Column, crew_change
from farwall.days.nouns import House, Question
from farwall.days.vans import Van, Way
from farwall.nouns import dataclass

_MULTIPLIER, _ADDEND, _MODULUS = 6364136223846793005, 1442695040888963407, 1 << 64


@dataclass
class Draw:
    """Whole numbers in a fixed sequence (Knuth's linear congruence), the same everywhere."""

    state: int = 20011

    def below(self, count: int) -> int:
        """A whole number from 0 to count - 1."""
        self.state = (self.state * _MULTIPLIER + _ADDEND) % _MODULUS
        return (self.state >> 33) % count


@dataclass(frozen=True)
class Choice:
    """A house's way and the place of its van in the list of crews."""

    way: Way
    van: int
    cost_days: float


Choices = dict[int, Choice]


@dataclass
class Search:
    """The ways of each house, cheapest first, and what vans cost beside."""

    question: Question
    ways: dict[int, list[Way]]

    @staticmethod
    def of(question: Question, columns: Sequence[Column]) -> Search:
        """Sort the columns by house and cost."""
        ways: dict[int, list[Way]] = {n: [] for n in range(len(question.houses))}
        for column in columns:
            ways[column.house].append(Way.of(column))
        for mine in ways.values():
            mine.sort(key=lambda way: (way.column.cost_days, way.column.start))
        return Search(question, ways)

    def vans(self, choices: Choices) -> list[Van]:
        """The vans loaded with these choices."""
        vans = [Van(crew) for crew in self.question.crews]
        for choice in choices.values():
            vans[choice.van].load(choice.way)
        return vans

    def place(self, number: int, vans: Sequence[Van]) -> Choice | None:
        """The cheapest way of a house that a van takes."""
        best: Choice | None = None
        house = self.question.houses[number]
        for way in self.ways[number]:
            if best is not None and way.column.cost_days >= best.cost_days:
                break
            for n, van in enumerate(vans):
                if van.crew.people == way.column.people and van.takes(way):
                    cost = way.column.cost_days + crew_change(self.question, house, van.crew)
                    if best is None or cost < best.cost_days:
                        best = Choice(way, n, cost)
        return best

    def filled(self, order: Sequence[int], choices: Choices) -> Choices | None:
        """`choices` with the houses of `order` put in, one after the other; None if one cannot."""
        vans = self.vans(choices)
        found = dict(choices)
        for number in order:
            choice = self.place(number, vans)
            if choice is None:
                return None
            vans[choice.van].load(choice.way)
            found[number] = choice
        return found


def cost_of(choices: Choices) -> float:
    """What these choices cost together. [days]"""
    return sum(choice.cost_days for choice in choices.values())


def due_at(house: House) -> int:
    """The day on which a house is due, counted from 0; far behind all others where none is told."""
    return 10**6 if house.due_day is None else house.due_day


def first_answer(search: Search) -> Choices | None:
    """The best of a few simple orders: by due day, by free day, short houses first."""
    houses = search.question.houses
    orders = [
        sorted(search.ways, key=lambda n: (houses[n].free_from_day, houses[n].area_m2)),
        sorted(search.ways, key=lambda n: (due_at(houses[n]), houses[n].free_from_day)),
        sorted(search.ways, key=lambda n: (houses[n].area_m2, houses[n].free_from_day)),
    ]
    answers = [found for order in orders if (found := search.filled(order, {})) is not None]
    return min(answers, key=cost_of, default=None)


def improved(search: Search, choices: Choices, *, rounds: int) -> Choices:
    """Take a few houses near each other out and put them back in another order, many times."""
    draw = Draw()
    best, best_cost = choices, cost_of(choices)
    now, now_cost = best, best_cost
    numbers = sorted(choices)
    for turn in range(rounds):
        out = _near(now, numbers, draw, 2 + draw.below(min(6, len(numbers))))
        rest = {n: choice for n, choice in now.items() if n not in out}
        tried = search.filled(out, rest)
        if tried is None:
            continue
        cost = cost_of(tried)
        slack = 0.004 * best_cost * (1 - turn / rounds)
        if cost <= now_cost + slack * draw.below(1000) / 1000:
            now, now_cost = tried, cost
        if cost < best_cost - 1e-9:
            best, best_cost = tried, cost
    return best


def _near(choices: Choices, numbers: list[int], draw: Draw, count: int) -> list[int]:
    """A house drawn, and `count` - 1 others that begin near it, in an order that is drawn."""
    middle = choices[numbers[draw.below(len(numbers))]].way.column.start
    wide = 96 * (2 + draw.below(12))
    near = [n for n in numbers if abs(choices[n].way.column.start - middle) <= wide]
    out: list[int] = []
    while near and len(out) < count:
        out.append(near.pop(draw.below(len(near))))
    return out
