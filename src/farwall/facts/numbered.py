"""Coats, fields and bands by numbers, stains by name: the way they are told to a person.

Ids are a file's own: `coat-2.3.14` in one job is `second.3.14` in the next. Told are the numbers
that the run sheet, the tape and the floor show: coat 2, field 2.3, band 2.3.14; and what the job
calls a stain.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.plan import Plan


def numbered(plan: Plan, name: str) -> str:
    """A coat, field or band of the plan by its numbers: `2`, `2.3`, `2.3.14`.

    A name that none of its coats begins stays as it is.
    """
    return by_number(coats_of(plan), name)


def coats_of(plan: Plan) -> tuple[str, ...]:
    """Ids of the coats in the order in which they are sprayed."""
    sprayed = [*(one.id for one in plan.inputs.coats), *(one.coat for one in plan.fields)]
    return tuple(dict.fromkeys(sprayed))


def by_number(coats: Sequence[str], name: str) -> str:
    """`numbered`, by the ids of the coats alone."""
    coat = _own(coats, name)
    return name if coat is None else f"{coats.index(coat) + 1}{name[len(coat) :]}"


def named(coats: Sequence[str], told: str) -> str:
    """The id of what a person calls by its numbers; what is an id already, or neither, stays."""
    if _own(coats, told) is not None:
        return told
    first, dot, rest = told.partition(".")
    if first.isascii() and first.isdigit() and 0 < int(first) <= len(coats):
        return f"{coats[int(first) - 1]}{dot}{rest}"
    return told


def stain_named(plan: Plan, stain: str) -> str:
    """What the job calls a stain of the plan; its id where it has no name."""
    return plan.stain_names.get(stain, stain)


def _own(coats: Sequence[str], name: str) -> str | None:
    """The coat a name begins with: the longest, for one id may begin another."""
    found = [coat for coat in coats if name == coat or name.startswith(f"{coat}.")]
    return max(found, key=len, default=None)
