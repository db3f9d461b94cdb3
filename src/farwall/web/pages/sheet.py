"""The sheet of words beside the floor: why, what it rests on, what would change it."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from farwall.evidence import rank_words
from farwall.facts.plan import Plan, Remedy
from farwall.job.go.say import in_short
from farwall.papers.grounds import weightiest
from farwall.papers.words import listed, room_names, unbroken
from farwall.web.pages.figures import fits
from farwall.web.pages.shown import Shown
from farwall.web.words import said

_MOST_GROUNDS = 6
_MOST_REMEDIES = 6
_RARE = 0.001
_WEIGHTY = 0.05
"""Share of what edges have to spare from which on measuring an input is worth a line. Guess."""


@dataclass(frozen=True)
class Rests:
    """A figure that the plan rests on, and how far to trust it."""

    what: str
    told: str


@dataclass(frozen=True)
class Change:
    """Something that would change it: where and what, its gain and price, its caution."""

    what: str
    gain: str
    caution: str


@dataclass(frozen=True)
class Words:
    """The parts of the sheet that do not move with the tape."""

    why: tuple[str, ...]
    rests: tuple[Rests, ...]
    changes: tuple[Change, ...]
    mind: tuple[str, ...]
    cautions: tuple[str, ...]


def sheet_of(shown: Shown) -> Words:
    """The sheet of a plan."""
    return Words(
        tuple(unbroken(one) for one in _why(shown)),
        tuple(_rests(shown)),
        tuple(_changes(shown.plan)),
        shown.plan.warnings,
        shown.plan.cautions,
    )


def _why(shown: Shown) -> Iterator[str]:
    plan, figures = shown.plan, shown.figures
    if not shown.faults and figures.fit == figures.fields:
        yield said("why-fits", n=figures.fields)
    else:
        yield said("why-some", n=figures.fields, fit=figures.fit)
    worst = max(
        (one for one in plan.fields if one.verdict != "cannot"),
        key=lambda one: one.peak_age_min / max(one.open_time_min.low, 0.01), default=None,
    )  # fmt: skip
    if worst is not None:
        rooms = listed(room_names(plan, worst.rooms))
        peak, lives = f"{worst.peak_age_min:.1f}", f"{worst.open_time_min.low:.1f}"
        yield said("why-bound", rooms=rooms, peak=peak, lives=lives)
    if plan.proof is not None and plan.proof.what:
        yield plan.proof.what
    if plan.chances is not None and figures.fit:
        yield said("why-drawn", days=f"{plan.chances.days:,}",
                   dies=_share(plan.chances.any_edge_dies),
                   short=_share(plan.chances.mix_short))  # fmt: skip
    if plan.go is not None:
        yield in_short(plan.go, reasons=True)


def _share(share: float) -> str:
    return said("under-01") if share < _RARE else f"{100 * share:.1f} %"


def _rests(shown: Shown) -> Iterator[Rests]:
    plan = shown.plan
    coats = [coat.id for coat in plan.inputs.coats]
    least = min(plan.fields, key=lambda one: one.open_time_min.low, default=None)
    if least is not None:
        open_ = least.open_time_min
        told = said("rests-edge", low=f"{open_.low:.1f}", likely=f"{open_.likely:.1f}")
        yield Rests(told, rank_words(open_.rank, open_.source))
    for one in weightiest(plan.grounds, units=shown.units, most=_MOST_GROUNDS, coats=coats):
        yield Rests(unbroken(f"{one.name} {one.value}"), one.told)


def _changes(plan: Plan) -> Iterator[Change]:
    told = [(field, one) for field in plan.fields for one in field.remedies]
    # What is needed comes before what is merely possible, what works before what helps.
    told.sort(key=lambda pair: (fits(pair[0]), not pair[1].works))
    seen: set[tuple[str, str]] = set()
    for field, one in told:
        rooms = listed(room_names(plan, field.rooms))
        if (rooms, one.what) in seen or len(seen) >= _MOST_REMEDIES:
            continue
        seen.add((rooms, one.what))
        yield Change(f"{rooms}: {one.what}", said("rests-sep").join(_gain(one)), one.caution)
    if not seen and all(fits(field) for field in plan.fields):
        yield Change(said("change-none"), "", "")
    for input_ in plan.chances.matters_most[:3] if plan.chances is not None else ():
        if input_.what_to_do and input_.share >= _WEIGHTY:
            yield Change(input_.what_to_do, "", "")


def _gain(one: Remedy) -> Iterator[str]:
    if one.works is not None:
        yield said("change-works" if one.works else "change-not-enough")
    if one.peak_age_min is not None:
        yield said("change-edge", age=f"{one.peak_age_min:.1f}")
    if one.margin_min is not None and one.margin_min >= 0:
        yield said("change-spare", spare=f"{one.margin_min:.1f}")
    if one.more_min is not None and abs(one.more_min) >= 0.05:
        key = "change-more" if one.more_min > 0 else "change-fewer"
        yield said(key, more=f"{abs(one.more_min):.1f}")
    if one.price:
        yield one.price
    if one.cost:
        yield one.cost
