"""Rules on suction: the drop map, room by room, and where it leaps."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from farwall.air.limits import LONGEST_DROP_S, TIGHT_DROP_S
from farwall.facts.job import Job
from farwall.facts.slab import Patch
from farwall.floor.nouns import Opening
from farwall.job.go.noun import Rule, Says, named
from farwall.spray.unlike import LEAP


def drop_seconds(job: Job) -> dict[str, float]:
    """The slowest drop told of each room, by room id; only rooms that were told."""
    found: dict[str, float] = {}
    for room in job.floor.rooms:
        told = job.survey.rooms.get(room.id)
        if told is not None and told.drop_s is not None:
            found[room.id] = told.drop_s
    return found


def _closed(job: Job) -> Says | None:
    slow = {room: s for room, s in drop_seconds(job).items() if s > LONGEST_DROP_S}
    patches = [
        one
        for one in job.survey.patches
        if (one.drop_s or 0.0) > LONGEST_DROP_S and not one.left_dry
    ]
    house = job.survey.drop_s
    if house is not None and house > LONGEST_DROP_S:
        slow |= {r.id: house for r in job.floor.rooms if r.id not in drop_seconds(job)}
    if not slow and not patches:
        told = drop_seconds(job) or house is not None
        return Says("go", "No drop stood for more than a minute.") if told else None
    rooms = tuple(dict.fromkeys([*slow, *(one.room for one in patches)]))
    parts = [f"{named(job, [room])} {s:g} s" for room, s in slow.items()]
    parts += [f"patch {one.id} {one.drop_s:g} s" for one in patches]
    return Says(
        "no",
        f"A drop stands for more than a minute: {', '.join(parts)}. No stain in that field.",
        "Clean and try again; then strip, sand or grind, price it, and sample: another look.",
        where=rooms,
        source="astm-f3191, common-practice",
    )


def _tight(job: Job) -> Says | None:
    told = drop_seconds(job)
    if not told:
        return None
    tight = {r: s for r, s in told.items() if TIGHT_DROP_S < s <= LONGEST_DROP_S}
    if not tight:
        return Says("go", "Drops go in within 20 s where they were tried and not refused.")
    return Says(
        "go with",
        f"Drops are slow: {', '.join(f'{named(job, [r])} {s:g} s' for r, s in tight.items())}.",
        "Sand or screen every square foot there alike, edges by hand; then drops again.",
        where=tuple(tight),
    )


def _missing(job: Job) -> Says | None:
    told = drop_seconds(job)
    without = tuple(room.id for room in job.floor.rooms if room.id not in told)
    if not without:
        return Says("go", "Every room has its drop seconds.")
    bare = job.survey.drop_s is None
    return Says(
        "ask",
        f"No drop was tried in {named(job, without)}."
        + ("" if bare else f" The house's {job.survey.drop_s:g} s stand in for it."),
        "Five drops in each room and on each patch that looks different; note the slowest.",
        where=without,
        vital=bare,
    )


def _leaps(job: Job) -> Says | None:
    pairs, within = leaping(job), leaping_patches(job)
    if not pairs and not within:
        return None
    parts: list[str] = []
    rooms: list[str] = []
    for opening, (slow, fast) in pairs:
        rooms += [slow, fast]
        both = f"{named(job, [slow])} and {named(job, [fast])}"
        parts.append(f"{both} (opening {opening.id}, {_stop(opening)})")
    for patch in within:
        rooms.append(patch.room)
        hides = "its joint hides a stop" if patch.kind == "pour" else "its edge shows"
        parts.append(f"{patch.kind} {patch.id} and {named(job, [patch.room])} ({hides})")
    return Says(
        "go with",
        f"Drop seconds differ more than {LEAP:g} times between {'; '.join(parts)}: the same "
        "stain comes out differently.",
        "The plan parts its fields there by a stop line where one can lie; elsewhere sand the "
        "tight side and try drops again, or show it and have it signed.",
        where=tuple(dict.fromkeys(rooms)),
    )


def leaping(job: Job) -> list[tuple[Opening, tuple[str, str]]]:
    """Openings between rooms whose drop seconds differ more than `LEAP` times; slow room first."""
    told = drop_seconds(job)
    found = []
    for opening in job.floor.openings:
        pair = sorted((r for r in set(opening.rooms) if r in told), key=lambda r: -told[r])
        if len(pair) == 2 and told[pair[0]] > LEAP * told[pair[1]]:
            found.append((opening, (pair[0], pair[1])))
    return found


def leaping_patches(job: Job) -> list[Patch]:
    """Patches that are stained along and differ more than `LEAP` times from their room."""
    told = drop_seconds(job)
    found = []
    for one in job.survey.patches:
        if one.left_dry or one.drop_s is None or one.room not in told:
            continue
        ends = sorted((one.drop_s, told[one.room]))
        if ends[1] > LEAP * ends[0]:
            found.append(one)
    return found


def leaps_inside(
    fields: Sequence[tuple[str, ...]],
    job: Job,
    drops: Sequence[Mapping[str, float]] | None = None,
) -> Says | None:
    """Fields, as room ids, whose own drop seconds differ more than `LEAP` times; None: none do.

    drops: what was told of each field's floor, as `field_drops.drops_in` has it; that of its rooms
    when left out.
    """
    told = drop_seconds(job)
    within = drops or [{room: told[room] for room in field if room in told} for field in fields]
    parts: dict[str, None] = {}
    rooms: list[str] = []
    for field, known in zip(fields, within, strict=True):
        if not known or max(known.values()) <= LEAP * min(known.values()):
            continue
        least, most = min(known.values()), max(known.values())
        parts[f"{named(job, field)} ({least:g} to {most:g} s, {most / least:.1f} times)"] = None
        rooms += field
    if not parts:
        return None
    return Says(
        "go with",
        f"Drop seconds differ more than {LEAP:g} times inside one field: {'; '.join(parts)}.",
        "Sand the tight side and try drops again; or part it by a saw cut where one may be made; "
        "or disclose it and have it signed.",
        where=tuple(dict.fromkeys(rooms)),
    )


def _stop(opening: Opening) -> str:
    if opening.kind == "wide":
        return "too wide to hide a seam: a saw cut, or it shows"
    return (
        "its leaf hides a stop" if opening.kind == "door" else "a stop in its frame shows a little"
    )


RULES = (
    Rule(
        "drop seconds",
        "survey",
        98,
        "",
        _closed,
        source="astm-f3191, common-practice",
    ),
    Rule("tight slab", "survey", 66, "", _tight, source="astm-f3191, common-practice"),
    Rule("drop map", "survey", 97, "", _missing),
    Rule("suction leaps", "survey", 64, "", _leaps),
)
