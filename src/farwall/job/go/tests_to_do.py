"""Slab tests that are still to be made: how many, in which rooms, and with what care."""

from __future__ import annotations

import re
from collections import Counter

from farwall.air.slab_tests import (
    DEPTH_FROM_BOTH,
    DEPTH_FROM_TOP,
    moisture_tests_by_area,
    readings_by_area,
    sheets_by_area,
)
from farwall.evidence import Rank
from farwall.facts.go import SlabTest
from farwall.facts.job import Job
from farwall.floor.takeoff import net_shape
from farwall.job.go.ground_rules import NOT_BEFORE, ruled_out
from farwall.units import M_PER_IN

_HIDDEN_PLACES = re.compile(
    r"closet|wardrobe|robe|linen|pantry|store|storage|laundry|utility|mechanical|cupboard",
    re.IGNORECASE,
)
HIDE = (
    "Hidden places only, away from sun: closets, under cabinets, behind the washer; nothing taped "
    "to the open floor, nothing ground or drilled there. Dust is silica: vacuum and respirator."
)


def slab_tests_to_do(job: Job) -> tuple[SlabTest, ...]:
    """Moisture and pH tests by the area of the whole floor, less those that were made.

    A probe needs a hole: it is offered only when what lies in the slab is ruled
    out. Its hole and the ground patch of a dish show for ever.
    """
    area_m2 = sum(net_shape(room, job.floor).area for room in job.floor.rooms)
    if area_m2 <= 0:
        return ()
    made = Counter(one.kind for one in job.survey.moisture)
    places = hidden_rooms(job)
    count = moisture_tests_by_area(area_m2)
    found = [_meter(job)] if not made["meter"] else []
    found += _of_sheets(sheets_by_area(area_m2) - made["D4263"], places)
    found += _of_dishes(count - made["F1869"] - made["F2170"], places)
    found += _of_probes(job, count - made["F1869"] - made["F2170"], places)
    return (*found, _rinses(job, readings_by_area(area_m2)))


def hidden_rooms(job: Job) -> tuple[str, ...]:
    """Rooms where a mark will not be seen: closets and the like by name, the smallest first."""
    named = [room for room in job.floor.rooms if _HIDDEN_PLACES.search(room.label)]
    return tuple(room.id for room in sorted(named, key=lambda one: one.polygon.shape.area))


def _meter(job: Job) -> SlabTest:
    return SlabTest(
        "meter",
        1,
        tuple(room.id for room in job.floor.rooms),
        "Comparative only (F2659): a grid of 3 ft (0.9 m) in every room, damp islands on the plan.",
        Rank.PRACTICE.value,
        "trade-press, common-practice",
    )


def _of_sheets(count: int, places: tuple[str, ...]) -> list[SlabTest]:
    if count <= 0:
        return []
    how = (
        "18 × 18 in (457 mm) of 4 mil film, all edges taped, 16 h or more, both faces looked at. "
        "A dry sheet proves no dry slab."
    )
    source = "astm-d4263, one for each 500 ft² (46 m²)"
    return [SlabTest("D4263", count, places[:count], how, Rank.MEMORY.value, source, HIDE)]


def _of_dishes(count: int, places: tuple[str, ...]) -> list[SlabTest]:
    if count <= 0:
        return []
    how = (
        "House at 75 ± 10 °F (24 ± 6 °C) and 50 ± 10 % humidity for 48 h before and during; grind "
        "20 × 20 in (508 mm) lightly, 24 h open, 60 to 72 h covered; never over a patch."
    )
    return [SlabTest("F1869", count, places[:count], how, Rank.PUBLISHED.value, "astm-f1869", HIDE)]


def _of_probes(job: Job, count: int, places: tuple[str, ...]) -> list[SlabTest]:
    if count <= 0 or any(known_there(job)):
        return []
    wait = job.choices.probe_wait_h or 72
    thick = job.survey.slab_thickness_m
    depth = (
        ""
        if thick is None
        else f" ({1000 * DEPTH_FROM_TOP * thick:.0f} mm, "
        f"{DEPTH_FROM_TOP * thick / M_PER_IN:.1f} in here)"
    )
    how = (
        f"Instead of F1869: holes to {100 * DEPTH_FROM_TOP:.0f} % of the slab{depth} where it "
        f"dries from the top only, {100 * DEPTH_FROM_BOTH:.0f} % from both; service conditions "
        f"for 48 h; read after {wait} h (72 h by the 2009 text, 24 h by later ones)."
    )
    care = HIDE if ruled_out(job.survey.hidden) else f"{NOT_BEFORE} {HIDE}"
    return [SlabTest("F2170", count, places[:count], how, Rank.PUBLISHED.value, "astm-f2170", care)]


def known_there(job: Job) -> tuple[bool, ...]:
    """Whether each thing that a drill could hit is known to be there."""
    hidden = job.survey.hidden
    return (bool(hidden.post_tension), bool(hidden.heating_tubes), bool(hidden.conduit))


def _rinses(job: Job, count: int) -> SlabTest:
    return SlabTest(
        "D4262",
        count,
        tuple(room.id for room in job.floor.rooms),
        "pH of the floor right after the last rinse, before it drains: two for each 500 ft² or "
        "part of it, paper to half a unit; beside the pH of the rinse water itself.",
        Rank.PUBLISHED.value,
        "astm-d4262",
    )
