"""What the bench plans: named floors with ways out, as jobs whose facts are all in writing."""

from __future__ import annotations

from farwall.facts.job import Coat, Crew, Job, Stain, Survey, Tools
from farwall.facts.samples import Sample
from farwall.floor.nouns import Exit, Floor
from farwall.nouns import dataclass

MILD_DAY_MIN = 18.0
"""Sheen-loss time of an invented sample on a mild day; half of it is the most an edge may wait."""


@dataclass(frozen=True)
class Shape:
    """A floor that is one field, with its one way out."""

    name: str
    floor: Floor
    exit: Exit


@dataclass(frozen=True)
class Case:
    """A job of the bench by its name."""

    name: str
    job: Job


def bench_job(
    name: str,
    floor: Floor,
    exits: tuple[Exit, ...],
    *,
    helper: bool = True,
    tank_l: float = 7.5,
    band_m: float = 1.1,
    spray_m2_min: float = 2.8,
    sheen_loss_min: float = MILD_DAY_MIN,
) -> Job:
    """A job on this floor in which nothing is left to a default that may change one day.

    The figures are near the usual ones of `facts.default_table`, and invented.
    """
    return Job(
        version=1,
        floor=floor,
        exits=exits,
        id=name,
        starts_at="2001-05-15T08:00:00+00:00",
        survey=Survey(slab_c=21.0, air_c=21.0, rh_percent=45.0, air_speed_m_s=0.1, drop_s=12.0),
        samples=(
            Sample(
                "board",
                coat="one",
                m2_per_l=4.9,
                sheen_loss_min=sheen_loss_min,
                slab_c=21.0,
                air_c=21.0,
                rh_percent=45.0,
                air_speed_m_s=0.1,
                drop_s=12.0,
            ),
        ),
        stains=(Stain("umber"),),
        coats=(Coat("one", "umber", "1:1"),),
        crew=Crew(helper=helper),
        tools=Tools(
            tank_l=tank_l,
            band_m=band_m,
            spray_m2_min=spray_m2_min,
            walk_m_min=40.0,
            refill_min=3.0,
            swap_min=0.5,
            overlap_m=0.2,
            reach_m=1.9,
        ),
    )


def shape_case(shape: Shape) -> Case:
    """The job of one shape: one coat, one sprayer with a helper."""
    return Case(shape.name, bench_job(shape.name, shape.floor, (shape.exit,)))
