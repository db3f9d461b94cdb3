"""How the floor stands when nobody sprays: which stage it is in, whether it may be walked on.

By the log where something was entered, else by the plan's clocks and its course.
"""

from __future__ import annotations

from typing import Literal

from farwall.facts.plan import Clock
from farwall.job.moments import Moment
from farwall.nouns import dataclass
from farwall.web.pages.course import Course, Piece
from farwall.web.pages.said_clock import SaidClock
from farwall.web.pages.went import Went
from farwall.web.words import said

Tread = Literal["", "off", "maybe", "walk"]
"""Whether one may walk there: nothing is said · keep off · perhaps, look first · yes."""
_AHEAD_MIN = 45.0
_AFTER = frozenset({"rinse", "seal", "hand-over"})


@dataclass(frozen=True)
class Standing:
    """stage: its words · tread: over all floor · told: the same on the floor · lines: sentences."""

    stage: str
    tread: Tread
    told: str
    lines: tuple[str, ...] = ()


def standing(course: Course, moment: Moment | None, went: Went | None) -> Standing | None:
    """How the floor stands at a moment; None while somebody sprays or is about to."""
    if moment is None:
        return None
    minute = moment.minute
    if moment.field is not None:
        first = course.coats[0].from_min
        return _before(course, minute) if minute < first - _AHEAD_MIN else None
    later = [p for p in course.pieces if p.key in _AFTER and p.from_min <= minute]
    if later:
        return _cleaned(course, later[-1], minute)
    return _dries(course, moment, went)


def _stage(piece: Piece) -> str:
    name = piece_name(piece)
    return name[:1].upper() + name[1:]


def piece_name(piece: Piece) -> str:
    """What a piece of work is called."""
    return said(f"piece-{piece.key}", n=piece.number)


def _before(course: Course, minute: float) -> Standing:
    at_hand = [
        one for one in course.pieces
        if one.kind != "sprayed" and one.from_min <= minute <= one.to_min
    ]  # fmt: skip
    if not at_hand:
        return Standing(said("stage-before"), "", "", (said("stage-before-line"),))
    piece = at_hand[-1]
    key = "stage-done-line" if piece.kind == "done" else "stage-planned-line"
    return Standing(_stage(piece), "", "", (said(key),))


def _cleaned(course: Course, piece: Piece, minute: float) -> Standing:
    """After the last coat has dried: rinsed, sealed, handed over."""
    over = minute >= piece.to_min
    if piece.key == "hand-over":
        return Standing(_stage(piece), "walk", said("floor-sealed"))
    if piece.key == "rinse":
        if not over:
            lines = (said("tread-rinse-line"),)
            return Standing(_stage(piece), "", said("floor-rinsing"), lines)
        wait = _wait(course, piece.to_min)
        return Standing(said("stage-dry-down"), "walk", said("floor-rinsed"),
                        (*wait, said("tread-down-line")))  # fmt: skip
    if not over:
        lines = (said("tread-sealing-line"),)
        return Standing(_stage(piece), "off", said("floor-sealing"), lines)
    told = [one for one in course.waits if abs(one.begins_min - piece.to_min) < 1]
    clock = told[0].clock if told else None
    tread = _tread(clock, minute - piece.to_min)
    return Standing(said("stage-sealed", n=piece.number), tread, said("floor-sealed"),
                    (*_wait(course, piece.to_min), said(f"tread-{tread}-sealed")))  # fmt: skip


def _dries(course: Course, moment: Moment, went: Went | None) -> Standing | None:
    """After a coat: wet, perhaps dry, dry by its clock or as it was looked at."""
    coat = next((p for p in course.coats if p.fields[0].coat == moment.coat), None)
    if coat is None:
        return None
    ended = [one.clock for one in course.waits if one.begins_min == coat.to_min]
    clock = next((one for one in ended if one.coat == moment.coat), None)
    tread, line = _tread(clock, moment.minute - coat.to_min), ""
    looked = _looked(coat, moment.minute, went)
    if looked is not None:
        tread = "walk" if looked else "maybe"
        line = said("tread-seen-dry" if looked else "tread-seen-damp")
    last = coat is course.coats[-1]
    stage = said("now-all-sprayed" if last else "now-coat-dries", n=coat.number)
    if tread == "walk":
        stage = said("stage-dry", n=coat.number)
    word = said(f"floor-{tread}") if tread else ""
    waits = () if clock is None else _wait(course, coat.to_min)
    return Standing(stage, tread, word, (*waits, line or said(f"tread-{tread or 'off'}-line")))


def _tread(clock: Clock | None, minutes: float) -> Tread:
    if clock is None or clock.likely_min is None or minutes < clock.low_min:
        return "off"
    return "walk" if clock.high_min is not None and minutes >= clock.high_min else "maybe"


def _looked(coat: Piece, minute: float, went: Went | None) -> bool | None:
    """What the last look after a coat found: dry or not; None where nobody looked."""
    if went is None:
        return None
    looks = [
        one for one in went.story.of("dry", "still-damp")
        if coat.to_min <= one.at_min <= minute and one.text("clock") in {"", "recoat", "neutralise"}
    ]  # fmt: skip
    return looks[-1].word == "dry" if looks else None


def clock_name(clock: Clock) -> str:
    """What a wait is called, in the page's language where it is one of ours."""
    key = f"clock-{clock.name.replace(' ', '-')}"
    return said(key) if key in CLOCKS else clock.name


CLOCKS = frozenset({
    "clock-dry-to-recoat", "clock-dry-to-neutralise", "clock-dwell", "clock-open-time",
    "clock-dry-down-before-sealing", "clock-next-coat-of-sealer", "clock-traffic-in-shoes",
})  # fmt: skip


def wait_told(clock: Clock, begins: float, wall: SaidClock) -> str:
    """A wait as a sentence: from when to when, and the likeliest."""
    name = clock_name(clock)
    name = name[:1].upper() + name[1:]
    if clock.likely_min is None:
        return said("wait-never", name=name)
    low, likely = wall.time(begins + clock.low_min), wall.time(begins + clock.likely_min)
    if clock.high_min is None:
        return said("wait-open", name=name, low=low, likely=likely)
    high = wall.time(begins + clock.high_min)
    return said("wait", name=name, low=low, likely=likely, high=high)


def _wait(course: Course, begins: float) -> tuple[str, ...]:
    found = [one for one in course.waits if abs(one.begins_min - begins) < 1]
    return tuple(wait_told(one.clock, one.begins_min, course.clock) for one in found[:2])
