"""The acid day in a dozen lines: what is strong, what the air holds, what has to be asked first."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.evidence import Rank
from farwall.facts.numbered import by_number
from farwall.job.acid_day.fumes.noun import worst_of
from farwall.job.acid_day.fumes.said import figure, ppm
from farwall.job.acid_day.noun import AcidDay
from farwall.nouns import dataclass
from farwall.units import KG_PER_LB, gal_from_l


@dataclass(frozen=True)
class Line:
    """A sentence; stop: it says no, or that somebody may die of it."""

    text: str
    stop: bool = False


def in_short(day: AcidDay, *, us: bool) -> tuple[tuple[str, str, tuple[Line, ...]], ...]:
    """Key of each part, its heading, and the few lines that matter most of it.

    us: gallons, pounds and cfm first; else litres, kilograms and m³/h.
    """
    return (
        ("strength", "Strength", tuple(_strength(day))),
        ("fumes", "Fumes", tuple(_fumes(day, us=us))),
        ("pours", "Pouring together", tuple(_pours(day))),
        ("people", "People", tuple(_people(day))),
        ("neutralising", "Neutralising", tuple(_neutralising(day, us=us))),
        ("washing", "Wash day", tuple(_washing(day, us=us))),
        ("waste", "Waste water", tuple(_waste(day))),
    )


def _strength(day: AcidDay) -> Iterator[Line]:
    coats = [one.coat for one in day.strength.coats]
    for coat in day.strength.coats:
        number = by_number(coats, coat.coat)
        told = coat.figures
        if told is None:
            what = f"Coat {number}: the acid in {coat.stain_name} was not told: read its sheet."
            yield Line(what)
        else:
            low, high = told.tub_percent.low, told.tub_percent.high
            what = f"Coat {number}, {coat.stain_name}, {coat.cut}"
            yield Line(f"{what}: {low:.2g} to {high:.2g} % acid, by its sheet ({coat.rank}).")


def _fumes(day: AcidDay, *, us: bool) -> Iterator[Line]:
    part = day.fumes
    if not part.rooms:
        yield from map(Line, part.warnings[:1])
        return
    worst = part.rooms[worst_of([one.peak_ppm for one in part.rooms])]
    where = f"House {part.standing}: {worst.name}"
    yield Line(f"{where} {ppm(worst.peak_ppm)} at its worst ({part.rank}, and a wide one).")
    idlh = [one.ppm for one in part.limits if one.kind == "at once" and one.ppm is not None]
    if idlh and worst.peak_ppm.high > min(idlh):
        what = (
            f"Its high end passes {min(idlh):g} ppm, dangerous at once: open the house and set "
            "fans before the first stroke, or do not begin."
        )
        yield Line(what, stop=True)
    if part.needed is not None:
        both = (part.needed.flow_cfm, "cfm"), (part.needed.flow_m3_h, "m³/h")
        (air, unit), (beside, other) = both if us else both[::-1]
        yield Line(
            f"Air to hold 2 ppm: about {figure(air.likely)} {unit}, {figure(air.low)} to "
            f"{figure(air.high)} ({figure(beside.likely)} {other}; {part.rank})."
        )


def _pours(day: AcidDay) -> Iterator[Line]:
    pairs = [pair for group in day.pours.groups if group.word == "refused" for pair in group.pairs]
    count = len(pairs)
    yield Line(f"{count} pairs of what is in hand are never poured together.")
    yield Line("Unknown means refused.")


def _people(day: AcidDay) -> Iterator[Line]:
    part = day.people
    yield from (Line(one, stop=True) for one in part.stops)
    yield from map(Line, part.warnings[:2])
    words = {duty.word for one in part.people for duty in one.duties}
    if words == {"may"}:
        yield Line("Everybody told may do what they are told to do.")


def _neutralising(day: AcidDay, *, us: bool) -> Iterator[Line]:
    for one in day.neutralising.stains:
        told = "by its sheet" if one.rank == Rank.MEASURED else one.rank
        low, high = (kg / KG_PER_LB / gal_from_l(1.0) for kg in (one.kg_l_low, one.kg_l_high))
        base = day.neutralising.base
        pounds = f"{low:.1f} to {high:.1f} lb", "a gallon", f"{low:.1f} to {high:.1f} lb/gal"
        range_kg = f"{one.kg_l_low:.2f} to {one.kg_l_high:.2f}"
        kilos = f"{range_kg} kg", "a litre", f"{range_kg} kg/L"
        (mass, each, _), (_, _, beside) = (pounds, kilos) if us else (kilos, pounds)
        yield Line(f"{one.name} spilled: {mass} of {base} {each} ({beside}; {told}).")


def _washing(day: AcidDay, *, us: bool) -> Iterator[Line]:
    part = day.washing
    if part.drums is None or part.all_l.likely is None:
        return
    water, hours, drums = part.all_l, part.hours, part.drums
    if None in {water.low, water.likely, water.high, hours.low, hours.likely, hours.high}:
        return
    hands = f"{part.people} {'person' if part.people == 1 else 'people'}"
    yield Line(
        f"About {hours.likely:.0f} h ({hours.low:.0f} to {hours.high:.0f}) with {hands} (guess)."
    )
    litres = [one or 0.0 for one in (water.low, water.likely, water.high)]
    gal = [gal_from_l(one) for one in litres]
    (low, likely, high), unit = (gal, "gal") if us else (litres, "L")
    beside = f"{litres[1]:.0f} L" if us else f"{gal[1]:.0f} gal"
    yield Line(
        f"About {likely:.0f} {unit} of water, {low:.0f} to {high:.0f} ({beside}; guess): "
        f"{drums.full + drums.spares} drums, the spare among them."
    )


def _waste(day: AcidDay) -> Iterator[Line]:
    if day.waste.refusal:
        yield Line(day.waste.refusal, stop=True)
    for drum in day.waste.tests:
        for one in drum.against:
            if one.word == "above":
                why = " ".join(one.why)
                yield Line(
                    f"Drum {drum.drum}, by the word of {one.office}: above. {why}", stop=True
                )
        yield from (Line(f"Drum {drum.drum}: {one}", stop=True) for one in drum.hazards)
    yield from map(Line, day.waste.asks[:1])
