"""The van put to a plan."""

from __future__ import annotations

from farwall.facts.job import Job
from farwall.facts.numbered import numbered
from farwall.facts.plan import Plan
from farwall.facts.van import Van, VanPlan
from farwall.job.van.needs import needs
from farwall.job.van.shopping import shopping
from farwall.job.van.sprayers import chosen, condition


def van_plan(van: Van, plan: Plan, job: Job, *, on: str = "") -> VanPlan:
    """A sound sprayer and a spare, the state of all, what is there and what to buy.

    on: the day of the job, ISO; without it that of the plan. What is past its day then is bought.
    """
    tools = plan.inputs.tools
    wanted = {
        numbered(plan, coat): tools.spray_m2_min * litres
        for coat, litres in plan.inputs.l_per_m2.items()
        if litres
    }
    first, spare, mind = chosen(
        van, tank_l=tools.tank_l, wanted_l_min=wanted, us=job.wishes.units == "us"
    )
    lines = shopping(van, needs(job, plan), on=on or plan.starts_at[:10])
    return VanPlan(first, spare, tuple(map(condition, van.sprayers)), lines, mind)
