"""Cut list and stop lines: where staining may end unseen, what marks it, which cuts are made."""

from __future__ import annotations

from farwall.facts.numbered import numbered
from farwall.facts.plan import Field
from farwall.papers.office.blocks import Block, Head, Own, Paper, Picture, Rows, Sign, Text, Words
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.stop_drawing import stop_svg
from farwall.papers.office.stop_lines import Cut, Stop, cuts_of, stops_of
from farwall.papers.run_sheet.margins import paper_for
from farwall.papers.words import length, short_room_names
from farwall.phrasebook import told

_AT = {"door": "closed leaf", "cased": "mid-frame", "outside": "sill", "saw cut": "the cut"}
_MARKED = {
    "door": "Closed leaf: tape on both jambs, in line with the leaf when it is shut.",
    "cased": "Mid-frame: tape on both jambs at half their depth; a board held upright stops the "
    "spray.",
    "outside": "Sill: film on its metal, a towel dam outside.",
    "saw cut": "The cut: vacuumed clean, it dams the stain by itself.",
}
"""What marks a stop line: tape never lies on the slab [common practice, no source]."""
_HIGH = 0.4


def cut_list(ground: PaperGround) -> Paper:
    """A drawing with lettered stop lines, the list of them, and saw cuts with their day."""
    stops, cuts = stops_of(ground.plan), cuts_of(ground)
    size = paper_for(ground.units, ground.job.wishes.paper)
    svg = stop_svg(
        ground.plan, stops, cuts, units=ground.units, width=size.inner_width,
        height=size.inner_height * _HIGH,
    )  # fmt: skip
    return Paper(
        title="Cut list and stop lines",
        under="Where staining may end unseen; nowhere else",
        blocks=(
            Picture(svg, _HIGH, "Stop lines by letter, saw cuts by number"),
            Head("Stop lines"),
            *_stops(ground, stops),
            *_cuts(ground, cuts),
        ),
    )  # fmt: skip


def _stops(ground: PaperGround, stops: tuple[Stop, ...]) -> tuple[Block, ...]:
    if not stops:
        return (Words("None: the whole floor is sprayed in one go, to the way out."),)
    rows = tuple(_stop(ground, one) for one in stops)
    kinds = {one.line.kind for one in stops}
    return (
        Rows(
            ("", "where", "length", "lies at", "ends there first", "goes on"), rows,
            (0.35, 2.2, 0.8, 1.1, 1.65, 1.65), tick=True,
        ),
        *(Words(told_of) for kind, told_of in _MARKED.items() if kind in kinds),
        Words(
            "Marked the evening before, ticked when it is. Tape stands on jamb, wall or base, "
            "never on the slab: it leaves a ghost.",
            "soft",
        ),
    )  # fmt: skip


def _stop(ground: PaperGround, one: Stop) -> tuple[Text, ...]:
    return (
        Own(one.mark), _where(ground, one.rooms), Own(_long(ground, one.length_m)),
        _AT[one.line.kind], _ends(ground, one.first), _begins(ground, one.then),
    )  # fmt: skip


def _where(ground: PaperGround, rooms: tuple[str, ...]) -> Text:
    return Own(" – ".join(short_room_names(ground.plan, rooms)))


def _long(ground: PaperGround, length_m: float) -> str:
    return length(length_m, ground.units, both=False)


def _ends(ground: PaperGround, field: Field) -> Text:
    return Own(f"{_field(ground, field)}, {ground.clock.time(field.end_min)}")


def _begins(ground: PaperGround, field: Field | None) -> Text:
    if field is None:
        return Own("–")
    return Own(f"{_field(ground, field)}, {ground.clock.time(field.start_min)}")


def _field(ground: PaperGround, field: Field) -> str:
    return told(f"field {numbered(ground.plan, field.id)}")


def _cuts(ground: PaperGround, cuts: tuple[Cut, ...]) -> tuple[Block, ...]:
    if not cuts:
        return (Head("Saw cuts"), Words("None on this floor, and none that the plan asks for."))
    rows = tuple(
        (Own(one.mark), _where(ground, one.rooms), Own(_long(ground, one.length_m)), _use(one),
         _by(ground, one))
        for one in cuts
    )  # fmt: skip
    return (
        Head("Saw cuts"),
        Rows(("", "where", "length", "for", "to be done by"), rows, (0.35, 1.8, 0.9, 2.6, 2.0),
             tick=True),
        Words(
            "A cut that ends a colour is made before the floor is cleaned and dams the stain; one "
            "for the pattern alone, in a floor of one colour, after the first coat of sealer. "
            "Not deeper than ⅛ in (3 mm) where it is not grouted; its dust is free lime and "
            "discolours: vacuum it at once.",
            "soft",
        ),
        Words(
            "Silica dust: water on the blade, or shroud and HEPA vacuum (29 CFR 1926.1153). No "
            "cut where pipes or heating lie in the slab, unless their depth is known.",
            "danger",
        ),
        *((Sign(("finisher", "owner or builder", "date"),
                "The cuts that are not there yet are agreed:"),)
          if any(not one.there for one in cuts) else ()),
    )  # fmt: skip


def _use(one: Cut) -> Text:
    if not one.there:
        return "to be made: the field cannot be sprayed whole without it"
    return "is there; colour ends at it" if one.used else "is there; colour goes across it"


def _by(ground: PaperGround, one: Cut) -> Text:
    if one.there:
        return "cleaned out before the first stroke"
    assert one.for_field is not None
    return f"before the floor is cleaned, and so before {ground.clock.day()}"
