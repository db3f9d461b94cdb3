"""What masks the house, from its true walls and openings. Pure."""

from __future__ import annotations

from dataclasses import replace
from math import ceil, fsum

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.quantities import Quantity, Share
from farwall.job.office.masking import FILM_M, RoomMasked
from farwall.job.office.quantities.basis import Basis, line, times
from farwall.job.office.quantities.practice import (
    CLING_ROLLS_PER_1000_FT2,
    FILM_LAP_M,
    FILM_ROLL_M,
    JAMB_M,
    TAPE_ROLL_M,
    TAPE_USEFUL_M,
    TOWELS_PER_DAM,
)

_PAPERED = frozenset({"kick", "tub", "stair"})


def mask_lines(basis: Basis) -> tuple[Quantity, ...]:
    """Tape and film by the wall, then paper, wrap, foam, plugs and dams where there is any."""
    made = [_tape(basis), _film(basis), *_paper(basis), _wrap(basis), *_foam(basis)]
    return (*made, *_plugs(basis), *_dams(basis))


def tape_m(wall_m: float) -> float:
    """Tape for so much wall: of 180 ft on a roll about 160 ft do."""
    return wall_m * TAPE_ROLL_M / TAPE_USEFUL_M


def film_of_room_m(room: RoomMasked) -> float:
    """Film 48 in tall for the walls of a room, with its laps; walls that are taller take more."""
    strips = ceil(room.film_m / FILM_M - 0.01)
    return room.wall_m * max(strips, 1) * (1 + FILM_LAP_M / FILM_ROLL_M)


def _tape(basis: Basis) -> Quantity:
    wall_m = basis.masked.wall_m
    much = tape_m(wall_m)
    rule = (
        f"One strip along {basis.said(wall_m, 'm')} of wall, above the slab and never on it; of "
        f"{basis.said(TAPE_ROLL_M, 'm')} on a roll about {basis.said(TAPE_USEFUL_M, 'm')} do. "
        "Film that does not cling wants a second strip."
    )
    made = line("tape", "tape", (much, much, 2 * much), rule, unit="m")
    return _by_room(made, basis, [tape_m(one.wall_m) for one in basis.masked.rooms], most=2.0)


def _film(basis: Basis) -> Quantity:
    rooms = [film_of_room_m(one) for one in basis.masked.rooms]
    much = fsum(rooms)
    rule = (
        f"{basis.said(basis.masked.wall_m, 'm')} of wall, film {_tall(basis)} tall, laps of "
        f"{_lap(basis)} at each join; a wall masked higher takes a strip more."
    )
    made = line("film", "masking film", (much, much, much), rule, unit="m")
    return _by_room(made, basis, rooms, most=1.0)


def _tall(basis: Basis) -> str:
    return "48 in" if basis.units == "us" else "1.22 m"


def _lap(basis: Basis) -> str:
    return "6 in" if basis.units == "us" else "15 cm"


def _by_room(made: Quantity, basis: Basis, much: list[float], *, most: float) -> Quantity:
    shares = tuple(
        Share(each, each, each * most, each, room=one.room)
        for one, each in zip(basis.masked.rooms, much, strict=True)
    )
    return replace(made, shares=shares)


def _paper(basis: Basis) -> list[Quantity]:
    """Along what is low: cabinet kicks, tub aprons, stair strings, as told."""
    items = [one for one in basis.ground.job.supplies.masking.items if one.kind in _PAPERED]
    much = fsum((one.length_m or 0.0) * one.count for one in items if not one.take_out)
    if not much:
        return []
    tall = "12 in" if basis.units == "us" else "30 cm"
    rule = f"{tall} tall along {basis.said(much, 'm')} of kicks, tubs and stairs, as told."
    return [line("paper", "masking paper", times((1, 1, 1), much), rule, unit="m")]


def _wrap(basis: Basis) -> Quantity:
    low, _, high = CLING_ROLLS_PER_1000_FT2
    per = "1,000 ft²" if basis.units == "us" else "93 m²"
    rule = (
        f"{low:g} to {high:g} rolls of cling film for each {per} of floor, for "
        f"{basis.masked.jambs} jambs: end grain drinks stain from below."
    )
    ends = times(CLING_ROLLS_PER_1000_FT2, basis.thousands)
    if not basis.masked.jambs:
        ends = (0.0, 0.0, 0.0)
    return line("jamb-wrap", "rolls of cling film", ends, rule)


def _foam(basis: Basis) -> list[Quantity]:
    """Strips for the gap between door and jamb, so that fumes and mist stay in."""
    doors = sum(one.kind in {"door", "outside"} for one in basis.ground.job.floor.openings)
    if not doors:
        return []
    rule = f"{doors} doors, {basis.said(JAMB_M, 'm')} of gap each: two legs and a head."
    much = doors * JAMB_M
    return [
        line(
            "plugs",
            "foam strip for doors",
            (0.0, much, much),
            rule,
            id_="door-foam",
            unit="m",
            rank=Rank.GUESS,
            source=OUR_GUESS,
            of="foam strip",
        )
    ]


def _plugs(basis: Basis) -> list[Quantity]:
    items = [one for one in basis.ground.job.supplies.masking.items if one.kind == "drain"]
    count = sum(one.count for one in items)
    if not count:
        return []
    rule = f"{count} drains and floor boxes, as told: none may take stain or rinse water."
    return [
        line(
            "plugs",
            "plugs for drains",
            (count, count, count),
            rule,
            id_="drain-plugs",
            of="drain plug",
        )
    ]


def _dams(basis: Basis) -> list[Quantity]:
    dams = basis.masked.dams
    if not dams:
        return []
    rule = (
        f"{dams} outside doors: the slab outside is wetted, film and {TOWELS_PER_DAM} towels lie "
        "in each."
    )
    return [
        line(
            "dams",
            "towels for dams at outside doors",
            times((1, 1, 1.5), dams * TOWELS_PER_DAM),
            rule,
            rank=Rank.GUESS,
            source=f"{PRACTICE}, {OUR_GUESS}",
        )
    ]
