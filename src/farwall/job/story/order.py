"""Entries in the order in which things happened: each once, clocks put right, struck ones aside.

The clock of a device is put right by what the book knows of it. Where nothing is known of an era of
it, by what is known of the next one, else of the one before: a phone that slept looks as if its
clock had jumped. There nothing can have happened after the book received it.
Within a device the count rules: where its
times run against its numbers, the fewest minutes are moved (a median in each knot of them). A
number of 0 claims no place: so is entered what is told later, by hand, for an earlier minute.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from datetime import datetime
from statistics import median_low

from farwall.facts.log import Entry, Kept
from farwall.facts.plain import plain
from farwall.job.story.noun import Happened
from farwall.nouns import dataclass

STRUCK = "struck"


@dataclass(frozen=True)
class Ordered:
    """What happened, what was struck, and what cannot be so, in words."""

    happened: tuple[Happened, ...]
    struck: tuple[Happened, ...]
    contradictions: tuple[str, ...]


def in_order(kept: Iterable[Kept], *, starts_at: str) -> Ordered:
    """The entries in order; minutes count from `starts_at` (ISO 8601 with offset)."""
    once, told = _once(kept)
    start_s = datetime.fromisoformat(starts_at).timestamp()
    at_s = _corrected(once)
    every = sorted(once, key=lambda one: (at_s[one.entry.id], one.entry.device,
                                          one.entry.number, one.entry.id))  # fmt: skip
    struck, unknown = _struck([one.entry for one in every])
    made = [_happened(one.entry, at_s[one.entry.id], start_s) for one in every]
    return Ordered(
        tuple(one for one in made if one.id not in struck),
        tuple(one for one in made if one.id in struck),
        (*told, *unknown),
    )


def _once(kept: Iterable[Kept]) -> tuple[list[Kept], list[str]]:
    """Each id once. The one whose clock is known, else the one received first, is taken."""
    first: dict[str, Kept] = {}
    several: set[str] = set()
    for one in sorted(kept, key=_choice):
        name = one.entry.id
        if name not in first:
            first[name] = one
        elif first[name].entry != one.entry:
            several.add(name)
    words = [f"Entry {name} came with two contents; the first is taken." for name in several]
    return list(first.values()), sorted(words)


def _choice(one: Kept) -> tuple[str, bool, float, str, str]:
    off = one.clock_off_s
    told = repr((one.entry.word, sorted(map(repr, one.entry.about.items())), plain(one.entry)))
    received = _seconds(one.received_at)
    return one.entry.id, off is None, received, "" if off is None else f"{off:.6f}", told


def _corrected(once: Sequence[Kept]) -> dict[str, float]:
    """Seconds since 1970 of each entry, by id."""
    found: dict[str, float] = {}
    devices: dict[str, list[tuple[int, str]]] = {}
    offs = _offs(once)
    for one in once:
        entry = one.entry
        at_s = _seconds(entry.at)
        if one.clock_off_s is not None:
            at_s -= one.clock_off_s
        else:
            at_s -= _near(offs.get(entry.device, {}), entry.era)
            if one.received_at:
                at_s = min(at_s, _seconds(one.received_at))
        found[entry.id] = at_s
        if entry.device and entry.number > 0:
            devices.setdefault(entry.device, []).append((entry.number, entry.id))
    for counted in devices.values():
        names = [name for _, name in sorted(counted)]
        found.update(zip(names, _rising([found[name] for name in names]), strict=True))
    return found


def _offs(once: Sequence[Kept]) -> dict[str, dict[int, float]]:
    """Seconds that clocks were ahead, as far as told: by device and era."""
    found: dict[str, dict[int, float]] = {}
    for one in once:
        if one.clock_off_s is not None and one.entry.device:
            found.setdefault(one.entry.device, {})[one.entry.era] = one.clock_off_s
    return found


def _near(offs: Mapping[int, float], era: int) -> float:
    """What is told of the next era after one, else of the last before it; 0 where of none."""
    eras = sorted(offs)
    following = next((each for each in eras if each >= era), eras[-1] if eras else None)
    return 0.0 if following is None else offs[following]


def _rising(times: Sequence[float]) -> list[float]:
    """The times made to rise with the fewest minutes moved: medians of adjacent violators."""
    blocks: list[list[float]] = []
    for one in times:
        blocks.append([one])
        while len(blocks) > 1 and median_low(blocks[-2]) > median_low(blocks[-1]):
            last = blocks.pop()
            blocks[-1] += last
    return [median_low(block) for block in blocks for _ in block]


def _seconds(moment: str) -> float:
    return datetime.fromisoformat(moment).timestamp() if moment else 0.0


def _struck(entries: Sequence[Entry]) -> tuple[set[str], list[str]]:
    """Ids that are struck: by an entry that is not struck itself; and strikes of nothing."""
    by: dict[str, list[str]] = {}
    known = {one.id for one in entries}
    words = []
    for one in entries:
        target = one.about.get("entry")
        if one.word != STRUCK or not isinstance(target, str):
            continue
        if target not in known:
            words.append(f"Entry {target}, struck by {one.id}, is not here (yet).")
        elif target != one.id:
            by.setdefault(target, []).append(one.id)
    judged: dict[str, bool] = {}
    for name in sorted(known, reverse=True):  # a strike is made after what it strikes
        _judge(name, by, judged)
    return {name for name, is_struck in judged.items() if is_struck}, words


def _judge(name: str, by: dict[str, list[str]], judged: dict[str, bool]) -> None:
    """Whether an entry is struck, its strikes looked at first; a ring of strikes strikes nothing.

    Without recursion: a chain of strikes may be long.
    """
    waiting = [name]
    open_: set[str] = set()
    while waiting:
        one = waiting[-1]
        if one in judged:
            waiting.pop()
            continue
        open_.add(one)
        later = [each for each in by.get(one, ()) if each not in judged and each not in open_]
        if later:
            waiting += later
            continue
        judged[one] = any(judged.get(each) is False for each in by.get(one, ()))
        waiting.pop()


def _happened(entry: Entry, at_s: float, start_s: float) -> Happened:
    off_min = round((_seconds(entry.at) - at_s) / 60, 4)
    at_min = round((at_s - start_s) / 60, 4)
    about = dict(entry.about)
    return Happened(entry.id, entry.word, at_min, about, entry.who, entry.device, off_min)
