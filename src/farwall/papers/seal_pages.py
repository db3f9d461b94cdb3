"""What the pages of the seal sheet say, in words ready to be set."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from farwall.facts.plan import Field, Plan
from farwall.job.seal_day.noun import Sealing
from farwall.papers.drawing.scene import Storey, storeys
from farwall.papers.run_sheet.buying import Buying
from farwall.papers.run_sheet.edge_words import tight_edge
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.run_sheet.names import fits
from farwall.papers.seal_drawing import coat_map, field_map
from farwall.papers.seal_words import (
    VERDICTS,
    coat_fields,
    coat_named,
    coat_span,
    points,
    start_only,
)
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.words import area, length, listed, room_names, unbroken, volume

_MAP_SHARE, _MAP_HIGH = 0.6, 280.0
_FLOOR_HIGH = 330.0
_MOST_RULED = 30


def coat_pages(
    plan: Plan, sealing: Sealing, *, units: Units, size: PaperSize
) -> list[dict[str, Any]]:
    """A page for each coat with its fields, then its fields with their bands."""
    clock, grounds, gates = plan_clock(plan, units), storeys(plan), Buying.of(plan)
    pages = []
    for coat in sealing.coats:
        fields = coat_fields(plan, coat.coat)
        turned = {one.field: one for one in coat.crossings}
        rows = []
        for n, field in enumerate(fields, 1):
            gate = gates.gates.get(field.id)
            rows.append(
                {
                    **_field_row(plan, field, n, units, clock),
                    "start": volume(gate.start_l, units) if gate is not None else "",
                    "turn": _turn(turned.get(field.id), first=not coat.crossings),
                }
            )
        pages.append(
            {
                "name": coat_named(coat.coat),
                "span": coat_span(plan, coat.coat, clock),
                "map": coat_map(
                    plan, coat.coat, units=units, width=size.inner_width, height=_FLOOR_HIGH
                ),
                "rows": rows,
                "crosses": bool(coat.crossings),
                "not_crossed": [
                    plain(f"{listed(room_names(plan, one.rooms))}: {one.why}.")
                    for one in coat.crossings
                    if not one.crossed
                ],
                "fields": [
                    _field(plan, field, n, gates, units=units, clock=clock, size=size,
                           grounds=grounds)
                    for n, field in enumerate(fields, 1)
                    if field.verdict != "cannot"
                ],
            }
        )  # fmt: skip
    return pages


def _field(
    plan: Plan,
    field: Field,
    n: int,
    gates: Buying,
    *,
    units: Units,
    clock: WallClock,
    size: PaperSize,
    grounds: Sequence[Storey],
) -> dict[str, Any]:
    gate = gates.gates.get(field.id)
    litres = sum(band.litres for band in field.bands)
    needs = f"{area(field.area_m2, units)}, {volume(litres, units)}"
    edge = tight_edge(plan, field)
    bands = sorted(field.bands, key=lambda band: band.order)
    return {
        "title": plain(f"{n} · {listed(room_names(plan, field.rooms))}"),
        "clock": clock.span(field.start_min, field.end_min),
        "needs": plain(unbroken(f"{needs}; {start_only(gate.start_l, units)}." if gate else needs)),
        "map": field_map(
            plan, field, units=units, width=size.inner_width * _MAP_SHARE, height=_MAP_HIGH,
            grounds=grounds,
        ),
        "map_width": size.inner_width * _MAP_SHARE,
        "bands": [
            [f"{band.order} II" if band.sprayer == 2 else str(band.order),
             clock.bare(band.start_min), volume(band.litres, units, both=False).partition(" ")[0]]
            for band in bands
        ],
        "unit": "gal" if units == "us" else "L",
        "columns": 1 if len(bands) <= 11 else 2,
        "small": len(bands) > _MOST_RULED,
        "points": [plain(unbroken(one)) for one in points(plan, field, units, clock)],
        "edge": plain(
            f"Oldest edge {edge.age_min:.1f} of {edge.low_min:.1f} min; bands "
            f"{length(field.band_m or 0.0, units)} wide."
        ),
    }  # fmt: skip


def _field_row(plan: Plan, field: Field, n: int, units: Units, clock: WallClock) -> dict[str, Any]:
    edge = tight_edge(plan, field)
    return {
        "number": str(n),
        "rooms": plain(listed(room_names(plan, field.rooms))),
        "clock": clock.bare(field.start_min),
        "volume": volume(sum(band.litres for band in field.bands), units, both=False),
        "verdict": VERDICTS[field.verdict],
        "good": fits(plan, field),
        "edge": f"{edge.age_min:.1f} of {edge.low_min:.1f} min",
    }


def _turn(crossing: Any, *, first: bool) -> str:
    if first or crossing is None or crossing.apart_deg is None:
        return ""
    return f"{crossing.apart_deg:.0f}°" if crossing.crossed else "not crossed"
