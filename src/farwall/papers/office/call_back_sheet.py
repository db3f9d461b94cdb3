"""The sheet for a call after hand-over: the questions, the floor's own records, causes, the kit."""

from __future__ import annotations

from farwall.job.call_back.asked import QUESTIONS
from farwall.job.call_back.causes import CAUSES
from farwall.job.call_back.records import RoomRecords
from farwall.job.call_back.say import NO_VERDICT
from farwall.job.call_back.triage import KIT
from farwall.job.rinses import Rinses
from farwall.papers.office.blocks import (
    Blanks,
    Block,
    Head,
    Own,
    Paper,
    Rows,
    Sign,
    Text,
    Ticks,
    Words,
)
from farwall.papers.office.entered import BLANK, entered, kelvin
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.seal_record import air_of
from farwall.phrasebook import told


def call_back_sheet(ground: PaperGround) -> Paper:
    """The same questions as on the screen, to be ringed while one is on the telephone."""
    return Paper(
        title="Call-back",
        under="Asked on the telephone, looked at on the visit, kept with the job",
        screen="call-back",
        blocks=(
            Blanks(("called on, by", "telephone", "visit on"), columns=3),
            Head("Ask, and ring what fits; what nobody knows stays open"),
            Rows(
                ("question", "answer"),
                tuple((one.words, _answers(ground, one.key, one.answers)) for one in QUESTIONS),
                (2.2, 4.4),
            ),
            *_records(ground),
            Head("Take along"),
            Ticks(KIT, columns=2),
            Blanks(("found on the visit", "done, or agreed"), columns=1, lines=2),
            Sign(("finisher", "owner", "date")),
            Head("What it often is"),
            Rows(
                ("cause", "looks like", "first on the visit", "whose"),
                tuple((one.what, _looks(one.looks), one.do, one.whose) for one in CAUSES),
                (1.7, 1.5, 3.4, 0.9),
            ),
            Words(NO_VERDICT, "soft"),
        ),
    )  # fmt: skip


def _answers(ground: PaperGround, key: str, answers: tuple[str, ...]) -> Text:
    if key == "room":
        return Own("  ·  ".join(room.label for room in ground.job.floor.rooms))
    if not answers:
        return Own("")
    return Own("  ·  ".join(told(one) for one in answers))


def _looks(looks: frozenset[str]) -> Text:
    return Own(", ".join(told(one) for one in next(iter(QUESTIONS)).answers if one in looks))


def _records(ground: PaperGround) -> tuple[Block, ...]:
    """What the log has of each room; nothing where there is no log of washing or sealing."""
    story = ground.ground.story
    if story is None or not entered(ground, "rinsed", "sealed"):
        return (Words(
            "The log of this floor has no pH, rag or sealing record: that speaks neither for nor "
            "against anything.", "soft",
        ),)  # fmt: skip
    rinses = Rinses(ground.job, ground.plan, story)
    rows = tuple(_row(ground, rinses, room.id) for room in ground.job.floor.rooms)
    return (
        Head("What the log has of each room"),
        Rows(
            ("which room", "rinses", "last pH", "rag", "over the dew point", "sealer, stain"),
            rows, (1.9, 0.7, 0.8, 0.7, 1.2, 3.2),
        ),
    )  # fmt: skip


def _row(ground: PaperGround, rinses: Rinses, room: str) -> tuple[Text, ...]:
    assert ground.ground.story is not None
    rounds = rinses.rounds(room)
    signs = {
        one.kind: one
        for one in RoomRecords(ground.job, ground.plan, ground.ground.story, room).signs()
    }
    margins = [
        margin
        for one in entered(ground, "sealed")
        if one.text("room") in {"", room}
        and (margin := air_of(ground, one, room=room).margin_k) is not None
    ]
    laid = [told(signs[kind].told) for kind in ("sealer", "stain") if kind in signs]
    return (
        Own(ground.job.floor.room_by_id[room].label), Own(str(len(rounds)) if rounds else ""),
        Own(", ".join(f"{one:g}" for one in rounds[-1].phs) if rounds else ""),
        (rounds[-1].rag or BLANK) if rounds else BLANK,
        kelvin(min(margins), ground.units) if margins else BLANK, Own(" ".join(laid)),
    )  # fmt: skip
