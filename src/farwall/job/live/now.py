"""What to do now, from the plan and the story: quick enough for every tap. Pure.

Nothing is planned again here; whether it has to be is asked in `again`.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime

from farwall.air.weather import Forecast, WeatherFile
from farwall.facts.job import Job
from farwall.facts.lessons import Lessons
from farwall.facts.plan import Plan
from farwall.job.daylight import sunset
from farwall.job.live.alarms import alarms, in_order, is_over
from farwall.job.live.clocks import LiveClocks
from farwall.job.live.edges import edge_due
from farwall.job.live.noun import Drunk, FirstBatch, LiveClock, Now
from farwall.job.live.people import Crew, people_alarms, people_now, with_people
from farwall.job.live.rules import Facts, advice
from farwall.job.live.standing import Standing
from farwall.job.live.start_if import start_if
from farwall.job.live.thirst import seen_factor
from farwall.job.more_mix import more_mix
from farwall.job.story.noun import Story
from farwall.mix.gate import budget

CERTAIN_PERCENT = 99.0


def now(
    job: Job,
    plan: Plan,
    story: Story,
    *,
    at_min: float,
    weather: WeatherFile | Forecast | None = None,
    lessons: Lessons | None = None,
) -> Now:
    """Where the day stands at a minute of the plan, and what to do.

    lessons: what closed jobs taught, as the plan had them.
    What the story does not tell is as the plan has it, and said to be so. Works as well where two
    spray. Never raises for what an entry says: that is told in `contradictions`.
    """
    standing = Standing(plan, story, at_min, us=job.wishes.units == "us")
    clocks = LiveClocks(job, plan, story, weather, lessons)
    field = standing.in_hand or standing.next_field
    open_time = clocks.open_time(standing.coat, at_min)
    low_min = _low(open_time, field.open_time_min.low if field is not None else 0.0)
    due = edge_due(standing, standing.in_hand, low_min) if standing.in_hand is not None else None
    waits = tuple(replace(one, over=is_over(standing, one)) for one in clocks.waits())
    midday, so_far = standing.as_midday
    litres, crew = standing.litres, Crew(job, standing)
    stained = standing.stained is not None
    done = [one for one in standing.own if not standing.left_of(one)]
    return Now(
        at_min=at_min,
        coat=standing.coat,
        field=standing.in_hand.id if standing.in_hand is not None else "",
        band=standing.next_band.id if standing.next_band is not None else "",
        fields_done=len(done),
        fields_left=len(standing.own) - len(done),
        m2_left=round(standing.m2_left(), 2),
        drunk=_drunk(standing),
        in_hand=litres,
        first_batch=None if stained else _first_batch(standing),
        more_mix=None if stained else more_mix(midday, so_far, belief=standing.mix_belief),
        chance_short=chance_short(plan),
        open_low_min=low_min,
        open_time=open_time,
        waits=waits,
        alarms=in_order((*alarms(standing, due, waits), *people_alarms(crew))),
        start_if=start_if(
            standing,
            chances=chances_of(plan, standing.coat),
            slab_c=clocks.slab_c,
            measured=any(one.slab_c is not None for one in story.readings),
            open_low_min=low_min,
            waits=waits,
            light_until_min=_light_until(job, plan, at_min),
        ),
        advice=with_people(crew, advice(Facts(job, standing, due, low_min, waits))),
        contradictions=story.contradictions,
        people=people_now(crew),
        stained=stained and any(standing.left_of(one) for one in plan.fields),
        us=standing.us,
    )


def chance_short(plan: Plan) -> float:
    """The budget for running dry inside a field of one coat, 0 to 1."""
    certain = (plan.buying or {}).get("certainty_percent")
    percent = float(certain) if isinstance(certain, int | float) else CERTAIN_PERCENT
    return (1 - percent / 100) / max(len(plan.inputs.coats), 1)


def chances_of(plan: Plan, coat: str) -> dict[str, float]:
    """Each field's part of that budget, by id: that of the plan's gates, else shared anew."""
    own = sorted((f for f in plan.fields if f.coat == coat), key=lambda f: f.order)
    shared = dict(
        zip((f.id for f in own), budget(chance_short(plan), max(len(own), 1)), strict=True)
    )
    gates = (plan.buying or {}).get("gates")
    for gate in gates if isinstance(gates, list) else ():
        if gate["field"] in shared:
            shared[gate["field"]] = float(gate["chance_dry"])
    return shared


def _low(open_time: LiveClock | None, planned_low_min: float) -> float:
    """The budget of an edge: shorter when edges were seen to die sooner, never longer."""
    if open_time is None or not open_time.planned.likely_min:
        return planned_low_min
    seen = open_time.clock.likely_min or 0.0
    return round(planned_low_min * min(seen / open_time.planned.likely_min, 1.0), 2)


def _drunk(standing: Standing) -> Drunk:
    planned = standing.plan.inputs.l_per_m2[standing.coat]
    told = standing.coat_story
    factor = standing.belief.factor
    weighed = [one for one in told.fields if one.l_per_m2 is not None] if told else []
    last = max(weighed, key=lambda one: one.end_min or 0.0, default=None)
    return Drunk(
        planned_l_per_m2=planned,
        believed_l_per_m2=planned * factor,
        factor=factor,
        seen_factor=seen_factor(told),
        last_field=last.field if last is not None else "",
        last_l_per_m2=last.l_per_m2 if last is not None else None,
    )


def _first_batch(standing: Standing) -> FirstBatch | None:
    plan, told = standing.plan, standing.coat_story
    made = next((one for one in plan.mixes if one.coat == standing.coat), None)
    if made is None or (told is not None and (told.fields or told.mixed_l is not None)):
        return None
    whole = made.stain_l + made.water_l + made.acid_l
    return FirstBatch(whole, made.stain_l, made.water_l, made.acid_l, made.cut)


def _light_until(job: Job, plan: Plan, at_min: float) -> float | None:
    """Sunset as a minute of the plan, on the day of `at_min`; None where no place is told."""
    latitude, longitude = job.place.latitude_deg, job.place.longitude_deg
    if latitude is None or longitude is None:
        return None
    start = datetime.fromisoformat(plan.starts_at)
    day = start.fromtimestamp(start.timestamp() + at_min * 60, tz=start.tzinfo)
    found = sunset(day, latitude_deg=latitude, longitude_deg=longitude)
    return None if found is None else round((found - start).total_seconds() / 60, 1)
