"""The house of a job while its floor is done: what was told, else what is usual."""

from __future__ import annotations

from dataclasses import replace

from farwall.air.house import House
from farwall.evidence import Rank
from farwall.facts.job import Job
from farwall.facts.plan import Ground

HEATED_TO_C = 21.1
"""What a thermostat is set to, 70 °F: a guess."""
UNVENTED = (
    "The heater is not vented: it puts water, soot and carbon monoxide into the house, clouds "
    "sealer and can kill. It has no place here and its heat was not counted; take a vented one."
)
UNSAID_VENT = "Make sure that the heater is vented: an unvented one has no place over this floor."


def house_of(job: Job) -> House:
    """How the house stands, shut and without fans unless told; an unvented heater gives nothing."""
    site = job.site
    vented = site.heater_vented is not False
    return House(
        standing=site.house or "shut",
        fans=site.fans or 0,
        heat_kw=(site.heater_kw or 0.0) if vented else 0.0,
        floor_m2=max(sum(room.polygon.shape.area for room in job.floor.rooms), 1.0),
        rank=Rank.MEASURED if site.house is not None else Rank.GUESS,
    )


def kept_warm(job: Job, *, heat_kw: float | None = None, to_c: float = HEATED_TO_C) -> House:
    """The house for days or weeks: its heater, or one of `heat_kw`, holds the air at `to_c`.

    The plan of a day lets a heater burn on, for nobody turns it down over a wet floor; over weeks
    a thermostat does.
    """
    house = house_of(job)
    heat = house.heat_kw if heat_kw is None else heat_kw
    return replace(house, heat_kw=heat, heat_to_c=to_c) if heat else house


def heater_warnings(job: Job) -> tuple[str, ...]:
    """What must be said of the heater, nothing when there is none or it is vented."""
    if not job.site.heater_kw or job.site.heater_vented:
        return ()
    return (UNVENTED,) if job.site.heater_vented is False else (UNSAID_VENT,)


def house_grounds(job: Job) -> tuple[Ground, ...]:
    """What the air inside rests on, beside the weather: how the house stands."""
    house = house_of(job)
    rank = house.rank.value
    source = "told as site.house" if house.rank is Rank.MEASURED else "house-guess"
    told = [Ground("site.house", house.standing, "", rank, source)]
    if job.site.fans is not None:
        told.append(Ground("site.fans", str(house.fans), "", Rank.MEASURED.value, "told"))
    if job.site.heater_kw is not None:
        told.append(
            Ground("site.heater_kw", f"{house.heat_kw:g}", "kW", Rank.MEASURED.value, "told")
        )
    return tuple(told)
