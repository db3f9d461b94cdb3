"""`farwall sun JOB.json`: where the sun falls on the floor, room by room and hour by hour."""

from __future__ import annotations

import argparse
import json
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli.weather_file import year_file
from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.job.sun_day import RoomSun, SunDay


def arguments(parser: argparse.ArgumentParser) -> None:
    """The job, the day, and where to draw."""
    parser.add_argument("job", metavar="JOB.json", type=Path, help="the facts of the job")
    parser.add_argument(
        "--weather", metavar="FILE", type=Path, help="a weather file, for the place alone"
    )
    parser.add_argument("--day", metavar="YYYY-MM-DD", help="the day (else that of the job)")
    parser.add_argument("--out", metavar="DIR", type=Path, help="where to write sun.svg")
    parser.add_argument("--json", action="store_true", help="print it all as JSON")


def run(options: argparse.Namespace) -> int:
    """Print each room's hours of sun and the size of its patch; write sun.svg into --out."""
    from farwall.facts.plain import plain
    from farwall.job.sun_day import sun_day
    from farwall.readers.job_json import read_job

    job = read_job(options.job)
    weather = None
    if options.weather is not None:
        weather = year_file(options.weather, asked="the sun asks a weather file for its place")
    day = sun_day(job, midnight=_midnight(job, options.day), weather=weather)
    if options.out is not None:
        _write(job, day, options.out)
    if options.json:
        print(json.dumps(plain(day), ensure_ascii=False))
    else:
        print(_said(job, day, options.out))
    return 0


def _midnight(job: Job, text: str | None) -> datetime | None:
    if text is None:
        return None
    from farwall.job.sun_day import midnight_of
    from farwall.readers.zones import zone_of

    try:
        day = date.fromisoformat(text)
    except ValueError:
        told = f"{text} is no day."
        raise Refused(Mistake("--day", told, "Write it like 2026-06-21.")) from None
    return midnight_of(day, job, zone_of([job]))


def _write(job: Job, day: SunDay, out: Path) -> None:
    from farwall.floor.thresholds import join_thresholds
    from farwall.papers.folder import write_folder
    from farwall.papers.sun_pictures import scenes_of, sun_svg
    from farwall.papers.wall_clock import wall_clock

    clock = wall_clock(day.starts_at, last_min=24 * 60, units=job.wishes.units)
    picture = sun_svg(
        scenes_of(join_thresholds(job.floor), day.patches),
        time=clock.time,
        full_hour_min=0.0,
        units=job.wishes.units,
    )
    write_folder(out, {"sun.svg": picture.encode()})


def _said(job: Job, day: SunDay, out: Path | None) -> str:
    begins = datetime.fromisoformat(day.starts_at)
    head = (
        f"{job.name or job.id or 'The job'}: sun on the floor on {begins:%Y-%m-%d} (clock UTC"
        f"{begins:%z}), under a clear sky, at {day.latitude_deg:g}, {day.longitude_deg:g}."
    )
    lines = [head]
    lines += [_of_room(job, day, room) for room in day.rooms if room.spells]
    dark = [room.name for room in day.rooms if not room.spells]
    if dark:
        lines.append(f"No sun all day: {', '.join(dark)}.")
    lines.append(
        "Eaves, trees and neighbours are not reckoned with: they only make it less. Warm concrete "
        "stays warm when the sun has gone: read the slab before spraying."
    )
    if out is not None:
        lines.append(f"Open {out}/sun.svg.")
    return "\n".join(lines)


def _of_room(job: Job, day: SunDay, room: RoomSun) -> str:
    from farwall.job.sun_day import clock_at
    from farwall.papers.words import area
    from farwall.units import clock_words

    def at(minute: float) -> str:
        return clock_words(clock_at(day, minute), us=job.wishes.units == "us")

    spells = ", ".join(
        f"{at(one.from_min)} to {at(one.to_min)} (most {area(one.largest_m2, job.wishes.units)} "
        f"from {at(one.largest_at_min)})"
        for one in room.spells
    )
    windows = ", ".join(room.windows)
    return f"  {room.name}: {spells}; up to {100 * room.share:.0f} % of it, by window {windows}."
