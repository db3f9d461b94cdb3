"""Lessons in a few calm lines: what, low likely high, from how many jobs, moved by how much."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.facts.lessons import Lesson, Lessons
from farwall.learn import figures
from farwall.learn.figures import figures_shown, practice_shown, unit_shown

_MOVED: dict[figures.Moved, str] = {
    "percent": "%",
    "points": "points",
    "variance": "% of the variance",
    "steps": "steps",
}
_NOTHING = (
    "No closed job was told: all figures stay those of common practice, and say so. A firm's own "
    "figures begin with its first closed job."
)
_HEAD = (
    "Low and high hold four times in five: of the next job, and (own) of the quantity itself.\n"
    "A finish, a person or a plant leans on the firm's own figure, and that on common practice,\n"
    "from which the last column says how far it has moved."
)


def told_lessons(lessons: Lessons) -> str:
    """The table on the screen."""
    if not lessons.lessons:
        return _NOTHING
    wide = max(len(_label(one)) for one in lessons.lessons)
    lines = [
        _counted(lessons),
        _HEAD,
        "",
        f"{'':<{wide}}  {'low':>7} {'likely':>7} {'high':>7}  {'own':>13}  {'jobs':>4}  moved",
    ]
    for one in lessons.lessons:
        low, likely, high, own_low, own_high = figures_shown(one)
        own = f"{own_low}-{own_high}" if one.own_low >= 0 else f"{own_low} to {own_high}"
        lines.append(
            f"{_label(one):<{wide}}  {low:>7} {likely:>7} {high:>7}  {own:>13}  {one.jobs:>4}  "
            f"{moved(one)}{'' if one.on else '  (switched off)'}"
        )
    return "\n".join((*lines, *_signs(lessons)))


def _signs(lessons: Lessons) -> Iterator[str]:
    """What closed call-backs say of the weights of signs; nothing where none was closed."""
    if lessons.signs:
        yield "\nSigns of call-backs, in doublings of the odds of a cause (four times in five):"
    for one in lessons.signs:
        yield (
            f"  {one.kind}: {one.weight:.1f} ({one.low:.1f} to {one.high:.1f}), guessed "
            f"{one.guess:g}; {one.source}"
        )


def told_lesson(lesson: Lesson) -> str:
    """One lesson looked into: the jobs behind it, those that moved it most first."""
    unit, shown = unit_shown(lesson), figures_shown(lesson)
    lines = [
        lesson.name + ("" if lesson.on else " (switched off)"),
        f"  likely {shown[1]} {unit} · four times in five the next job {shown[0]} to {shown[2]}",
        f"  the quantity itself {shown[3]} to {shown[4]}, four times in five",
        f"  common practice: {practice_shown(lesson)} {unit}; {moved(lesson)}",
        f"  rank: {lesson.rank} · {lesson.source}, which count for {lesson.weight:.3g}",
    ]
    if lesson.spread_percent is not None and lesson.field_share is not None:
        lines.append(
            f"  the gate is given a spread of {lesson.spread_percent:.0f} %, "
            f"{100 * lesson.field_share:.0f} % of it a field's own"
        )
    rest = 1 - sum(one.share for one in lesson.shares)
    lines += ["", f"  {'job':<30} {'weighs':>7}  moved it by"]
    lines += [
        f"  {one.job:<30} {100 * one.share:>5.1f} %  {_by(lesson, one.moved_by)}"
        for one in sorted(lesson.shares, key=lambda one: (-abs(one.moved_by), one.job))
    ]
    lines.append(f"  {'common practice':<30} {100 * max(rest, 0.0):>5.1f} %")
    return "\n".join(lines)


def moved(one: Lesson) -> str:
    """By how much the likely value has moved from common practice."""
    return _in_words(*figures.moved(one))


def _by(one: Lesson, amount: float) -> str:
    return _in_words(*figures.moved_by(one, amount))


def _in_words(amount: str, kind: figures.Moved) -> str:
    return f"{amount} {_MOVED[kind]}"


def _counted(lessons: Lessons) -> str:
    return "".join(_parts(lessons))


def _parts(lessons: Lessons) -> Iterator[str]:
    jobs = "1 closed job" if lessons.jobs == 1 else f"{lessons.jobs} closed jobs"
    yield f"Learned from {jobs}, the last of {lessons.until}"
    if lessons.without:
        yield f", without {', '.join(lessons.without)}"
    if lessons.forget_jobs is not None:
        yield f"; a job counts half once {lessons.forget_jobs:g} have followed it"
    if lessons.forget_months is not None:
        yield f"; a job counts half {lessons.forget_months:g} months later"
    yield "."


def _label(one: Lesson) -> str:
    indent = "  " * len(one.of)
    unit = unit_shown(one)
    return f"{indent}{', '.join(one.of)}" if one.of else f"{one.name} [{unit}]"
