"""Punch list and acceptance: room by room, by daylight and by lamp, and the words of acceptance."""

from __future__ import annotations

from farwall.job.colour.marks import Judged, blocks_sealing, judged_marks
from farwall.papers.office.blocks import Blanks, Block, Head, Own, Paper, Rows, Sign, Text, Words
from farwall.papers.office.entered import entered, room_of
from farwall.papers.office.ground import PaperGround
from farwall.papers.svg import plain
from farwall.phrasebook import told
from farwall.units import feet_and_inches

FAULTS = (
    "holiday: a missed spot in the sealer",
    "haze, white or cloudy",
    "lint or hair of the roller",
    "toe-kick or corner missed",
    "overspray on base, jamb or tub",
    "joint or saw cut: milky or bare",
    "scuff or scratch",
    "tape, film or putty left",
    "lap of the sealer in low light",
    "metal, glass or drain not cleaned",
)
"""The usual faults of the trade at hand-over [common practice, no source]."""


def punch_list(ground: PaperGround) -> Paper:
    """Faults by number, a line for every room, what was known before, and the signatures."""
    numbered = [(f"{n}", one) for n, one in enumerate(FAULTS, 1)]
    half = (len(numbered) + 1) // 2
    return Paper(
        title="Punch list and acceptance",
        under="Walked with the signed sample and the photos in hand",
        blocks=(
            Rows(
                ("", "looked for", "", ""),
                tuple(
                    (Own(left[0]), left[1], Own(right[0]), right[1])
                    for left, right in zip(numbered[:half], numbered[half:], strict=True)
                ),
                (0.2, 2.0, 0.2, 2.0),
            ),
            Words(
                "Twice: by daylight, low towards the windows, and by the house's own lamps in the "
                "evening. Write the number of the fault and the place; mend it on the same visit.",
                "soft",
            ),
            Head("Room by room"),
            Rows(
                ("which room", "day", "lamp", "number and place", "mended"),
                tuple((Own(room.label), Own(""), Own(""), _seen(ground, room.id), Own(""))
                      for room in ground.job.floor.rooms),
                (2.4, 0.55, 0.8, 3.1, 0.9), tick=True, blank=2, pen="ruled",
            ),
            *_unnamed(ground),
            *_known(ground),
            Blanks(("still to be done, by whom, until when",), columns=1, lines=2),
            Words(
                "Variegated colour, trowel arcs and the natural range of the signed sample are "
                "the floor and no faults of it. This list does not change what law or contract "
                "give to either side.",
                "soft",
            ),
            Sign(words="Accepted with the list above:"),
        ),
    )  # fmt: skip


def _seen(ground: PaperGround, room: str) -> Text:
    """Drips that the log has in the room, and marks that persons confirmed: looked at first."""
    drips = [one for one in entered(ground, "drip") if one.text("room") == room]
    parts = []
    if drips:
        places = "; ".join(plain(one.text("where")) for one in drips)
        parts.append(f"{told('drip in the log:')} {places}")
    parts += [
        f"{told(one.kind)}{_at(one, ground)}" for one in _confirmed(ground) if one.room == room
    ]
    return Own("; ".join(parts))


def _confirmed(ground: PaperGround) -> tuple[Judged, ...]:
    """Marks on the floor that a person confirmed and nobody mended."""
    every = judged_marks(entered(ground, "mark-judged", "mark-mended"))
    return tuple(one for one in every if one.stands)


def _at(one: Judged, ground: PaperGround) -> str:
    """Where on the plan, in metres or feet from its zero."""
    if one.at is None:
        return ""
    x, y = (
        feet_and_inches(value) if ground.units == "us" else f"{value:.2f} m" for value in one.at
    )
    return f" x {x}, y {y}"


def _unnamed(ground: PaperGround) -> tuple[Block, ...]:
    """Nothing is sealed over a mark that nobody can name."""
    if not blocks_sealing(judged_marks(entered(ground, "mark-judged", "mark-mended"))):
        return ()
    return (Words("A mark that nobody could name stands: do not seal over it.", "danger"),)


def _known(ground: PaperGround) -> tuple[Block, ...]:
    """Patches and cracks that were shown and told before the first stroke."""
    rows: list[tuple[Text, ...]] = [
        (room_of(ground, one.room), Own(f"{told(one.kind)} {plain(one.id)}"), one.disclosure)
        for one in ground.plan.patches
        if one.disclosure
    ]
    if ground.job.survey.cracks_accepted:
        rows.append(("all rooms", "cracks", "Accepted before the work: every crack reads darker."))
    if not rows:
        return ()
    return (
        Head("Known before, and no fault"),
        Rows(("which room", "what", "as it was told"), tuple(rows), (1.2, 1.4, 4.0)),
    )
