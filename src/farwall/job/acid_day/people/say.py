"""The people of an acid day in lines for a terminal."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import datetime

from farwall.acid.may import VERBS
from farwall.evidence import rank_words
from farwall.facts.numbered import by_number
from farwall.job.acid_day.people.noun import KeepOut, People, Person
from farwall.units import clock_words

EYEWASH = "Reached within 10 s, runs for 15 minutes, tried before a jug is opened."
ADVISES = (
    "It informs and decides nothing: fit tester, doctor and licensed hygienist say who may wear "
    "what."
)


def people_said(part: People, *, us: bool, coats: Sequence[str] = ()) -> tuple[str, ...]:
    """The part in lines: what stops, each person, the looks, who stays out, first aid, numbers.

    us: hours by am and pm. coats: ids in the order of the day, by whose place they are told.
    """
    return tuple(_lines(part, coats, us=us))


def _lines(part: People, coats: Sequence[str], *, us: bool) -> Iterator[str]:
    yield from (f"NO: {one}" for one in part.stops)
    for person in part.people:
        yield from _person(person, us=us)
    yield from _looks(part, coats, us=us)
    if part.eyewash_at:
        yield f"Eyewash: {part.eyewash_at}. {EYEWASH}"
    if part.keep_out is not None:
        yield keep_out_said(part.keep_out, us=us)
    for aid in part.first_aid:
        yield f"{aid.harm}: {aid.do}"
    for number in part.numbers:
        if number.value:
            yield f"{number.what}: {number.value}"
    yield from part.warnings
    yield ADVISES


def _person(person: Person, *, us: bool) -> Iterator[str]:
    for one in person.duties:
        head = f"{person.name}, {VERBS[one.duty]}: {one.word}"
        yield f"{head}: {'; '.join(one.why)}." if one.why else f"{head}."
    pair = person.cartridge
    if pair is not None and pair.left_min is not None and pair.change_after_min is not None:
        used = f"{pair.used_min:.0f} of {pair.change_after_min:.0f} min used"
        line = f"{person.name}'s cartridges: {used}, {pair.planned_min:.0f} min of spraying planned"
        by = f"; a new pair by {_at(pair.change_by_at, us=us)}" if pair.change_by_at else ""
        yield f"{line}{by}."
    if person.holds_ppm is not None:
        yield (
            f"{person.name}'s respirator, {person.respirator}: for air to {person.holds_ppm:.0f} "
            "ppm of hydrogen chloride, never more, whatever the cartridges (from memory)."
        )


def _looks(part: People, coats: Sequence[str], *, us: bool) -> Iterator[str]:
    if not part.look_ins:
        return
    who = f" {' and '.join(part.stands_by)}" if part.stands_by else ""
    every = f"Looked in on every {part.look_in_min:g} min while somebody sprays"
    rank = rank_words(part.look_in_rank, part.look_in_source)
    looked_at = dict.fromkeys(one.coat for one in part.look_ins)
    told = "; ".join(
        f"coat {by_number(coats, coat)} "
        + ", ".join(_at(one.at, us=us) for one in part.look_ins if one.coat == coat)
        for coat in looked_at
    )
    yield f"{every} ({rank}){',' if who else ''}{who}: {told}."


def keep_out_said(out: KeepOut, *, us: bool) -> str:
    """Who stays out, and until when."""
    who = f"{', '.join(out.who[:-1])} and {out.who[-1]}"
    who = who[0].upper() + who[1:]
    if not out.free_likely_at:
        return f"{who} stay out until the floor is rinsed and aired; the hour is not in sight."
    late = f", {_at(out.free_late_at, day=True, us=us)} at the late end" if out.free_late_at else ""
    return (
        f"{who} stay out until the floor is rinsed and aired: not before "
        f"{_at(out.free_likely_at, day=True, us=us)}{late}; free only when the crew says so."
    )


def _at(moment: str, *, us: bool, day: bool = False) -> str:
    told = datetime.fromisoformat(moment)
    clock = clock_words(told, us=us)
    return f"{told.date()} {clock}" if day else clock
