"""How long a sample day takes: hands and waits, low, likely and high."""

from __future__ import annotations

from farwall.evidence import Rank
from farwall.job.colour.sample_day.nouns import Course, WaitName
from farwall.nouns import dataclass

HANDS_MIN: dict[str, tuple[float, float, float]] = {
    "before": (30, 45, 75), "lay": (6, 10, 15), "wash": (8, 12, 20), "wet": (2, 4, 6),
    "seal": (6, 10, 20), "look": (2, 4, 6),
}  # fmt: skip
"""Minutes of one pair of hands: before the first cut once, the others for each sample. Our guess;
that three cuts ask an hour more than one is common practice."""
RANK = Rank.GUESS
"""Of the whole, for the hands in it are a guess."""


@dataclass(frozen=True)
class Lasts:
    """Minutes until `what`: low, likely, high; None where a wait in it is not foretold."""

    what: str
    low_min: float | None
    likely_min: float | None
    high_min: float | None


def lasts_of(course: Course) -> tuple[Lasts, ...]:
    """From the first broom to the wash, to the sealer, and all of it, with the hands on the way.

    While one cut dries the next is laid, so that a coat lasts as long as laying it and the last
    square's wait. What the log tells is not asked: it is the length of a day that is to come.
    """
    planned = [one for one in course.samples if one.rung]
    coats = list(dict.fromkeys(one.coat for one in planned))
    ends = [_hands("before")]
    for nth, coat in enumerate(coats):
        many = sum(one.coat == coat for one in planned)
        name: WaitName = "dwell" if nth == len(coats) - 1 else "dry"
        ends += [_hands("lay", many), _wait(course, coat, name)]
    to_wash = _sum(ends)
    washed = [to_wash, _hands("wash", len(planned)), _hands("wet", len(planned))]
    to_seal = _sum([*washed, _wait(course, coats[-1] if coats else "", "dry-down")])
    whole = _sum([to_seal, _hands("seal", len(planned)), _hands("look", 2 * len(planned))])
    return (
        Lasts("until the scrub", *to_wash),
        Lasts("until the sealer", *to_seal),
        Lasts("in all", *whole),
    )


_Ends = tuple[float | None, float | None, float | None]


def _hands(step: str, many: int = 1) -> _Ends:
    low, likely, high = HANDS_MIN[step]
    return low * many, likely * many, high * many


def _wait(course: Course, coat: str, name: WaitName) -> _Ends:
    one = course.wait(coat, name)
    return (None, None, None) if one is None else (one.low_min, one.likely_min, one.high_min)


def _sum(parts: list[_Ends]) -> _Ends:
    low, likely, high = (_added([one[k] for one in parts]) for k in range(3))
    return low, likely, high


def _added(ends: list[float | None]) -> float | None:
    return None if None in ends else sum(one for one in ends if one is not None)
