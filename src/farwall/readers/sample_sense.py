"""Whether what a job says of its samples agrees with itself, with its coats, stains and rooms.

Works on the plain values, twins already converted, so that one wrong figure hides nothing.
"""

from __future__ import annotations

import datetime
from collections.abc import Iterator, Mapping, Sequence

from farwall.errors import Mistake, Refused
from farwall.facts.cut import parse_cut
from farwall.facts.drank import Drank, Made, measured_out, weighed
from farwall.facts.samples import Sample
from farwall.nouns import dataclass
from farwall.readers.json_text import Place, place_text
from farwall.readers.shape import did_you_mean, text_of
from farwall.readers.wording import shown

Row = Mapping[str, object]
APART = 0.10
"""Coverage told in two ways may differ by so much; beyond it is asked about. A guess: a
jug is read to 2 or 3 %, the edge of a square to some more."""
_NUMBERS = ("m2_per_l", "area_m2", "laid_ml", "sprayer_before_kg", "sprayer_after_kg")


@dataclass(frozen=True)
class Around:
    """What there is beside the samples: ids of rooms, coats, stains; coats, stains as told."""

    rooms: Sequence[str]
    coats: Sequence[str]
    stains: Sequence[str]
    told_coats: Mapping[str, Row]
    told_stains: Mapping[str, Row]


def sample_mistakes(rows: Sequence[tuple[Place, Row]], around: Around) -> Iterator[Mistake]:
    """Names that name nothing, cuts that are none, rings, weights and coverages that disagree."""
    by_id = {name: row for _, row in rows if (name := text_of(row, "id")) is not None}
    for place, row in rows:
        yield from _named(place, row, around)
        yield from _cut(place, row)
        yield from _another_stain(place, row, around)
        yield from _over(place, row, by_id)
        yield from _weights(place, row)
        yield from _twice(place, row, around)
        yield from _day(place, row)


def _named(place: Place, row: Row, around: Around) -> Iterator[Mistake]:
    for key, known in (("coat", around.coats), ("room", around.rooms), ("stain", around.stains)):
        name = text_of(row, key)
        # With nothing known the list itself is missing or spoilt, and that is told elsewhere.
        if name is not None and known and name not in known:
            said = f"There is no {key} {shown(name)}."
            yield Mistake(place_text((*place, key)), said, did_you_mean(name, list(known)))


def _cut(place: Place, row: Row) -> Iterator[Mistake]:
    cut = text_of(row, "cut")
    if cut is not None:
        try:
            parse_cut(cut, where=place_text((*place, "cut")))
        except Refused as refusal:
            yield from refusal.mistakes


def _another_stain(place: Place, row: Row, around: Around) -> Iterator[Mistake]:
    """A sample stands for a coat; of another stain it would tell the coat what is not so."""
    coat, own = text_of(row, "coat"), text_of(row, "stain")
    stain = text_of(around.told_coats.get(coat or "", {}), "stain")
    if own is not None and stain is not None and own != stain:
        said = f"It names the stain {shown(own)}, and its coat {shown(coat)} is of {shown(stain)}."
        remedy = "Leave the coat out for a sample of another stain, or the stain."
        yield Mistake(place_text((*place, "stain")), said, remedy)


def _over(place: Place, row: Row, by_id: Mapping[str, Row]) -> Iterator[Mistake]:
    under, name, where = text_of(row, "over"), text_of(row, "id"), place_text((*place, "over"))
    if under is None:
        return
    if under == name:
        yield Mistake(where, "A sample does not lie over itself.", "Name the one beneath.")
    elif under not in by_id:
        others = [one for one in by_id if one != name]
        yield Mistake(where, f"There is no sample {shown(under)}.", did_you_mean(under, others))
    elif _in_a_ring(name, by_id):
        said = f"{shown(name)} and {shown(under)} lie over each other in a ring."
        yield Mistake(where, said, "The lowest one has no `over`.")
    else:
        here, there = text_of(row, "room"), text_of(by_id[under], "room")
        if here is not None and there is not None and here != there:
            said = f"It is in {shown(here)}, and {shown(under)} beneath it in {shown(there)}."
            yield Mistake(place_text((*place, "room")), said, "A square lies in one room.")


def _in_a_ring(name: str | None, by_id: Mapping[str, Row]) -> bool:
    at, passed = name, set()
    while at is not None and at not in passed:
        passed.add(at)
        at = text_of(by_id.get(at, {}), "over")
    return at is not None and at == name


def _weights(place: Place, row: Row) -> Iterator[Mistake]:
    before, after = _number(row, "sprayer_before_kg"), _number(row, "sprayer_after_kg")
    if before is not None and after is not None and before <= after:
        said = f"The sprayer weighs {after:g} kg after it and {before:g} kg before."
        remedy = "What was laid is what it lost: swap the two, or weigh again."
        yield Mistake(place_text((*place, "sprayer_after_kg")), said, remedy)


def _twice(place: Place, row: Row, around: Around) -> Iterator[Mistake]:
    """Coverage told in two ways that lie further apart than `APART` and than the stain's density
    leaves open."""
    numbers = {key: _number(row, key) for key in _NUMBERS}
    if any(value is not None and value <= 0 for value in numbers.values()):
        return
    sample = Sample(text_of(row, "id") or "sample", **numbers)  # type: ignore[arg-type]
    ways = _ways(sample, _made(row, around))
    for n, (name, _, one) in enumerate(ways):
        for other_name, key, other in ways[n + 1 :]:
            if one.low > other.high * (1 + APART) or other.low > one.high * (1 + APART):
                said = (
                    f"By {name} it covered {one.m2_per_l:.2f} m²/L, by {other_name} "
                    f"{other.m2_per_l:.2f}."
                )
                where = place_text((*place, key))
                yield Mistake(where, said, "Which was measured? Leave the other out.")


def _ways(sample: Sample, made: Made) -> list[tuple[str, str, Drank]]:
    """In words and by its key, each way in which coverage is told."""
    told = sample.m2_per_l
    found = (
        ("what is told", "m2_per_l", None if told is None else Drank(told, told, told, "told")),
        ("laid_ml", "laid_ml", measured_out(sample)),
        ("the sprayer's weights", "sprayer_after_kg", weighed(sample, made)),
    )
    return [(name, key, one) for name, key, one in found if one is not None]


def _made(row: Row, around: Around) -> Made:
    coat = text_of(row, "coat") or (around.coats[0] if len(around.coats) == 1 else "")
    told = around.told_coats.get(coat, {})
    stain = text_of(row, "stain") or text_of(told, "stain") or ""
    density = _number(around.told_stains.get(stain, {}), "density_kg_l")
    sound = density if density is not None and density > 0 else None
    return Made(stain, text_of(row, "cut") or text_of(told, "cut") or "", sound)


def _day(place: Place, row: Row) -> Iterator[Mistake]:
    text = text_of(row, "approved_on")
    if text is None:
        return
    try:
        datetime.date.fromisoformat(text)
    except ValueError:
        remedy = "Write year, month and day, such as 2027-05-04, or leave it out."
        yield Mistake(place_text((*place, "approved_on")), f"{shown(text)} is not a day.", remedy)


def _number(row: Row, key: str) -> float | None:
    value = row.get(key)
    known = isinstance(value, int | float) and not isinstance(value, bool)
    return float(value) if known else None  # type: ignore[arg-type]
