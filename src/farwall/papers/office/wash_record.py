"""The record of neutralising, pH and rag, room by room: what the log holds, and blank lines.

The wash-day sheet is worked from on the day; this one is what is kept: two readings for each
500 ft² after the last rinse, and which of them passed.
"""

from __future__ import annotations

from farwall.acid.rinse_belief import Round
from farwall.job.rinses import Rinses
from farwall.job.story.noun import Happened, Story
from farwall.papers.office.blocks import Blanks, Facts, Head, Own, Paper, Rows, Text, Words
from farwall.papers.office.entered import BLANK, entered, figure, litres, own, room_of, when
from farwall.papers.office.ground import PaperGround
from farwall.papers.svg import plain
from farwall.papers.words import area

_ROOMS = (
    "which room",
    "floor",
    "readings wanted",
    "rinses",
    "pH after the last",
    "rag",
    "next day, dry",
)
_DONE = ("when", "where", "what was done", "with", "amount", "by")
_LINES = 10


def wash_record(ground: PaperGround) -> Paper:
    """What each room read after its last rinse, then everything that was entered, in order."""
    story = ground.ground.story
    rinses = Rinses(ground.job, ground.plan, story or Story(ground.plan.starts_at))
    done = entered(ground, "neutralised", "scrubbed", "rinsed", "vacuumed")
    return Paper(
        title="Neutralise, pH and rag",
        under="What each room read before anything was laid on it, kept with the job",
        screen="log",
        blocks=(
            Facts(_wanted(ground, rinses), columns=2),
            Head("By room, after the last rinse"),
            Rows(
                _ROOMS, tuple(_room(ground, rinses, room) for room in rinses.areas),
                (2.0, 0.9, 1.1, 0.9, 1.2, 0.8, 1.1), pen="roomy",
            ),
            Words(
                "Two readings for each 500 ft² (46 m²), right after the final rinse, before it "
                "drains (ASTM D4262). A white rag firmly over several ft² (half a m²) of each "
                "room; photograph it. Dirty rag or low pH: another scrub, not only another rinse.",
                "soft",
            ),
            Head("Neutralised, scrubbed, rinsed"),
            Rows(
                _DONE, tuple(_did(ground, one) for one in done), (1.35, 1.75, 1.4, 1.6, 1.0, 1.3),
                blank=max(_LINES - len(done) - len(rinses.areas) // 4, 3), pen="ruled",
            ),
            Blanks(("rag photographs, where kept", "passed by", "date"), columns=3),
        ),
    )  # fmt: skip


def _wanted(ground: PaperGround, rinses: Rinses) -> tuple[tuple[Text, Text], ...]:
    wanted = rinses.wanted
    low, high = wanted.window
    tap = "____" if wanted.tap_ph is None else f"{wanted.tap_ph:g}"
    bare = "____" if wanted.unstained_ph is None else f"{wanted.unstained_ph:g}"
    base = ground.job.washing.base
    return (
        ("passes at pH", Own(f"{low:g} – {high:g}")),
        ("readings in all, at least", Own(str(sum(rinses.readings.values())))),
        ("tap water reads", Own(tap)), ("an unstained patch reads", Own(bare)),
        ("neutraliser", base or Own("____________")), ("rag", "clean, in every room"),
    )  # fmt: skip


def _room(ground: PaperGround, rinses: Rinses, room: str) -> tuple[Text, ...]:
    rounds = rinses.rounds(room)
    return (
        room_of(ground, room), Own(area(rinses.areas[room], ground.units)),
        Own(str(rinses.readings[room])), Own(str(rinses.counts(room)[-1]) if rounds else ""),
        _phs(rounds), (rounds[-1].rag or BLANK) if rounds else BLANK, _powder(rounds),
    )  # fmt: skip


def _phs(rounds: tuple[Round, ...]) -> Text:
    return Own(", ".join(f"{one:g}" for one in rounds[-1].phs)) if rounds else BLANK


def _powder(rounds: tuple[Round, ...]) -> Text:
    found = rounds[-1].powder if rounds else None
    return BLANK if found is None else "powder" if found else "no powder"


def _did(ground: PaperGround, one: Happened) -> tuple[Text, ...]:
    return (
        when(ground, one), room_of(ground, one.text("room")), _what(one), _with(one),
        litres(one.number("litres"), ground.units), Own(plain(one.who)),
    )  # fmt: skip


def _what(one: Happened) -> Text:
    number = one.number("round")
    if one.word == "rinsed" and number is not None:
        return f"rinse {number:g}"
    return one.word


def _with(one: Happened) -> Text:
    """The base of neutralising, passes of a scrub, pH and rag of a rinse."""
    if one.word == "neutralised":
        return own(one, "base")
    if one.word == "scrubbed":
        return figure(one, "passes")
    found = one.number("ph")
    ph = "" if found is None else f"pH {found:g}"
    rag = one.text("rag")
    if not rag:
        return Own(ph)
    return f"{ph}, rag {rag}" if ph else f"rag {rag}"
