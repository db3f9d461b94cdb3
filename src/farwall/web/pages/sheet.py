"""The sheet of words beside the floor: why, what it rests on, what would change it."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.evidence import rank_words
from farwall.facts.plan import Clock, Field, Plan
from farwall.job.go.say import in_short
from farwall.nouns import dataclass
from farwall.papers.grounds import GroundWords, weightiest
from farwall.papers.run_sheet.edge_words import edge_grounds, tight_edge
from farwall.papers.words import minutes, room_names, unbroken
from farwall.phrasebook import told
from farwall.web.pages.moment_words import named
from farwall.web.pages.shown import Shown
from farwall.web.pages.sources import Source, rank_told, sources_in
from farwall.web.pages.standing import clock_name
from farwall.web.pages.what_if import Change, what_ifs
from farwall.web.words import said

_MOST_GROUNDS = 8
_RARE = 0.001


@dataclass(frozen=True)
class Rests:
    """A figure that the plan rests on, how far to trust it, what the rank means, its sources."""

    what: str
    told: str
    means: str
    sources: tuple[Source, ...]


@dataclass(frozen=True)
class Words:
    """The parts of the sheet that do not move with the tape."""

    why: tuple[str, ...]
    rests: tuple[Rests, ...]
    changes: tuple[Change, ...]
    mind: tuple[str, ...]
    cautions: tuple[str, ...]

    @property
    def needed(self) -> tuple[Change, ...]:
        """What would make possible what is not possible as it stands."""
        return tuple(one for one in self.changes if one.needed)

    @property
    def can_be(self) -> bool:
        """Whether one of them alone makes a field possible."""
        return any(one.works for one in self.needed)


def sheet_of(shown: Shown) -> Words:
    """The sheet of a plan."""
    return Words(
        tuple(unbroken(told(one)) for one in _why(shown)),
        tuple(_rests(shown)),
        what_ifs(shown),
        tuple(unbroken(told(one)) for one in shown.plan.warnings),
        tuple(unbroken(told(one)) for one in shown.plan.cautions),
    )


def _why(shown: Shown) -> Iterator[str]:
    plan, figures = shown.plan, shown.figures
    if not shown.faults and figures.fit == figures.fields:
        yield said("why-fits", n=figures.fields)
    else:
        yield said("why-some", n=figures.fields, fit=figures.fit)
    sprayed = (one for one in plan.fields if one.bands)
    worst = min(sprayed, key=lambda one: tight_edge(plan, one).spare_min, default=None)
    if worst is not None:
        yield _bound(plan, worst)
    if plan.proof is not None and plan.proof.what:
        yield plan.proof.what
    if plan.chances is not None and figures.fit:
        yield said("why-drawn", days=f"{plan.chances.days:,}",
                   dies=_share(plan.chances.any_edge_dies),
                   short=_share(plan.chances.mix_short))  # fmt: skip
    if plan.go is not None:
        yield in_short(plan.go, reasons=True)


def _bound(plan: Plan, worst: Field) -> str:
    """The tightest field: how long its tightest edge waits, and what the minutes it may are.

    The same edge and figures as on the run sheet and the command line.
    """
    coats = [coat.id for coat in plan.inputs.coats]
    number = coats.index(worst.coat) + 1 if worst.coat in coats else 1
    edge = tight_edge(plan, worst)
    _, _, likely, _ = edge_grounds(worst, edge.low_min)
    return said(
        "why-bound", rooms=edge.room or named(room_names(plan, worst.rooms)), n=number,
        peak=f"{edge.age_min:.1f}", lives=f"{edge.low_min:.1f}", likely=f"{likely:.0f}",
    )  # fmt: skip


def _share(share: float) -> str:
    return said("under-01") if share < _RARE else f"{100 * share:.1f}\u00a0%"


def _rests(shown: Shown) -> Iterator[Rests]:
    plan = shown.plan
    coats = [coat.id for coat in plan.inputs.coats]
    for n, coat in enumerate(coats, 1):
        fields = [one for one in plan.fields if one.coat == coat]
        least = min(fields, key=lambda one: one.open_time_min.low, default=None)
        if least is None:
            continue
        open_ = least.open_time_min
        what = said("rests-edge", low=f"{open_.low:.1f}", likely=f"{open_.likely:.0f}", n=n)
        yield _rest(what, open_.rank, open_.source)
    for wait in shown.course.waits:
        if wait.clock.likely_min is not None:
            yield _rest(_lasts(wait.clock), wait.clock.rank, wait.clock.source)
    by_words = _by_words(shown, coats)
    for words in weightiest(plan.grounds, units=shown.units, most=_MOST_GROUNDS, coats=coats):
        rank, source = by_words.get((words.name, words.value), ("", ""))
        # `coverage, coat 1: 192 ft²/gal`: two numbers in a row would be read as one.
        between = ":" if words.name[-1:].isdigit() else ""
        what = unbroken(f"{told(words.name)}{between} {words.value}")
        yield _rest(what, rank, source, words=words)


def _lasts(clock: Clock) -> str:
    """How long a wait lasts: its range and the likeliest."""
    name, low, likely = clock_name(clock), minutes(clock.low_min), minutes(clock.likely_min or 0.0)
    if clock.high_min is None:
        return said("rests-wait-open", name=name, low=low, likely=likely)
    return said("rests-wait", name=name, low=low, high=minutes(clock.high_min), likely=likely)


def _by_words(shown: Shown, coats: list[str]) -> dict[tuple[str, str], tuple[str, str]]:
    from farwall.papers.grounds import ground_words

    found = {}
    for ground in shown.plan.grounds:
        words = ground_words(ground, shown.units, coats=coats)
        found[words.name, words.value] = (ground.rank, ground.source)
    return found


def _rest(what: str, rank: str, source: str, *, words: GroundWords | None = None) -> Rests:
    trust = words.told if words is not None else rank_words(rank, source)
    return Rests(told(what), told(trust), rank_told(rank), sources_in(source))
