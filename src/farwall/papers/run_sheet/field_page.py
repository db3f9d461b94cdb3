"""One page for each field of each coat: only what is wanted with wet gloves."""

from __future__ import annotations

from typing import Any

import shapely

from farwall.facts.plan import Band, Field, Plan, Refill
from farwall.papers.drawing.scene import way_of
from farwall.papers.floor_drawing import field_svg
from farwall.papers.grounds import rank_words
from farwall.papers.lettering import PAPER_LETTERING, clipped
from farwall.papers.run_sheet import lists
from farwall.papers.run_sheet.buying import Buying
from farwall.papers.run_sheet.field_layout import FieldWords, field_layout
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.run_sheet.names import coat_words, field_rooms, fits, numbers
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.wall_ticks import Tick, WallRun, wall_ticks
from farwall.papers.words import area, length, listed, room_names, volume
from farwall.units import feet_and_inches

_NAMES_PT = 190.0
"""Room for the rooms on the way out: the foot of the page has one line for them."""
_FEW_MARKS = 2
_IN_ROOM_M, _NEAR_DOOR_M = 0.2, 3.0
_NOTABLE = 1.15
"""A slab that drinks up to 15 % more than planned is no news."""


def field_pages(
    plan: Plan, buying: Buying, *, units: Units, size: PaperSize
) -> list[dict[str, Any]]:
    """The pages of all fields, coat by coat, in the order of the day."""
    clock = plan_clock(plan, units)
    order = numbers(plan)
    count = {f.coat: sum(1 for g in plan.fields if g.coat == f.coat) for f in plan.fields}
    pages = []
    for field in sorted(plan.fields, key=lambda f: f.order):
        kicker = f"Field {order[field.id]} of {count[field.coat]} · {coat_words(plan, field.coat)}"
        pages.append(
            {
                "kicker": plain(kicker),
                **_page(plan, field, buying, units=units, clock=clock, size=size),
            }
        )
    return pages


def _page(
    plan: Plan, field: Field, buying: Buying, *, units: Units, clock: WallClock, size: PaperSize
) -> dict[str, Any]:
    head = _head(plan, field, buying, units, clock)
    runs = wall_ticks(plan, field)
    walls = [_wall(run, units) for run in runs]
    words = FieldWords(
        title=head["title"],
        clock=head["clock"],
        thirsty=head["thirsty"],
        stop=head["stop"],
        remedies=head["remedies"],
        points=[plain(point) for point in _points(plan, field, units, clock)],
        why=[plain(line) for line in _why(field, units)],
        ticks=[[_marks(wall) for wall in row] for row in _paired(walls)],
    )
    layout = field_layout(plan, field, words, size)
    return {
        **head,
        "map": field_svg(
            plan,
            field,
            units=units,
            width=layout.map_width,
            height=layout.map_height,
            lettering=PAPER_LETTERING,
            ground=None,
            walls=runs,
        ),
        "map_width": layout.map_width,
        "beside": layout.beside,
        "columns": layout.columns,
        "large": layout.large,
        "points_beside": layout.points_beside,
        "possible": field.verdict != "cannot",
        "bands": [_band_row(band, units, clock) for band in _bands(field)],
        "volumes": ["gal", "L"] if units == "us" else ["L", "gal"],
        "ticks": _paired(walls),
        "ticks_small": words.ticks_small,
        "points": words.points,
        "why": words.why,
        "emergency": list(lists.EMERGENCY),
        "out": plain(_way_words(plan, field)),
    }


def _bands(field: Field) -> list[Band]:
    return sorted(field.bands, key=lambda band: band.order)


def _head(
    plan: Plan, field: Field, buying: Buying, units: Units, clock: WallClock
) -> dict[str, Any]:
    litres = sum(band.litres for band in field.bands)
    gate = buying.gates.get(field.id)
    possible = field.verdict != "cannot"
    needs = [f"{area(field.area_m2, units)}, {volume(litres, units)}"]
    if gate is not None and possible:
        needs.append(f"Start only with at least {volume(gate.start_l, units)} in tanks and tub")
    return {
        "title": plain(field_rooms(plan, field)),
        "clock": clock.span(field.start_min, field.end_min) if possible else "",
        "needs": plain(". ".join(needs) + "."),
        "thirsty": plain(_thirsty(gate.thirsty if gate and possible else (), units)),
        "stop": [] if fits(plan, field) else [plain(line) for line in _stop(field)],
        "remedies": [
            plain(
                remedy.what
                + (
                    f" Edge then at most {remedy.peak_age_min:.1f} min."
                    if remedy.peak_age_min
                    else ""
                )
            )
            for remedy in ([] if fits(plan, field) else field.remedies)
        ],
    }


def _thirsty(steps: tuple[tuple[float, float], ...], units: Units) -> str:
    told = [
        f"{volume(litres, units)} at ×{factor:g}" for factor, litres in steps if factor > _NOTABLE
    ]
    return f"Slab drank more than planned so far? Start with {', '.join(told)}." if told else ""


def _stop(field: Field) -> list[str]:
    """Why this field may not be sprayed as it stands: the large word, then the reason."""
    lives = field.open_time_min.low
    edge = f"the edge would grow {field.peak_age_min:.1f} min old, it lives {lives:.1f}"
    if field.verdict == "cannot":
        conditions = [r for r in field.remedies if r.code == "conditions"]
        reason = "" if conditions else f": {edge}"
        return [
            "NO",
            f"This field cannot be sprayed in these conditions without a lap line{reason}."
            if not conditions
            else "This field cannot be sprayed in these conditions.",
        ]
    wants = {
        "helper": "a helper who swaps full tanks",
        "two": "a second sprayer",
        "stop-line": "one more stop line",
    }.get(field.verdict, "another plan")
    return [
        "NOT AS IT STANDS",
        f"Only with {wants}: as planned, {edge}. Plan it again before the day.",
    ]


def _band_row(band: Band, units: Units, clock: WallClock) -> list[str]:
    gallons = volume(band.litres, "us", both=False).removesuffix(" gal")
    litres = volume(band.litres, "metric", both=False).removesuffix(" L")
    first, second = (gallons, litres) if units == "us" else (litres, gallons)
    return [str(band.order), clock.time(band.start_min), first, second]


def _wall(run: WallRun, units: Units) -> dict[str, Any]:
    return {
        "letter": run.letter,
        "of": plain(run.of),
        "marks": [_tick(tick, units) for tick in run.ticks],
    }


def _marks(wall: dict[str, Any]) -> list[str]:
    """The marks of a wall about as wide as they are set: to see how much room they take."""
    return [f"{mark['at']} {mark['other']} {mark['after']}" for mark in wall["marks"]]


def _paired(walls: list[dict[str, Any]]) -> list[list[dict[str, Any]]]:
    """The walls in rows: two with few marks share one."""
    rows: list[list[dict[str, Any]]] = []
    for wall in walls:
        few = len(wall["marks"]) <= _FEW_MARKS
        if few and rows and len(rows[-1]) == 1 and len(rows[-1][0]["marks"]) <= _FEW_MARKS:
            rows[-1].append(wall)
        else:
            rows.append([wall])
    return rows


def _tick(tick: Tick, units: Units) -> dict[str, Any]:
    if tick.at_m is None:
        return {"before": tick.before, "at": "in the doorway", "other": "", "after": tick.after}
    tape, metric = feet_and_inches(tick.at_m), f"{tick.at_m:.2f}"
    at, other = (tape, metric) if units == "us" else (metric, tape)
    return {"before": tick.before, "at": at, "other": other, "after": tick.after}


def _points(plan: Plan, field: Field, units: Units, clock: WallClock) -> list[str]:
    """Refills, the spare tank, where to stop: in the order in which they are wanted."""
    refills = sorted(field.refills, key=lambda refill: refill.at_min)
    points = [_refill_words(plan, field, refill, units, clock) for refill in refills]
    if any(refill.by == "helper" for refill in refills):
        points.append("The helper waits with the full spare tank on dry floor at the way out.")
    if not refills:
        points.append("No refill in this field: one tank lasts.")
    stops = len(field.stop_lines)
    if stops:
        names = "the dashed stop line" if stops == 1 else f"the {stops} dashed stop lines"
        points.append(f"Stop at {names} on the map, nowhere else.")
    return points


def _refill_words(plan: Plan, field: Field, refill: Refill, units: Units, clock: WallClock) -> str:
    after = [band.order for band in _bands(field) if band.end_min <= refill.at_min + 0.01]
    who = (
        "the helper brings it"
        if refill.by == "helper"
        else f"fetch it {_where(plan, field, refill)}"
    )
    more = f"{refill.minutes:.1f} min, {volume(refill.litres, units)} more"
    if not after:
        return f"Begin with a full tank, {clock.time(refill.at_min)}: {who}, {more}."
    return f"Full tank at {clock.time(refill.at_min)} after band {after[-1]}: {who}, {more}."


def _where(plan: Plan, field: Field, refill: Refill) -> str:
    """Where the spare tank waits, in words."""
    at = shapely.Point(refill.at)
    for room in plan.inputs.floor.rooms:
        if room.polygon.shape.distance(at) < _IN_ROOM_M:
            return "where the can stands" if room.id in field.rooms else f"in {room.label}"
    way = way_of(plan, field)
    near = way is not None and shapely.LineString(way.line).distance(at) < _NEAR_DOOR_M
    return "outside the way out" if near else "outside"


def _why(field: Field, units: Units) -> list[str]:
    """What the verdict leans on: the edge against its budget, and the figure of a swept floor."""
    budget = field.open_time_min
    spare = budget.low - field.peak_age_min
    edge = f"Oldest edge {field.peak_age_min:.1f} min of {budget.low:.1f}: {abs(spare):.1f} min "
    edge += "to spare." if spare >= 0 else "too many."
    rests = rank_words(budget.rank, budget.source)
    if rests:
        edge += f" Budget: {rests}; likely {budget.likely:.0f}, at most {budget.high:.0f}."
    swept = (
        f"Swept-floor figure: a front of {length(field.equivalent_front_m, units)}; no order of a "
        f"swept floor does better than {length(field.bound_m, units)}. That bound assumes bands "
        "of this width swept without walks or refills; the walked path bends, so the minutes "
        "above count."
    )
    return [edge, swept]


def _way_words(plan: Plan, field: Field) -> str:
    way = way_of(plan, field)
    outside = {exit_.opening for exit_ in plan.inputs.exits}
    if way is None or way.id in outside or not way.rooms:
        return "Straight to the way out, over wet floor. Eyewash at: "
    beyond = [room for room in way.rooms if room not in field.rooms]
    names = clipped(listed(room_names(plan, beyond)), _NAMES_PT, PAPER_LETTERING.body)
    return f"Straight through {names} to the way out, over wet floor. Eyewash at: "
