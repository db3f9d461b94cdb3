"""The checker: replays a plan on the floor and says what is wrong with it.

It shares no code with the solver, and needs nothing but the plan: the standard
library, numpy and shapely. It goes from event to event, exactly and not in time
steps. What it holds a plan to:

- every square metre of a coat is in exactly one band (`missed`, `twice`);
- a person is a disc of 0.25 m radius that goes through openings only (`wall`),
  never over wet stain (`trodden`), never faster than a walk (`jump`), and always
  with a dry way to an exit (`shut-in`); two who spray keep apart (`collision`);
- each band is within the wand's reach and the sprayer's pace (`out-of-reach`,
  `too-fast`), and meets its neighbours within the open time of their room and
  minute (`dead-edge`);
- a field ends only where a leaf, a frame or a saw cut hides the seam
  (`stop-line-open`);
- the tank never falls below nothing nor holds more than it can (`tank-dry`,
  `overfull`), and is filled where people stand (`refill-astray`);
- a batch mixed inside a field is looked for early enough to be boxed (`look-late`), by a helper
  (`look-alone`), of the same lot (`other-lot`), and no new mix is begun in sight of an old
  one with nothing to box it with (`two-shades`);
- a coat waits for the one under it (`not-dry`);
- in mid-day the past stands as it was told (`past-altered`) and nobody sprays where somebody
  stands (`closed`) or shuts them in; the pace of what has happened is not judged;
- figures follow from the rest of the plan (`edited`), and inputs are those of the
  job beside it (`other-job`).

What it cannot know: whether the open time, the coverage and the waits are true.
It does not look along the wand either: reach is distance, walls between or not.
Tolerances: 10 mm, 0.05 min, 0.01 m² or 0.1 %, 0.01 L.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping

import numpy as np
import shapely
from numpy.typing import NDArray

from farwall.spray.check.against_job import against_job
from farwall.spray.check.collision import collisions
from farwall.spray.check.cover import coverage, outside_rooms, reach_and_pace
from farwall.spray.check.edges import dead_edges, edges_by_field, edges_of, seams_by_field
from farwall.spray.check.figures import edited
from farwall.spray.check.lives import dead_by_room, wrong_open_times
from farwall.spray.check.looks import look_faults
from farwall.spray.check.nouns import Fault, PlanRead, Unreadable
from farwall.spray.check.past import past_faults
from farwall.spray.check.people import jumps, people_of
from farwall.spray.check.reading import read_plan
from farwall.spray.check.stop_lines import open_stop_lines
from farwall.spray.check.tank import tank_faults
from farwall.spray.check.way_out import shut_in
from farwall.spray.check.wet import not_dry, trodden, walls
from farwall.spray.check.world import World, world_of

__all__ = ["Fault", "Unreadable", "check_plan", "replay_ages"]


def check_plan(plan: Mapping[str, object], *, job: object = None) -> list[Fault]:
    """Everything wrong with a plan, in the order of time; empty when it stands.

    `plan` is the content of a plan.json; with `job`, the content of a job.json,
    its facts are compared too. Raises `Unreadable`, with every place named, when
    either is not in the promised form.
    """
    try:
        read = read_plan(plan)
        found = list(_faults(read))
        if job is not None:
            found += against_job(plan, job)
    except shapely.errors.ShapelyError as error:
        raise Unreadable((f"the polygons cannot be reckoned with: {error}.",)) from error
    return sorted(set(found), key=lambda fault: (fault.at_min, fault.code, fault.field, fault.what))


def replay_ages(plan: Mapping[str, object]) -> dict[str, float]:
    """The peak age of the wet edge of every field, by its id, as the replay finds it. [min]

    0 for a field whose bands meet nowhere. Raises `Unreadable`.
    """
    read = read_plan(plan)
    seams = seams_by_field(read, edges_of(read.bands, _world(read)))
    return {field: found[0].oldest.age_min if found else 0.0 for field, found in seams.items()}


def _world(plan: PlanRead) -> World:
    return world_of(plan.house, _places(plan))


def _places(plan: PlanRead) -> NDArray[np.float64]:
    """Every place where somebody goes, as rows of x, y."""
    paths = [band.path for band in plan.bands]
    paths += [walk.path for field in plan.fields for walk in field.walks]
    return np.vstack([np.empty((0, 2)), *(path[:, :2] for path in paths)])


def _faults(plan: PlanRead) -> Iterator[Fault]:
    world, people = _world(plan), people_of(plan)
    yield from coverage(plan, world)
    yield from outside_rooms(plan, world)
    yield from reach_and_pace(plan, world)
    yield from jumps(people, walk_m_min=plan.tools.walk_m_min, so_far=plan.so_far)
    yield from walls(world, people)
    yield from not_dry(plan)
    yield from trodden(plan, world, people)
    yield from shut_in(plan, world, people)
    yield from collisions(people, world, plan.so_far)
    edges = edges_of(plan.bands, world)
    own, seams = edges_by_field(plan, edges), seams_by_field(plan, edges)
    for field in plan.fields:
        if field.varies:
            yield from dead_by_room(field, own[field.id], world)
        else:
            yield from dead_edges(field, seams[field.id], world)
    yield from open_stop_lines(plan, edges, world)
    yield from tank_faults(plan, world, people)
    yield from look_faults(plan)
    yield from past_faults(plan, world)
    peaks = {field: found[0].oldest.age_min if found else 0.0 for field, found in seams.items()}
    yield from edited(plan, edges, peaks)
    for field in plan.fields:
        yield from wrong_open_times(field, own[field.id], world, peaks[field.id])
