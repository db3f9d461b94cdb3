"""The masking on paper: the drawing, then a row a room with a box to tick on and one off."""

from __future__ import annotations

import math

from farwall.job.office.masking import Masked, masked_of
from farwall.job.office.masking.rules import STAGES
from farwall.papers.masking.drawing import masking_svg
from farwall.papers.masking.measures import run, spread, tall
from farwall.papers.masking.words import SAME_DAY, TAKING_DOWN, hanging, item_told, stands_out
from farwall.papers.office.blocks import (
    Block,
    Facts,
    Head,
    Own,
    Paper,
    Picture,
    Rows,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.ground import PaperGround
from farwall.papers.wall_clock import Units
from farwall.papers.words import names_in
from farwall.phrasebook import speaking

_WIDE_PT, _TALLEST_PT, _LOWEST_PT = 532.0, 400.0, 250.0
_FOR_BOTH_PT, _ROW_PT = 600.0, 16.7
"""What drawing and rows share of the first page; a row of the table."""

_LEAST_M = 0.05
"""What is masked of things is told from here on: less is no foot and no tenth of a metre."""
_MEASURES = "In each room: the height of its film, then the length that is masked."
_RANKS = (
    "Lengths are measured on the plan. Heights, laps and loss are common practice, without a "
    "source; doors of 80 in (2.03 m) and the returns of dams are our guess."
)


def masking_paper(ground: PaperGround) -> Paper:
    """The paper of the day on which the house is masked."""
    with speaking(ground.language, names_in(ground.plan)):
        return _paper(ground, masked_of(ground.ground), ground.units)


def _paper(ground: PaperGround, masked: Masked, units: Units) -> Paper:
    tall_pt = _FOR_BOTH_PT - _ROW_PT * (len(masked.rooms) + 2)
    if tall_pt < _LOWEST_PT:  # the rows go on to a second page in any case
        tall_pt = _TALLEST_PT
    drawn = masking_svg(
        ground.plan, masked, units=units, width=_WIDE_PT, height=min(tall_pt, _TALLEST_PT)
    )
    return Paper(
        title="Masking",
        under="What is filmed, wrapped, dammed and taken out, room by room",
        screen="price/masking",
        blocks=(
            Picture(drawn, 0.55, _MEASURES),
            *(Words(one, "soft") for one in masked.warnings),
            _rooms(masked, units),
            *_things(masked),
            Head("How it is hung"),
            Ticks(hanging(masked.gaps_by)),
            Head("How it comes down"),
            Words(SAME_DAY, "strong"),
            Ticks(TAKING_DOWN),
            Head("What it takes"),
            Facts(_takes(masked, units), 2),
            Words(STAGES[masked.stage].words, "soft"),  # type: ignore[index]
            Words(_RANKS, "soft"),
        ),
    )


def _rooms(masked: Masked, units: Units) -> Rows:
    rows: list[tuple[Text, ...]] = [
        (
            Own(f"{one.number}  {one.name}"), Own(tall(one.film_m, units) if one.film_m else ""),
            Own(run(one.wall_m, units)), Own(str(one.jambs or "")), Own(stands_out(one, units)),
        )
        for one in masked.rooms
    ]  # fmt: skip
    things_m = masked.wall_m - math.fsum(one.wall_m for one in masked.rooms)
    if things_m > _LEAST_M:
        what = "things listed below"
        rows.append((what, Own(""), Own(run(things_m, units)), Own(""), Own("")))
    rows.append(
        ("In all", Own(""), Own(run(masked.wall_m, units)), Own(str(masked.jambs)), _dams(masked))
    )
    return Rows(
        ("no. and room", "film up to", "masked", "frames", "beside the walls"), tuple(rows),
        widths=(3.0, 1.1, 1.0, 0.9, 3.2), right=(1, 2, 3), tick=True, tick_head="hung",
        tick_end="down", strong_last=True,
    )  # fmt: skip


def _dams(masked: Masked) -> str:
    many = "dam at 1 outside door" if masked.dams == 1 else f"dams at {masked.dams} outside doors"
    return many if masked.dams else ""


def _things(masked: Masked) -> tuple[Block, ...]:
    if not masked.items:
        return ()
    names = {one.room: one.name for one in masked.rooms}

    def told(one_of: object) -> Text:
        return item_told(one_of)  # type: ignore[arg-type]

    rows = tuple(
        (told(one), Own(names.get(one.room, one.room)), Own(one.note)) for one in masked.items
    )
    return (
        Head("Taken out, plugged, wrapped"),
        Rows(
            ("what", "where", "note"),
            rows,
            widths=(4, 2, 2),
            tick=True,
            tick_head="done",
            tick_end="back",
        ),
    )


_GAPS = {"tape": "gaps of doors, taped", "foam": "gaps of doors, foam strip"}


def _takes(masked: Masked, units: Units) -> tuple[tuple[Text, Text], ...]:
    films = tuple(
        (f"film {tall(high, units)} tall", Own(run(long, units)))
        for high, long in masked.film_lengths_m
    )
    tape = next((one for one in masked.figures if one.name == "tape"), None)
    least = f"{run(tape.low, units).split()[0]}–" if tape and tape.low < tape.likely else ""
    rest: tuple[tuple[Text, Text], ...] = (
        ("film in all", Own(spread(masked.film_m2, units))),
        ("tape", Own(f"{least}{run(masked.tape_m, units)}")),
        ("cling film around jambs", Own(run(masked.wrap_m, units))),
        ("jamb feet with putty", Own(str(masked.jamb_feet))),
        (_GAPS[masked.gaps_by], Own(run(masked.gap_m, units))),
        ("dams", Own(run(masked.dam_m, units))),
    )
    paper = (("paper, 12 in", Own(run(masked.paper_m, units))),) if masked.paper_m else ()
    return (*films, *paper, *(one for one in rest if one[1] != Own("0")))
