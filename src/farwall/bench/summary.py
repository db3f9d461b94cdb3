"""What a whole set came to: medians, extremes, the worst fields by name."""

from __future__ import annotations

import statistics
from collections import Counter
from collections.abc import Iterable, Sequence

from farwall.bench.score import Score
from farwall.nouns import dataclass

WORST = 10


@dataclass(frozen=True)
class Spread:
    """Median, least and worst (greatest) of some ratios."""

    median: float
    least: float
    worst: float


@dataclass(frozen=True)
class Summary:
    """A set in a few figures. Ratios are of fields of more than one band.

    `worst` names fields with their ratio, the worst first; `unplanned` cases
    that the planner answers with no, and why.
    """

    cases: int
    fields: int
    one_band: int
    verdicts: dict[str, int]
    ratio: Spread | None
    realised: Spread | None
    worst: tuple[tuple[str, float], ...]
    unplanned: tuple[tuple[str, str], ...]
    failures: tuple[str, ...]
    seconds: float
    best: Spread | None = None
    worst_best: tuple[tuple[str, float], ...] = ()


def summary(scores: Sequence[Score]) -> Summary:
    """The figures of a set."""
    fields = [one for each in scores for one in each.fields]
    ratios = [(one, one.ratio) for one in fields if one.bands > 1 and one.ratio is not None]
    ratios.sort(key=lambda pair: -pair[1])
    best = [(one, one.best_ratio) for one in fields if one.bands > 1 and one.best_ratio is not None]
    best.sort(key=lambda pair: -pair[1])
    return Summary(
        cases=len(scores),
        fields=len(fields),
        one_band=sum(one.bands < 2 for one in fields),
        verdicts=dict(Counter(one.verdict for one in fields)),
        ratio=spread(ratio for _, ratio in ratios),
        realised=spread(one.realised for one in fields if one.realised is not None),
        worst=tuple((one.name, ratio) for one, ratio in ratios[:WORST]),
        unplanned=tuple((each.case, each.unplanned) for each in scores if each.unplanned),
        failures=tuple(failure for each in scores for failure in each.failures),
        seconds=sum(each.seconds for each in scores),
        best=spread(ratio for _, ratio in best),
        worst_best=tuple((one.name, ratio) for one, ratio in best[:WORST]),
    )


def spread(values: Iterable[float]) -> Spread | None:
    """Median, least and worst; None of nothing."""
    known = list(values)
    if not known:
        return None
    return Spread(statistics.median(known), min(known), max(known))
