"""Whether what was told of slab, sealer and day agrees with itself and with the floor."""

from __future__ import annotations

from collections.abc import Iterator

from farwall.errors import Mistake
from farwall.facts.defaults import DEFAULT_CUTS
from farwall.readers.patch_sense import patch_mistakes
from farwall.readers.shape import did_you_mean, text_of
from farwall.readers.wording import shown

_READS = {
    "F1869": "vapour_ug_m2_s",
    "F2170": "slab_rh_percent",
    "D4263": "sheet",
    "meter": "meter",
}


def asked_mistakes(raw: dict[str, object]) -> Iterator[Mistake]:
    """Every disagreement: rooms and coats that are not there, readings of another test, windows."""
    survey = _part(raw, "survey")
    rooms = [name for one in _rows(_part(raw, "floor"), "rooms") if (name := text_of(one, "id"))]
    yield from _patches(survey, rooms)
    yield from patch_mistakes(raw)
    yield from _tests(survey, rooms)
    coats = [name for one in _rows(raw, "coats") if (name := text_of(one, "id"))]
    coats = coats or [f"coat-{n}" for n in range(1, len(DEFAULT_CUTS) + 1)]
    coat = text_of(_part(raw, "watch"), "coat")
    if coat is not None and coat not in coats:
        yield Mistake("watch.coat", f"There is no coat {shown(coat)}.", did_you_mean(coat, coats))
    yield from _ends(_part(raw, "sealer"), "sealer", "recoat_from_h", "recoat_to_h")
    yield from _ends(_part(raw, "sealer"), "sealer", "least_slab_c", "most_slab_c")
    yield from _ends(_part(raw, "morning"), "morning", "slab_low_c", "slab_high_c")


def _patches(survey: dict[str, object], rooms: list[str]) -> Iterator[Mistake]:
    patches = _rows(survey, "patches")
    if patches and survey.get("patched") is False:
        yield Mistake(
            "survey.patched",
            f"It says that there are none, and {len(patches)} are listed.",
            "Keep one of the two.",
        )
    taken: set[str] = set()
    for number, patch in enumerate(patches):
        place = f"survey.patches[{number}]"
        yield from _room(patch, place, rooms)
        name = text_of(patch, "id")
        if name is not None and name in taken:
            said = f"The patch id {shown(name)} is already taken."
            yield Mistake(f"{place}.id", said, "Give each its own.")
        taken.add(name or "")


def _tests(survey: dict[str, object], rooms: list[str]) -> Iterator[Mistake]:
    for number, test in enumerate(_rows(survey, "moisture")):
        place = f"survey.moisture[{number}]"
        yield from _room(test, place, rooms)
        kind = text_of(test, "kind")
        if kind not in _READS:
            continue
        for other, key in _READS.items():
            if other != kind and test.get(key) is not None:
                said = f"`{key}` is what {other} reads, and this is {kind}."
                yield Mistake(place, said, f"{kind} reads `{_READS[kind]}`.")


def _room(row: dict[str, object], place: str, rooms: list[str]) -> Iterator[Mistake]:
    room = text_of(row, "room")
    if room is not None and rooms and room not in rooms:
        said = f"There is no room {shown(room)}."
        yield Mistake(f"{place}.room", said, did_you_mean(room, rooms))


def _ends(part: dict[str, object], where: str, low: str, high: str) -> Iterator[Mistake]:
    first, last = part.get(low), part.get(high)
    if isinstance(first, int | float) and isinstance(last, int | float) and first > last:
        said = f"`{low}` ({first:g}) is above `{high}` ({last:g})."
        yield Mistake(where, said, "Read it again; swap them.")


def _part(raw: object, key: str) -> dict[str, object]:
    found = raw.get(key) if isinstance(raw, dict) else None
    return found if isinstance(found, dict) else {}


def _rows(raw: dict[str, object], key: str) -> list[dict[str, object]]:
    found = raw.get(key)
    if not isinstance(found, list):
        return []
    return [one if isinstance(one, dict) else {} for one in found]
