"""What page and papers say of people with acid: English sentences, told by the phrasebook."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from farwall.acid.may import VERBS
from farwall.evidence import rank_words
from farwall.facts.plan import Plan
from farwall.job.acid_day.fumes import Fumes
from farwall.job.acid_day.people.noun import People, Person
from farwall.papers.wall_clock import Units, WallClock, plan_clock
from farwall.phrasebook import told

_HAIR_MIN = 0.01
Line = tuple[bool, str]
"""Whether it says no, and its words."""


def people_clock(plan: Plan, units: Units) -> WallClock:
    """The plan's clock, which names halves of the day: what is told goes on into the next days."""
    return replace(plan_clock(plan, units), half_day_words=units == "us")


def person_lines(person: Person, clock: WallClock, fumes: Fumes | None = None) -> list[Line]:
    """What a person may do today, may not do yet and why, what nobody told, cartridges, air."""
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
    return [*lines, *((False, one) for one in _worn(person, clock)), *_air(person, fumes)]


def _air(person: Person, fumes: Fumes | None) -> list[Line]:
    """The air where somebody sprays against what the respirator is for; silent where it is less."""
    held, hygienists = person.holds_ppm, person.holds_hygienists_ppm
    inside = any(one.duty in {"sprays", "helps"} for one in person.duties)
    sprayer = fumes.sprayer if fumes is not None else None
    if sprayer is None or held is None or hygienists is None or not inside:
        return []
    ppm = sprayer.mean_15_ppm
    air = f"Where somebody sprays the air is likely {ppm.likely:.0f} ppm, {ppm.high:.0f} ppm at "
    air += "the high end (guess)"
    ask = "More air first, and have it measured: a hygienist says what is worn."
    if ppm.likely > held:
        return [(True, told(f"{air}: more than this respirator is for. {ask}"))]
    if ppm.high > hygienists:
        by = f"by the hygienists' ceiling this respirator is for {hygienists:.0f} ppm"
        return [(False, told(f"{air}; {by}. {ask}"))]
    return []


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


def free_min(people: People, fumes: Fumes | None) -> tuple[float | None, float | None]:
    """From which minute others may come in, likely and late: rinsed, aired, and the air clear.

    None: not in sight. The later of the plan's rinse with its airing and of what the air holds.
    """
    out = people.keep_out
    if out is None or out.rinsed_likely_min is None:
        return None, None
    late = out.rinsed_late_min
    ends: list[float | None] = [
        out.rinsed_likely_min + out.aired_min, None if late is None else late + out.aired_min,
    ]  # fmt: skip
    last = [one for one in fumes.kept_out if one.next_min is None] if fumes is not None else []
    if last:
        clear = (last[-1].likely_min, last[-1].high_min)
        ends = [
            None if one is None or air is None else max(one, air)
            for one, air in zip(ends, clear, strict=True)
        ]
    return ends[0], ends[1]


def keep_out_lines(people: People, clock: WallClock, fumes: Fumes | None = None) -> list[str]:
    """Who stays out, until when, and what the hour rests on."""
    out = people.keep_out
    if out is None:
        return []
    first = told("Owner, pets and other trades stay out until the floor is rinsed and aired.")
    likely, late = free_min(people, fumes)
    if likely is None:
        return [first, told("The hour is not in sight: floor is left, or a wait has no end.")]
    hours = f"Free not before {clock.time(likely)}"
    if late is not None and late > likely:
        hours += f"; at the late end {clock.time(late)}"
    return [
        first,
        told(f"{hours}; the last rinse and {out.aired_min:.0f} min of airing counted (guess)."),
        told("Only the crew says when: rinsed, white rag clean, aired, and signed on the door."),
    ]
