"""The floor of each room that is stained, washed and sealed: one figure for all papers."""

from __future__ import annotations

import shapely

from farwall.facts.plan import Plan


def areas_of(plan: Plan) -> dict[str, float]:
    """Floor of each room with that under its doors, what is kept dry left out. [m²]"""
    dry = shapely.union_all([one.polygon.shape for one in plan.inputs.fixtures])
    return {
        room.id: float(room.polygon.shape.difference(dry).area) for room in plan.inputs.floor.rooms
    }
