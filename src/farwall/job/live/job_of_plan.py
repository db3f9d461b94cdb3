"""A job from its plan, where only the plan lies there: what a clock needs, no more. Pure."""

from __future__ import annotations

from farwall.facts.job import Coat, Job, Stain, Survey
from farwall.facts.plan import Plan
from farwall.floor.nouns import Floor

_SURVEY = ("slab_c", "air_c", "rh_percent", "air_speed_m_s", "drop_s")


def job_of_plan(plan: Plan) -> Job:
    """The facts that a plan still tells: floor, coats, crew, the survey of the whole house.

    Samples and rooms of their own are lost; the plan's clocks, which rest on them, are not.
    """
    given = plan.inputs
    told = {}
    for ground in plan.grounds:
        name = ground.name.removeprefix("survey.")
        if ground.name.startswith("survey.") and name in _SURVEY:
            told[name] = float(ground.value)
    return Job(
        version=1,
        floor=Floor(given.floor.rooms, given.openings, given.fixtures, given.saw_cuts),
        exits=given.exits,
        name=plan.job,
        starts_at=plan.starts_at,
        survey=Survey(**told),  # type: ignore[arg-type]
        stains=tuple(
            Stain(one, plan.stain_names.get(one, ""))
            for one in dict.fromkeys(coat.stain for coat in given.coats)
        ),
        coats=tuple(
            Coat(
                one.id,
                one.stain,
                one.cut,
                1 / given.l_per_m2[one.id],
                one.added_acid_fl_oz_per_gal,
            )
            for one in given.coats
        ),
        crew=given.crew,
    )
