"""`farwall read`: what is in a drawing, and what is not."""

from __future__ import annotations

import argparse
import json
from collections.abc import Iterator, Mapping
from dataclasses import replace
from pathlib import Path

from farwall.cli import answers
from farwall.cli.guards import Guards
from farwall.cli.read_photo import hints_told, photo_arguments
from farwall.errors import FarwallError, Mistake, Refused
from farwall.facts.reading import Note, Reading
from farwall.units import counted, ft2_from_m2, ft_from_m

_DONE, _NO_FLOOR = 0, 1
_CODED = {"IFC", "gbXML", "IndoorGML"}


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall read` takes."""
    parser.add_argument(
        "file", metavar="FILE", type=Path, help="a drawing, a building model or a photo"
    )
    parser.add_argument("--storey", metavar="NAME", help="read this storey only, by name or id")
    parser.add_argument(
        "--scale",
        metavar="METRES_PER_UNIT",
        type=float,
        help="metres a drawing unit is, for instance 0.0254; overrules the file",
    )
    answers.arguments(parser)
    parser.add_argument(
        "--guards", action=Guards, nargs=0, help="say which walls stand around readers here"
    )
    parser.add_argument(
        "--picture", metavar="OUT.svg", type=Path, help="draw what was read, notes as pins"
    )
    photo_arguments(parser)
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(options: argparse.Namespace) -> int:
    """Print what was read; 1 when no floor is in the file."""
    from farwall.readers.reading_json import reading_json

    found = answers.read_answered(
        options.file, scale=options.scale, accept=options.accept, refuse=options.refuse,
        hints=hints_told(options),
    )  # fmt: skip
    reading = found.reading
    if options.storey is not None:
        reading = one_storey(reading, options.storey)
    if options.picture is not None:
        _draw(reading, options.picture, options.file.name)
    if options.json:
        print(json.dumps(reading_json(reading, said=found.said), ensure_ascii=False))
    else:
        print(summary(reading, found.said))
    return _DONE if reading.floor.rooms else _NO_FLOOR


def one_storey(reading: Reading, name: str) -> Reading:
    """The reading with the rooms of one storey, and what belongs to them."""
    wanted = [s for s in reading.storeys if name.casefold() in (s.id.casefold(), s.name.casefold())]
    if not wanted:
        there = ", ".join(s.name or s.id for s in reading.storeys) or "none"
        raise Refused(Mistake("--storey", f"there is no storey “{name}” in the file.",
                              f"It has: {there}."))  # fmt: skip
    floor = reading.floor
    rooms = tuple(room for room in floor.rooms if room.storey == wanted[0].id)
    ids = {room.id for room in rooms}
    openings = tuple(o for o in floor.openings if ids & set(o.rooms))
    kept = {opening.id for opening in openings}
    return replace(
        reading,
        floor=replace(
            floor,
            rooms=rooms,
            openings=openings,
            windows=tuple(w for w in floor.windows if not w.room or w.room in ids),
            fixtures=tuple(
                f
                for f in floor.fixtures
                if reading.fixture_storeys.get(f.id, wanted[0].id) == wanted[0].id
            ),
        ),
        exits=tuple(way for way in reading.exits if way.opening in kept),
        storeys=tuple(wanted[:1]),
        stated={key: value for key, value in reading.stated.items() if key in ids},
    )


def summary(reading: Reading, said: Mapping[int, str] | None = None) -> str:
    """What was read, for a person; `said` tells by a note's number what became of its answer."""
    said = said or {}
    parts = [_heading(reading), said.get(0, ""), _rooms(reading), _openings(reading)]
    parts += [_stated(reading), _farthest(reading), *_notes(reading, said)]
    return "\n\n".join(part for part in parts if part)


def _notes(reading: Reading, said: Mapping[int, str]) -> Iterator[str]:
    """The notes under their titles, numbered through, so that each can be answered."""
    number = 0
    for title, notes in (
        ("Mended", reading.mended),
        ("Left open, look at these", reading.left),
        ("To be said by you", reading.asks),
    ):
        lines = [f"{title}:"] if notes else []
        for note in notes:
            number += 1
            lines.append(f"{number:4}. {_note(note, reading)}")
            if number in said:
                lines.append(f"      → {said[number]}")
        yield "\n".join(lines)
    if number and not said:
        yield "Answer them by --accept N,… and --refuse N,…; `farwall job` takes the same words."


def _heading(reading: Reading) -> str:
    unit = f", drawn in {reading.length_unit}" if reading.length_unit else ", unit not known"
    floor = reading.floor
    held = (
        counted(len(floor.rooms), "room"),
        counted(len(floor.openings), "opening"),
        counted(len(reading.exits), "way out", "ways out"),
        counted(len(floor.windows), "window"),
        counted(len(floor.fixtures), "fixture"),
    )
    return f"{reading.format}{unit}. {', '.join(held)}."


def _rooms(reading: Reading) -> str:
    known = reading.scale_m_per_unit is not None
    lines, total = [], 0.0
    for room in reading.floor.rooms:
        area = room.polygon.shape.area
        total += area
        stated = reading.stated.get(room.id)
        said = (
            f"   written: {stated.text} = {ft2_from_m2(stated.area_m2):.1f} ft²" if stated else ""
        )
        lines.append(f"  {room.id:<24.24} {_area(area, known=known)}  {room.name}{said}")
    if lines and known:
        lines.append(f"  {'in all':<24} {_area(total, known=known)}")
    return "\n".join(["Rooms:", *lines]) if lines else "No rooms were found."


def _draw(reading: Reading, out: Path, name: str) -> None:
    """Put the picture in place whole or not at all."""
    from farwall.papers.folder import write_folder
    from farwall.papers.reading.picture import reading_svg

    write_folder(out.parent, {out.name: reading_svg(reading, title=name).encode()})


def _stated(reading: Reading) -> str:
    """What the file says of the rooms' sizes, beside what its outlines give."""
    from farwall.job.stated import stated_words

    words = stated_words(reading)
    return (
        "\n".join(["Sizes as the file states them:", *(f"  {one}" for one in words)])
        if words
        else ""
    )


def _area(area_m2: float, *, known: bool) -> str:
    return f"{ft2_from_m2(area_m2):8.1f} ft² {area_m2:8.2f} m²" if known else "   (no scale)"


def _openings(reading: Reading) -> str:
    known = reading.scale_m_per_unit is not None
    exits = {way.opening for way in reading.exits}
    called, lines = _called(reading), []
    for opening in reading.floor.openings:
        width = opening.width_m if known else None
        wide = f"{ft_from_m(width):5.2f} ft {width:5.2f} m" if width else " " * 15
        rooms = [called[room] for room in opening.rooms]
        where = " – ".join(rooms) if len(rooms) > 1 else f"{rooms[0]} – out"
        lines.append(f"  {opening.kind:<8} {wide}  {where}{'  (way out)' * (opening.id in exits)}")
    return "\n".join(["Openings:", *lines]) if lines else ""


def _called(reading: Reading) -> dict[str, str]:
    """What each room is called here: its id, but its name where ids are codes of a model."""
    rooms = reading.floor.rooms
    names = {room.name for room in rooms}
    coded = reading.format in _CODED and "" not in names and len(names) == len(rooms)
    return {room.id: room.name if coded else room.id for room in rooms}


def _farthest(reading: Reading) -> str:
    """The floor farthest from the ways out, and rooms from which none is reached."""
    one_floor = len(reading.storeys) <= 1 and reading.scale_m_per_unit is not None
    if not (one_floor and reading.exits and reading.floor.rooms):
        return ""
    from farwall.floor.thresholds import join_thresholds
    from farwall.spray.building import build_world
    from farwall.spray.farthest import farthest_floor

    try:
        found = farthest_floor(build_world(join_thresholds(reading.floor), reading.exits))
    except FarwallError:  # a floor with faults: they are told when a plan is asked for
        return ""
    if found is None:
        return ""
    (x, y), long = found.place, f"{ft_from_m(found.walk_m):.0f} ft {found.walk_m:.1f} m"
    line = (
        f"Farthest floor: {found.room}, {long} of walk from the nearest way out "
        f"(at {x:.1f}, {y:.1f} m)."
    )
    shut = ", ".join(found.shut_in)
    return line + (f"\nNo walk leads out of: {shut}." if shut else "")


def _note(note: Note, reading: Reading) -> str:
    if note.where is None or reading.scale_m_per_unit is None:
        return f"[{note.code}] {note.what}"
    x, y = (round(each, 2) + 0.0 for each in note.where)  # no minus before a nought
    return f"[{note.code}] {note.what} (at {x:.2f}, {y:.2f} m)"
