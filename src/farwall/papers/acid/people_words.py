"""What page and papers say of people with acid: English sentences, told by the phrasebook."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.acid.may import VERBS
from farwall.evidence import rank_words
from farwall.facts.plan import Plan
from farwall.job.acid_day.people.noun import People, Person
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.phrasebook import told

_HAIR_MIN = 0.01
Line = tuple[bool, str]
"""Whether it says no, and its words."""


def people_clock(plan: Plan, units: Units) -> WallClock:
    """The plan's clock, which names halves of the day: what is told goes on into the next days."""
    return replace(plan_clock(plan, units), half_day_words=units == "us")


def person_lines(person: Person, clock: WallClock) -> list[Line]:
    """What a person may do today, may not do yet and why, what nobody told, and the cartridges."""
    lines: list[Line] = []
    may = [VERBS[one.duty] for one in person.duties if one.word == "may"]
    if may:
        lines.append((False, told(f"May {', '.join(may)}.")))
    if not person.duties:
        lines.append((False, told("Nobody told what this person does.")))
    for word, why in dict.fromkeys((one.word, one.why) for one in person.duties):
        verbs = ", ".join(
            VERBS[one.duty] for one in person.duties if (one.word, one.why) == (word, why)
        )
        if word == "not yet":
            lines.append((True, told(f"May not {verbs} yet: {'; '.join(why)}.")))
        elif word == "nobody told":
            lines.append((False, told(f"Nobody told, to {verbs}: {'; '.join(why)}.")))
    return [*lines, *((False, one) for one in _worn(person, clock))]


def _worn(person: Person, clock: WallClock) -> list[str]:
    found = []
    pair = person.cartridge
    if pair is not None and pair.change_after_min is not None:
        line = (
            f"Cartridges: {pair.used_min:.0f} of {pair.change_after_min:.0f} min used, "
            f"{pair.planned_min:.0f} min of spraying planned"
        )
        by = pair.change_by_min
        found.append(
            told(f"{line}.") if by is None
            else told(f"{line}; a new pair by {clock.time(by)}.")
        )  # fmt: skip
    if person.holds_ppm is not None:
        found.append(
            told(
                f"This respirator is for air to {person.holds_ppm:.0f} ppm of hydrogen chloride "
                "and never more, whatever the cartridges (from memory)."
            )
        )
    return found


def look_lines(people: People, plan: Plan, clock: WallClock) -> list[tuple[str, list[str]]]:
    """Each spell of spraying with the times of its looks; the last one is when they come out."""
    numbers = {coat.id: n for n, coat in enumerate(plan.inputs.coats, 1)}
    looks = list(people.look_ins)
    found = []
    for begin, end in people.spray_spells_min:
        own = [one for one in looks if begin < one.at_min <= end + _HAIR_MIN]
        looks = looks[len(own) :]
        coat = own[0].coat if own else ""
        head = told(f"Coat {numbers.get(coat, coat)}, from {clock.time(begin)}")
        found.append((head, [clock.bare(one.at_min) for one in own]))
    return found


def every_line(people: People) -> str:
    """How often, of what rank, and by whom."""
    rank = rank_words(people.look_in_rank, people.look_in_source)
    every = told(f"Every {people.look_in_min:g} min while somebody sprays ({rank}).")
    return f"{every} {standby_line(people.stands_by)}".rstrip()


def standby_line(names: Sequence[str]) -> str:
    """Who stands by outside; empty where nobody is named."""
    return "" if not names else told(f"Standing by outside: {', '.join(names)}.")


def keep_out_lines(people: People, clock: WallClock) -> list[str]:
    """Who stays out, until when, and what the hour rests on."""
    out = people.keep_out
    if out is None:
        return []
    first = told("Owner, pets and other trades stay out until the floor is rinsed and aired.")
    if out.rinsed_likely_min is None:
        return [first, told("The hour is not in sight: floor is left, or the wait has no end.")]
    free = clock.time(out.rinsed_likely_min + out.aired_min)
    hours = f"Free not before {free}"
    if out.rinsed_late_min is not None and out.rinsed_late_min > out.rinsed_likely_min:
        hours += f"; at the late end {clock.time(out.rinsed_late_min + out.aired_min)}"
    return [
        first,
        told(f"{hours}; the last rinse and {out.aired_min:.0f} min of airing counted (guess)."),
        told("Only the crew says when: rinsed, white rag clean, aired, and signed on the door."),
    ]
