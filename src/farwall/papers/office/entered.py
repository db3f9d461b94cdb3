"""What the log holds, as cells of a paper: when, where, who, how much; in the job's units."""

from __future__ import annotations

from farwall.job.story.noun import Happened
from farwall.papers.office.blocks import Own, Text
from farwall.papers.office.days_said import dated
from farwall.papers.office.ground import PaperGround
from farwall.papers.wall_clock import Units
from farwall.papers.words import volume
from farwall.units import f_from_c

BLANK: Text = Own("")
_WEEK_MIN = 6 * 24 * 60.0


def entered(ground: PaperGround, *words: str) -> tuple[Happened, ...]:
    """Entries of these words in order, struck ones left out; none where there is no log."""
    story = ground.ground.story
    return () if story is None else story.of(*words)


def when(ground: PaperGround, one: Happened) -> Text:
    """By the clock of the plan, with the day where it is another; weeks later the date alone."""
    if abs(one.at_min) > _WEEK_MIN:
        return Own(dated(ground.clock.at(one.at_min).date(), ground.units, ground.language))
    return Own(ground.clock.time(one.at_min))


def room_of(ground: PaperGround, room: str) -> Text:
    """What people call a room; the whole floor where none is named."""
    if not room:
        return "all rooms"
    known = ground.job.floor.room_by_id.get(room)
    return Own(room if known is None else known.label)


def own(one: Happened, key: str) -> Text:
    """A text of the entry as it was written, nothing where there is none."""
    return Own(one.text(key))


def figure(one: Happened, key: str) -> Text:
    """A number of the entry."""
    value = one.number(key)
    return Own("" if value is None else f"{value:g}")


def litres(value: float | None, units: Units) -> Text:
    """Gallons or litres, nothing where it is not known."""
    return Own("" if value is None else volume(value, units, both=False))


def degrees(value_c: float | None, units: Units) -> Text:
    """`68 °F` or `20 °C`, nothing where it is not known."""
    if value_c is None:
        return BLANK
    return Own(f"{f_from_c(value_c):.0f} °F" if units == "us" else f"{value_c:.0f} °C")


def kelvin(value_k: float | None, units: Units) -> Text:
    """A difference of two temperatures."""
    if value_k is None:
        return BLANK
    return Own(f"{value_k * 1.8:.0f} °F" if units == "us" else f"{value_k:.1f} °C")
