"""What a plan says of floor of another make: what is done with it, and what the owner signs."""

from __future__ import annotations

from farwall.facts.go import Go
from farwall.facts.job import Job
from farwall.facts.plan import FloorPatch
from farwall.facts.slab import Patch
from farwall.units import ft2_from_m2

_KIND = {"patch": "Patch", "trench": "Trench", "pour": "Later pour", "leveller": "Leveller"}
_DONE = {
    "stain and disclose": "Stained along with the floor.",
    "leave for another colour": (
        "Left dry for another colour: mask it to its edge before the first stroke. It may be "
        "walked on with clean, dry soles; the plan walks around it."
    ),
    "grind first": (
        "Grind it first (dust is silica: shroud, vacuum and respirator by the silica rule). Then "
        "drops again: tell them, and plan again. Until then it counts as stained along."
    ),
    "": "Nobody has said what becomes of it: decide before the first stroke. Stained along so far.",
}


def floor_patches(job: Job) -> tuple[FloorPatch, ...]:
    """Every patch of a job with what is done with it and the line that discloses it."""
    return tuple(_told(job, one) for one in job.survey.patches)


def suction_warnings(go: Go) -> tuple[str, ...]:
    """The word on drop seconds that leap inside a field, with the ratio and what to do."""
    return tuple(
        f"{one.reason} {one.change}" for one in go.findings if one.rule == "suction in one field"
    )


def _told(job: Job, patch: Patch) -> FloorPatch:
    area = None if patch.polygon is None else patch.polygon.shape.area
    return FloorPatch(
        patch.id,
        patch.room,
        patch.kind,
        patch.decision or "",
        not patch.left_dry,
        patch.drop_s,
        None if area is None else round(area, 4),
        patch.polygon,
        _what(patch),
        _disclosure(job, patch, area),
    )


def _what(patch: Patch) -> str:
    words = _DONE[patch.decision or ""]
    if patch.kind == "pour" and not patch.left_dry:
        words += " Its joint is a stop line where it runs from wall to wall."
    if patch.drop_s is not None and not patch.left_dry:
        words += f" Edges on it are held to its own drop, {patch.drop_s:g} s, where that is sooner."
    return words


def _disclosure(job: Job, patch: Patch, area_m2: float | None) -> str:
    from farwall.job.go.noun import named  # it brings every rule of go or no-go, asked at the end

    size = "" if area_m2 is None else f" ({ft2_from_m2(area_m2):.0f} ft², {area_m2:.1f} m²)"
    where = f"{_KIND[patch.kind]} {patch.id} in {named(job, [patch.room])}{size}"
    if patch.left_dry:
        rest = "It stays bare today and is coloured another day by other means."
    else:
        rest = "It takes the same stain and comes out unlike it."
    return (
        f"{where} is of another make than the floor beside it. {rest} It will not match, and its "
        "edge stays visible."
    )
