"""Go or no-go: every rule looks at the facts; the strictest word is the verdict of the job.

Pure: facts in, findings out. What nobody told is asked, never guessed: a vital
question that is open makes it `not yet`.
"""

from __future__ import annotations

from collections.abc import Sequence

from farwall.facts.checks import Morning, Readiness
from farwall.facts.go import Finding, Go, GoVerdict
from farwall.facts.job import Job
from farwall.facts.plan import Field
from farwall.job.go.drop_rules import leaps_inside
from farwall.job.go.field_drops import drops_in
from farwall.job.go.noun import Rule, Says
from farwall.job.go.table import RULES
from farwall.job.go.tests_to_do import slab_tests_to_do

_FIRST = {"no": 0, "ask": 1, "go with": 2, "go": 3}


def go_or_no_go(job: Job, *, rules: Sequence[Rule] = RULES) -> Go:
    """The verdict of a job, its findings in order of weight, and the slab tests still to be made.

    A no stands first, then vital questions, then what to go with, other
    questions, and what is in order; inside each the heaviest first.
    """
    found = [one for rule in rules if (one := _asked(rule, job)) is not None]
    found.sort(key=_place)
    return Go(verdict_of(found), tuple(found), slab_tests_to_do(job))


def go_of_plan(job: Job, fields: Sequence[Field]) -> Go:
    """As `go_or_no_go`, with what only the cut into fields can tell: suction inside one field."""
    inside = Rule(
        "suction in one field",
        "survey",
        65,
        "",
        lambda told: leaps_inside(
            [one.rooms for one in fields], told, [drops_in(one, told) for one in fields]
        ),
    )
    return go_or_no_go(job, rules=(*RULES, inside))


def verdict_of(findings: Sequence[Finding]) -> GoVerdict:
    """`no` when any rule says no, else `not yet` when a vital question is open, and so on."""
    if any(one.verdict == "no" for one in findings):
        return "no"
    if any(one.verdict == "ask" and one.vital for one in findings):
        return "not yet"
    if any(one.verdict == "go with" for one in findings):
        return "go with"
    return "go"


def _place(one: Finding) -> tuple[int, int, str]:
    first = _FIRST[one.verdict]
    if one.verdict == "ask" and not one.vital:
        first = _FIRST["go with"]
        return (first, 1000 - one.weight, one.rule)
    return (first, -one.weight, one.rule)


def _asked(rule: Rule, job: Job) -> Finding | None:
    says = rule.look(job)
    if says is None:
        if not rule.ask or _too_early(rule, job):
            return None
        says = Says("ask", rule.ask)
    vital = rule.vital if says.vital is None else says.vital
    return Finding(
        rule=rule.id,
        stage=rule.stage,
        verdict=says.verdict,
        reason=says.reason,
        change=says.change,
        weight=rule.weight,
        rank=(says.rank or rule.rank).value,
        source=says.source or rule.source,
        vital=vital and says.verdict == "ask",
        where=says.where,
        advised=says.advised or rule.advised,
    )


def _too_early(rule: Rule, job: Job) -> bool:
    """The call and the morning are asked about once somebody has begun to tell of them."""
    if rule.stage == "day before":
        return job.readiness == Readiness()
    if rule.stage == "morning":
        return job.morning == Morning()
    return False
