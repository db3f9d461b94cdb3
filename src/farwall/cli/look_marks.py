"""Marks on a mopped floor for `farwall colour look`: the photo laid on a room of a job."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.errors import FarwallError, Mistake, Refused

if TYPE_CHECKING:
    from farwall.colour.marks.nouns import KnownEdge
    from farwall.facts.job import Job

_MOST_SURE = 0.99
"""No photo is surer than that of anything. Rank: guess."""


def marks_arguments(parser: argparse.ArgumentParser) -> None:
    """The words that lay the photo on the plan."""
    parser.add_argument("--job", type=Path, metavar="JOB", help="job.json with the floor")
    parser.add_argument("--room", metavar="ROOM", help="id or name of the room in the photo")
    parser.add_argument(
        "--points", metavar="POINTS",
        help="four or more points: px,py=x,y;… points of the photo, metres of the plan",
    )  # fmt: skip
    parser.add_argument(
        "--plan", type=Path, metavar="PLAN",
        help="plan.json by which it was sprayed; without it the job is planned anew",
    )  # fmt: skip
    parser.add_argument(
        "--out", type=Path, metavar="PICTURE",
        help="write the floor from above with its marks there (SVG)",
    )  # fmt: skip


def wanted(options: argparse.Namespace) -> bool:
    """Whether marks are asked for. Raises Refused where only a part of what it takes is told."""
    told = {"--job": options.job, "--room": options.room, "--points": options.points}
    if not any(told.values()):
        if options.out is not None:
            raise Refused(
                Mistake("--out", "there is no floor to draw.", "Add --job --room --points.")
            )
        return False
    if lacking := [name for name, value in told.items() if not value]:
        what = "marks need the job, the room and the points together."
        raise Refused(*(Mistake(name, what, f"Add {name}.") for name in lacking))
    return True


def looked(photo: Path, options: argparse.Namespace) -> dict[str, Any]:
    """What the photo comes to on the plan, as plain values. Raises Refused."""
    from dataclasses import asdict

    from farwall.cli.colour_photo import values_told
    from farwall.job.colour.mark_remedies import remedy_of
    from farwall.job.colour.marks import Photo, together
    from farwall.readers.apart.floor_photos import floor_seen_of
    from farwall.readers.floor_photo.nouns import ground_of
    from farwall.readers.job_json import read_job

    job = read_job(options.job)
    room = _room(options.room, {one.id: one.label for one in job.floor.rooms})
    try:
        data = photo.read_bytes()
    except OSError as error:
        raise Refused(Mistake(str(photo), f"it cannot be opened: {error.strerror}.")) from error
    edges = _edges(job, room, options.plan)
    seen = floor_seen_of(
        data, name=photo.name, points=options.points, room=ground_of(job.floor, room), edges=edges,
        own_values=None if options.values is None else values_told(options.values),
    )  # fmt: skip
    found = together(room, [Photo("photo", seen.marks, seen.saw)])
    if options.out is not None:
        options.out.write_text(_drawn(job.floor, room, seen, found), encoding="utf-8")
    return {
        "room": room, "edges": len(edges),
        "laid": {**asdict(seen.told), "checked": seen.told.checked},
        "marks": [
            {
                "name": one.name, "asks": one.asks, **asdict(one.mark),
                "remedy": list(remedy_of(one.mark.kind).says) if one.asks else [],
                "remedy_rank": remedy_of(one.mark.kind).rank.value if one.asks else "",
            }
            for one in found
        ],
    }  # fmt: skip


def _edges(job: Job, room: str, plan_file: Path | None) -> tuple[KnownEdge, ...]:
    """Where bands met in the room, by the plan; none where the job cannot be planned."""
    from farwall.job.colour.band_edges import band_edges
    from farwall.job.plan_job import plan_job
    from farwall.readers.plan_json import read_plan

    if plan_file is not None:
        return band_edges(read_plan(plan_file), room)
    try:
        return band_edges(plan_job(job), room)
    except FarwallError:
        return ()  # the photo is looked at all the same


def lines(found: dict[str, Any]) -> list[str]:
    """The same in words."""
    from farwall.job.colour.mark_remedies import DECIDES, SHEET_WINS

    laid = found["laid"]
    told = [_laid_line(laid)]
    told.append(
        f"Looked at: {laid['seen_m2']:.1f} of {laid['room_m2']:.1f} m²; under mirrored light "
        f"{laid['glare_m2']:.1f} m², too far or too flat {laid['far_m2']:.1f} m²."
    )
    told.append(
        f"Lap lines are looked for along {found['edges']} edges of bands by the run sheet."
        if found["edges"]
        else "No edge of a band is known here: lap lines are looked for only where they run with "
        "the walls, and the faint ones are missed."
    )
    asked = [one for one in found["marks"] if one["asks"]]
    for number, one in enumerate(asked, 1):
        x, y = one["at"]
        size = f"{one['length_m']:.2f} m by {one['width_m']:.2f} m at {x:.2f}, {y:.2f}"
        likely = f"likelihood {min(one['confidence'], _MOST_SURE):.2f}"
        kind, why = one["kind"].capitalize(), one["why"]
        told.append(f"{number} {kind}? {size}; {likely}, because {why}")
        told.append(f"  {' '.join(one['remedy'])} ({one['remedy_rank']})")
    others = [one["kind"] for one in found["marks"] if not one["asks"]]
    if others:
        counted = ", ".join(f"{kind} {others.count(kind)}" for kind in dict.fromkeys(others))
        told.append(f"Seen beside these and not asked: {counted}.")
    told.append("Nothing here is a fault of the floor before a person has said so.")
    return [*told, DECIDES, SHEET_WINS] if asked else told


def _laid_line(laid: dict[str, Any]) -> str:
    sure = f"a place is sure to about {laid['place_mm']:.0f} mm by the clicks."
    if not laid["checked"]:
        return f"Laid by four points, which leave nothing over to check; {sure}"
    return (
        f"Laid by {laid['pairs']} points, {laid['rms_mm']:.0f} mm off on average and "
        f"{laid['worst_mm']:.0f} mm at {laid['worst']}; {sure}"
    )


def _room(told: str, rooms: dict[str, str]) -> str:
    if told in rooms:
        return told
    named = [one for one, label in rooms.items() if label.lower() == told.lower()]
    if len(named) == 1:
        return named[0]
    raise Refused(Mistake("--room", f"there is no room {told}.", f"There are {', '.join(rooms)}."))


def _drawn(floor: Any, room: str, seen: Any, found: Any) -> str:
    from farwall.papers.colour.marks_floor import Above, Drawn, marks_svg

    above = Above(
        f"data:image/jpeg;base64,{seen.picture_base64}", seen.left_m, seen.top_m, seen.wide_m,
        seen.high_m,
    )  # fmt: skip
    asked = [one for one in found if one.asks]
    marks = [Drawn(f"{n}", o.mark.at, o.mark.outline, "asked") for n, o in enumerate(asked, 1)]
    marks += [Drawn("", o.mark.at, o.mark.outline, "beside") for o in found if not o.asks]
    return marks_svg(floor, room, above, marks=marks, told="The floor from above with its marks")
