"""What masks the house, said from what is masked: walls, frames, doors, dams, things. Pure."""

from __future__ import annotations

from dataclasses import replace
from math import ceil, fsum

from farwall.evidence import Rank
from farwall.facts.default_table import OUR_GUESS, PRACTICE
from farwall.facts.quantities import Quantity, Share
from farwall.job.office.masking import FILM_M, MaskFigure
from farwall.job.office.quantities.basis import Basis, line, times
from farwall.job.office.quantities.practice import (
    CLING_ROLLS_PER_1000_FT2,
    PUTTY_KG_PER_FOOT,
    TOWELS_PER_DAM,
)
from farwall.units import M_PER_FT, M_PER_IN

_UPPER_EDGE_M = 3 * M_PER_FT
"""The upper edge of film is taped at so many points: every yard [common-practice]."""


def mask_lines(basis: Basis) -> tuple[Quantity, ...]:
    """Tape and film, then paper, wrap, putty, foam, plugs and dams; only what there is any of."""
    made = (_tape, _film, _paper, _wrap, _putty, _foam, _plugs, _dams)
    return tuple(one for one in (make(basis) for make in made) if one is not None)


def strips(film_m: float) -> int:
    """How many strips of film, 48 in each at most, stand one above the other."""
    return max(1, ceil(film_m / FILM_M - 0.01))


def _figure(basis: Basis, name: str) -> MaskFigure | None:
    return next((one for one in basis.masked.figures if one.name == name), None)


def _tape(basis: Basis) -> Quantity | None:
    masked, figure = basis.masked, _figure(basis, "tape")
    if masked.tape_m <= 0:
        return None
    edge, gaps = basis.said(masked.wall_m, "m"), basis.said(masked.gap_m, "m")
    step = basis.said(_UPPER_EDGE_M, "m")
    strip = (
        f"A strip along the foot of {edge} of edge, on the wall and never on the slab; joins "
        f"{masked.joins}, the upper edge every {step}, {gaps} of gaps at doors."
        if masked.gaps_by == "tape"
        else f"A strip along the foot of {edge} of edge, on the wall and never on the slab; joins "
        f"{masked.joins}, the upper edge every {step}."
    )
    rule = " ".join((strip, "A tenth of a roll is lost."))
    ends = (masked.tape_m,) * 3 if figure is None else (figure.low, figure.likely, figure.high)
    made = line(
        "tape", "tape", ends, rule, unit="m", rank=Rank.GUESS, source=f"{PRACTICE}, {OUR_GUESS}"
    )
    rooms = [Share(*(one.tape_m,) * 4, room=one.room) for one in masked.rooms]
    rest = masked.tape_m - fsum(one.ready for one in rooms)
    if rest > 1e-9:
        rooms.append(Share(rest, rest, rest, rest, of="doors and things"))
    return replace(made, shares=tuple(rooms))


def _film(basis: Basis) -> Quantity | None:
    """By height: a wall masked higher than 48 in takes a second strip above the first."""
    masked, figure = basis.masked, _figure(basis, "film")
    hung = [(tall, long * strips(tall)) for tall, long in masked.film_lengths_m]
    much = fsum(long for _, long in hung) + masked.dam_m
    if much <= 0:
        return None
    rule = (
        f"{basis.said(fsum(long for _, long in masked.film_lengths_m), 'm')} of it, laps of "
        f"{_short(basis, 6)} at joins and a tenth lost; above {_short(basis, 48)} a second strip. "
        f"Dams {basis.said(masked.dam_m, 'm')}."
    )
    low = much if figure is None or not figure.likely else much * figure.low / figure.likely
    made = line("film", "masking film", (low, much, much), rule, unit="m")
    shares = [Share(*(long,) * 4, of=_tall(basis, tall)) for tall, long in hung]
    if masked.dam_m:
        shares.append(Share(*(masked.dam_m,) * 4, of="film in dams"))
    return replace(made, shares=tuple(shares))


def _short(basis: Basis, inches: int) -> str:
    """A short length: inches, or centimetres."""
    return f"{inches} in" if basis.units == "us" else f"{inches * M_PER_IN * 100:.0f} cm"


def _tall(basis: Basis, film_m: float) -> str:
    return f"{_short(basis, round(film_m / M_PER_IN))} tall"


def _paper(basis: Basis) -> Quantity | None:
    """For what is no taller than a strip of paper."""
    much = basis.masked.paper_m
    if much <= 0:
        return None
    rule = f"{basis.said(much, 'm')} of edge that is masked no taller than {_short(basis, 12)}."
    return line("paper", "masking paper", times((1, 1, 1), much), rule, unit="m")


def _wrap(basis: Basis) -> Quantity | None:
    masked = basis.masked
    if not masked.jambs:
        return None
    low, _, high = CLING_ROLLS_PER_1000_FT2
    per = "1,000 ft²" if basis.units == "us" else "93 m²"
    rule = (
        f"{low:g} to {high:g} rolls of cling film for each {per} of floor; sides of frames "
        f"{masked.jambs}, jambs and heads {basis.said(masked.wrap_m, 'm')}."
    )
    ends = times(CLING_ROLLS_PER_1000_FT2, basis.thousands)
    return line("jamb-wrap", "rolls of cling film", ends, rule)


def _putty(basis: Basis) -> Quantity | None:
    """A rope of it around the foot of each jamb."""
    feet = basis.masked.jamb_feet
    if not feet:
        return None
    rule = (
        f"A rope of it around the foot of each of {feet} jambs: end grain drinks stain from below."
    )
    return line(
        "other", "removable putty", times(PUTTY_KG_PER_FOOT, feet), rule, id_="jamb-putty",
        unit="kg", rank=Rank.GUESS, source=OUR_GUESS, of="removable putty",
    )  # fmt: skip


def _foam(basis: Basis) -> Quantity | None:
    """Strips for the gap between door and frame, where they were chosen in place of tape."""
    masked = basis.masked
    if masked.gap_m <= 0 or masked.gaps_by != "foam":
        return None
    rule = (
        f"Doors {masked.doors}, gaps {basis.said(masked.gap_m, 'm')}, both sides and the head: "
        "pressed in, as chosen, in place of tape."
    )
    return line(
        "plugs", "foam strip for doors", times((1, 1, 1), masked.gap_m), rule,
        id_="door-foam", unit="m", rank=Rank.GUESS, source=OUR_GUESS, of="foam strip",
    )  # fmt: skip


def _plugs(basis: Basis) -> Quantity | None:
    drains = [one for one in basis.masked.items if one.kind == "drain" and not one.take_out]
    count = sum(one.count for one in drains)
    if not count:
        return None
    rule = f"Drains and floor boxes {count}, as told: none may take stain or rinse water."
    ends = times((1, 1, 1), count)
    return line("plugs", "plugs for drains", ends, rule, id_="drain-plugs", of="drain plug")


def _dams(basis: Basis) -> Quantity | None:
    dams = basis.masked.dams
    if not dams:
        return None
    rule = (
        f"Outside doors {dams}: the slab outside is wetted, film and {TOWELS_PER_DAM} towels lie "
        "in each."
    )
    return line(
        "dams", "towels for dams at outside doors", times((1, 1, 1.5), dams * TOWELS_PER_DAM),
        rule, rank=Rank.GUESS, source=f"{PRACTICE}, {OUR_GUESS}",
    )  # fmt: skip
