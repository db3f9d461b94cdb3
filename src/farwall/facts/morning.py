"""What the check in the morning changes of a job: the facts that the plan is made again from."""

from __future__ import annotations

from dataclasses import replace

from farwall.facts import default_table as table
from farwall.facts.job import Job

_REFILL_MIN = table.TOOLS["refill_min"].usual


def by_morning(job: Job) -> tuple[Job, tuple[str, ...]]:
    """The job as the morning found it, and in words what differs from what was told before.

    The measured flow stands for the tip's; one sprayer of two that leaks leaves no
    spare, so that a tank is filled and not swapped; the warmest spot of the slab, where
    an edge dies soonest, stands for the slab.
    """
    morning, tools, survey = job.morning, job.tools, job.survey
    said: list[str] = []
    if morning.tip_l_min is not None:
        if tools.tip_l_min is not None and morning.tip_l_min != tools.tip_l_min:
            said.append(
                f"This morning the tip gives {morning.tip_l_min:.2f} L/min, not "
                f"{tools.tip_l_min:.2f}."
            )
        tools = replace(tools, tip_l_min=morning.tip_l_min)
    if False in {morning.spare_tight, morning.sprayer_tight}:
        leaks = "spare sprayer" if morning.spare_tight is False else "sprayer"
        fills = tools.refill_min if tools.refill_min is not None else _REFILL_MIN
        tools = replace(tools, spare_sprayer=False, swap_min=fills, refill_min=fills)
        said.append(f"This morning the {leaks} leaks: tanks are filled, not swapped.")
    if morning.slab_high_c is not None and morning.slab_high_c != survey.slab_c:
        before = "" if survey.slab_c is None else f", not {survey.slab_c:.1f}"
        said.append(
            f"This morning the slab's warmest spot is {morning.slab_high_c:.1f} °C{before}."
        )
        survey = replace(survey, slab_c=morning.slab_high_c)
    return replace(job, tools=tools, survey=survey), tuple(said)
