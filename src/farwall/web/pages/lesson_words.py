"""Lessons in words: each figure with its range, its jobs, how far it lies from common practice."""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.lessons import Lesson, Lessons
from farwall.learn.figures import (
    Units,
    figures_shown,
    moved,
    moved_by,
    practice_shown,
    unit_shown,
)
from farwall.web.words import said, said_or

GROUPS = (
    ("stain", ("coverage of coat 1", "coverage of later coats", "litres over planned, sampled",
               "litres over planned, not sampled", "fields of one coat", "stain strength")),
    ("spraying", ("spray rate",)),
    ("waits", ("clock: ", "rooms of one floor: ")),
    ("hours", ("hours to ",)),
    ("after", ("rinses until clean", "colour against the sample", "call-backs")),
)  # fmt: skip
"""Headings of the page, and the beginnings of the kinds that stand under each."""


def grouped(lessons: Sequence[Lesson]) -> list[tuple[str, list[Lesson]]]:
    """The lessons under their headings, in the order of the work; what fits none comes last."""
    rest = list(lessons)
    found = []
    for name, begins in GROUPS:
        mine = [one for one in rest if one.what.startswith(begins)]
        rest = [one for one in rest if one not in mine]
        if mine:
            found.append((said(f"lessons-group-{name}"), mine))
    return [*found, (said("lessons-group-other"), rest)] if rest else found


def name_told(one: Lesson) -> str:
    """What a lesson is of: its kind, and the part of it."""
    what = one.what
    for prefix in ("clock: ", "rooms of one floor: ", "hours to "):
        if what.startswith(prefix):
            of = said_or(f"lessons-of-{what.removeprefix(prefix)}", what.removeprefix(prefix))
            what = said(f"lessons-kind-{prefix.strip(': ')}", of=of)
            break
    else:
        what = said_or(f"lessons-kind-{what}", what)
    return f"{what}: {', '.join(one.of)}" if one.of else what


def unit_told(one: Lesson, units: Units) -> str:
    """The unit in which it is told."""
    shown = unit_shown(one, units)
    return said_or(f"lessons-unit-{shown}", said_or(f"lessons-unit-{one.unit}", shown))


def moved_told(one: Lesson) -> str:
    """How far it has moved from common practice."""
    amount, kind = moved(one)
    return said(f"lessons-moved-{kind}", by=amount)


def jobs_told(count: int) -> str:
    """From how many jobs."""
    return said("lessons-from-1") if count == 1 else said("lessons-from", n=count)


def told(one: Lesson, units: Units) -> str:
    """The lesson in a sentence."""
    low, likely, high, _, _ = figures_shown(one, units)
    return said(
        "lessons-told", likely=likely, unit=unit_told(one, units), low=low, high=high,
        jobs=jobs_told(one.jobs), moved=moved_told(one), practice=practice_shown(one, units),
    )  # fmt: skip


def own_told(one: Lesson, units: Units) -> str:
    """The range of the quantity itself."""
    _, _, _, low, high = figures_shown(one, units)
    return said("lessons-own", low=low, high=high, weight=f"{one.weight:.3g}")


def gate_told(one: Lesson) -> str:
    """What the gate is given of it; empty where it is of no litres."""
    if one.spread_percent is None or one.field_share is None:
        return ""
    share = f"{100 * one.field_share:.0f}"
    return said("lessons-gate", spread=f"{one.spread_percent:.0f}", share=share)


def shares_told(one: Lesson, names: dict[str, str]) -> list[tuple[str, str, str, str]]:
    """Each job, those that moved it most first: id, name, what it weighs, what it moved it by."""
    found = []
    for share in sorted(one.shares, key=lambda each: (-abs(each.moved_by), each.job)):
        amount, kind = moved_by(one, share.moved_by)
        weighs = f"{100 * share.share:.1f} %"
        by = said(f"lessons-moved-{kind}", by=amount)
        found.append((share.job, names.get(share.job, share.job), weighs, by))
    return found


def practice_weighs(one: Lesson) -> str:
    """What common practice still weighs in it."""
    rest = max(1 - sum(share.share for share in one.shares), 0.0)
    return f"{100 * rest:.1f} %"


def counted_told(lessons: Lessons, until: str) -> str:
    """From how many jobs all this was learned, and how it forgets."""
    jobs = said("lessons-jobs-1") if lessons.jobs == 1 else said("lessons-jobs", n=lessons.jobs)
    parts = [said("lessons-counted", jobs=jobs, until=until)]
    if lessons.without:
        parts.append(said("lessons-without", jobs=", ".join(lessons.without)))
    if lessons.forget_jobs is not None:
        parts.append(said("lessons-forgets-jobs", n=f"{lessons.forget_jobs:g}"))
    if lessons.forget_months is not None:
        parts.append(said("lessons-forgets-months", n=f"{lessons.forget_months:g}"))
    return "; ".join(parts) + "."
