"""One page for each field of each coat: only what is wanted with wet gloves."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from functools import partial
from typing import Any

from farwall.beside import Beside, at_once
from farwall.facts.plan import Band, Field, Plan
from farwall.papers.drawing.scene import Storey, storeys, way_of
from farwall.papers.floor_drawing import field_svg
from farwall.papers.lettering import PAPER_LETTERING, clipped
from farwall.papers.run_sheet import lists
from farwall.papers.run_sheet.buying import Buying
from farwall.papers.run_sheet.choice_words import choice_line
from farwall.papers.run_sheet.edge_words import edges_live, tight_edge, why_edge
from farwall.papers.run_sheet.field_layout import FieldWords, field_layout
from farwall.papers.run_sheet.field_points import field_points
from farwall.papers.run_sheet.margins import PaperSize
from farwall.papers.run_sheet.names import coat_words, field_rooms, fits, numbers
from farwall.papers.run_sheet.remedy_rows import remedies_title, remedy_rows, rows_height
from farwall.papers.run_sheet.tick_rows import marks_as_set, tick_rows
from farwall.papers.svg import plain
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.papers.wall_ticks import wall_ticks
from farwall.papers.words import area, length, listed, room_names, unbroken, volume

_NAMES_PT = 190.0
"""Room for the rooms on the way out: the foot of the page has one line for them."""
_NOTABLE = 1.15
"""A slab that drinks up to 15 % more than planned is no news."""


_BESIDE_SHARE = 0.45
"""Of the fields' pages: so both end at about the same time, for whoever begins them has the day's
page and the moments to draw meanwhile, and a fork is slower at first; on two cores, rank: measured
here."""


def field_pages(
    plan: Plan, buying: Buying, *, units: Units, size: PaperSize
) -> list[dict[str, Any]]:
    """The pages of all fields, coat by coat, in the order of the day.

    In mid-day those that are still to do.
    """
    return field_pages_begun(plan, buying, units=units, size=size)()


def field_pages_begun(
    plan: Plan, buying: Buying, *, units: Units, size: PaperSize, beside: Beside = at_once
) -> Callable[[], list[dict[str, Any]]]:
    """The same pages, near half of them begun `beside`; what comes back draws the others."""
    done = {one.id for one in plan.so_far.done} if plan.so_far is not None else set()
    clock = plan_clock(plan, units)
    order = numbers(plan)
    count = {f.coat: sum(1 for g in plan.fields if g.coat == f.coat) for f in plan.fields}
    grounds = storeys(plan)

    def kicker(field: Field) -> str:
        coat = coat_words(plan, field.coat)
        return f"Field {order[field.id]} of {count[field.coat]} · {coat}"

    def pages(fields: Sequence[Field]) -> list[dict[str, Any]]:
        return [
            {
                "kicker": plain(kicker(f)),
                **_page(plan, f, buying, units=units, clock=clock, size=size, grounds=grounds),
            }
            for f in fields
        ]

    to_do = [f for f in plan.fields if not done or any(band.id not in done for band in f.bands)]
    fields = sorted(to_do, key=lambda f: f.order)
    own = len(fields) - round(_BESIDE_SHARE * len(fields))
    later = beside(partial(pages, fields[own:]))
    return lambda: [*pages(fields[:own]), *later()]


def _page(
    plan: Plan,
    field: Field,
    buying: Buying,
    *,
    units: Units,
    clock: WallClock,
    size: PaperSize,
    grounds: Sequence[Storey],
) -> dict[str, Any]:
    head = _head(plan, field, buying, units, clock)
    # A field that must be planned again gets other bands: nobody is to tick or spray these.
    runs = () if head["stop"] else wall_ticks(plan, field)
    rows = tick_rows(runs, units)
    words = FieldWords(
        title=head["title"],
        clock=head["clock"],
        thirsty=head["thirsty"],
        stop=head["stop"],
        remedies_pt=rows_height(head["remedies"], size.inner_width),
        points=[plain(unbroken(point)) for point in field_points(plan, field, units, clock)],
        why=[] if head["stop"] else [plain(line) for line in _why(plan, field, units, clock)],
        lives=head["lives"],
        ticks=marks_as_set(rows),
    )
    layout = field_layout(plan, field, words, size=size, grounds=grounds)
    return {
        **head,
        "map": field_svg(
            plan,
            replace(field, refills=()) if head["stop"] else field,
            units=units,
            width=layout.map_width,
            height=layout.map_height,
            lettering=PAPER_LETTERING,
            ground=None,
            walls=runs,
            grounds=grounds,
        ),
        "map_width": layout.map_width,
        "beside": layout.beside,
        "columns": layout.columns,
        "large": layout.large,
        "points_beside": layout.points_beside,
        "ticks_apart": layout.ticks_apart,
        "bands_apart": layout.bands_apart,
        "sure": layout.sure,
        "bands": [_band_row(band, units, clock) for band in _bands(field)],
        "volumes": ["gal", "L"] if units == "us" else ["L", "gal"],
        "ticks": rows,
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
    possible, good = field.verdict != "cannot", fits(plan, field)
    looked = any(look.field == field.id for look in plan.looks)  # told on the helper's page
    steps = gate.thirsty if gate and good and not looked else ()
    needs = [f"{area(field.area_m2, units)}, {volume(litres, units)}"]
    if gate is not None and good:
        needs.append(f"Start only with at least {volume(gate.start_l, units)} in tanks and tub")
    return {
        "title": plain(field_rooms(plan, field)),
        "clock": clock.span(field.start_min, field.end_min) if possible else "",
        "needs": plain(unbroken(". ".join(needs) + ".")),
        "thirsty": plain(_thirsty(steps, units)),
        "lives": plain(unbroken(edges_live(plan, field, clock))) if possible else "",
        "stop": [] if good else [plain(line) for line in _stop(plan, field)],
        "good": good,
        "remedies": remedy_rows(field, units, good=good),
        "remedies_title": remedies_title(field, good=good),
    }


def _thirsty(steps: tuple[tuple[float, float], ...], units: Units) -> str:
    told = [
        f"{volume(litres, units)} at ×{factor:g}" for factor, litres in steps if factor > _NOTABLE
    ]
    return f"Slab drank more than planned so far? Start with {', '.join(told)}." if told else ""


def _stop(plan: Plan, field: Field) -> list[str]:
    """Why this field may not be sprayed as it stands: the large word, then the reason."""
    tight = tight_edge(plan, field)
    where = f" in {tight.room}" if tight.room else ""
    edge = f"the edge{where} would grow {tight.age_min:.1f} min old, it lives {tight.low_min:.1f}"
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
    number = f"{band.order} II" if band.sprayer == 2 else str(band.order)
    return [number, clock.bare(band.start_min), first, second]


def _why(plan: Plan, field: Field, units: Units, clock: WallClock) -> list[str]:
    """What the verdict leans on: the edge against its budget, and the figure of a swept floor."""
    swept = (
        f"For the office: the live front counts as {length(field.equivalent_front_m, units)} long; "
        f"no sweep of this floor, walks and refills left out, brings it under "
        f"{length(field.bound_m, units)}. On site the minutes count."
    )
    return [why_edge(plan, field, clock), *choice_line(field, units), swept]


def _way_words(plan: Plan, field: Field) -> str:
    way = way_of(plan, field)
    outside = {exit_.opening for exit_ in plan.inputs.exits}
    own = [o for o in plan.inputs.openings if o.id in outside and {*o.rooms} & {*field.rooms}]
    if own and way not in own:
        return "Straight to the nearest way out, over wet floor. Eyewash at: "
    if way is None or way.id in outside or not way.rooms:
        return "Straight to the way out, over wet floor. Eyewash at: "
    beyond = [room for room in way.rooms if room not in field.rooms]
    first_names = [name.split(" + ")[0] for name in room_names(plan, beyond)]
    names = clipped(listed(first_names), _NAMES_PT, PAPER_LETTERING.body)
    return f"Straight through {names} to the way out, over wet floor. Eyewash at: "
