"""How long a refit and a verdict take by the number of looks, and whether a change moves answers.

python bench/refits.py [--once]: milliseconds of the processor and of the clock, best and middle of
nine, from 8 to 69 looks, as floors give them and moved so that no form of darkening fits them.

python bench/refits.py --record FILE [--cases N]: what is foreseen of N drawn cases, kept in FILE.
python bench/refits.py --against FILE [--cases N]: the same, and by how much it differs from FILE.
"""

from __future__ import annotations

import argparse
import json
import statistics
import time
from dataclasses import replace
from pathlib import Path
from typing import NamedTuple

import numpy as np

from farwall.bench.colour_floors import PATCHES, Coat, Floor, bare_patches, floor
from farwall.colour.belief import Seen, believe
from farwall.colour.dose import Laid
from farwall.colour.next_coat import Outlook, Way, outlooks


class Size(NamedTuple):
    """How much was seen: samples, rooms looked at bare and after each of so many coats."""

    samples: int
    rooms: int
    coats: int
    stains: int
    odd: bool = False


SIZES = {
    "8 looks": Size(8, 0, 0, 2),
    "21 looks, 4 rooms": Size(9, 4, 2, 2),
    "37 looks, 8 rooms": Size(13, 8, 2, 1),
    "69 looks, 12 rooms": Size(21, 12, 3, 1),
    "the same, 2 colours": Size(21, 12, 3, 2),
}
WATER = (1.0, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0, 12.0, 15.0)
Step = tuple[int, float, float]


def main() -> None:
    """Time, record or compare."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--times", type=int, default=9)
    parser.add_argument("--once", action="store_true", help="one size, once: only that it runs")
    parser.add_argument("--record", type=Path)
    parser.add_argument("--against", type=Path)
    parser.add_argument("--cases", type=int, default=300)
    given = parser.parse_args()
    if given.record:
        given.record.write_text(json.dumps([_answer(n) for n in range(given.cases)]))
    elif given.against:
        _compare(json.loads(given.against.read_text())[: given.cases])
    else:
        sizes = list(SIZES)[-1:] if given.once else list(SIZES)
        _time(sizes, 1 if given.once else given.times)


def looks_of(seed: int, size: Size) -> list[Seen]:
    """Samples of an invented slab, and looks at each room; odd: moved so that no form fits."""
    throws = np.random.Generator(np.random.PCG64([seed, 4242]))
    stains = size.stains
    slab = floor(seed, stains=stains)
    seen = [_sample(slab, n, throws, stains) for n in range(size.samples)]
    plan = [
        (int(throws.integers(stains)) if n else 0, float(throws.choice((2.0, 3.0, 4.0))), 0.15)
        for n in range(size.coats)
    ]
    for n in range(size.rooms):
        thirst = slab.thirst * throws.lognormal(0.0, 0.16)
        seen += _room(replace(slab, thirst=thirst), f"room {n}", plan, throws)
    off = throws.normal(0.0, 1.5 * size.odd, (len(seen), 3))
    return [
        replace(one, lab=_triple(np.array(one.lab) + move))
        for one, move in zip(seen, off, strict=True)
    ]


def _sample(slab: Floor, n: int, throws: np.random.Generator, stains: int) -> Seen:
    patch = bare_patches(slab, np.array([n % PATCHES]))
    steps = [
        (int(throws.integers(stains)), float(throws.choice(WATER[:7])), 0.2)
        for _ in range(int(throws.integers(0, 4)) if n else 0)
    ]
    for stain, water, litres in steps:
        patch = patch.laid(Coat(stain, 1 / (1 + water), litres), throws)
    photo = "samples" if n % 5 else f"sample {n}"
    blur = float(throws.choice((1.0, 1.0, 2.0)))
    return Seen(_laid(steps), _triple(patch.photographed(throws)[0]), "samples", photo, blur=blur)


def _room(room: Floor, name: str, plan: list[Step], throws: np.random.Generator) -> list[Seen]:
    patches, seen = bare_patches(room, np.arange(PATCHES)), []
    for n in range(len(plan) + 1):
        labs = patches.photographed(throws)[throws.permutation(PATCHES)[:6]]
        spread = float(labs[:, 0].std(ddof=1))
        lab = _triple(labs.mean(axis=0))
        seen.append(Seen(_laid(plan[:n]), lab, name, f"{name}, {n}", 6, spread))
        if n < len(plan):
            stain, water, litres = plan[n]
            patches = patches.laid(Coat(stain, 1 / (1 + water), litres), throws)
    return seen


def _time(sizes: list[str], times: int) -> None:
    for name in sizes:
        size = SIZES[name]
        for odd in (False, True):
            seen, stains = looks_of(3, size._replace(odd=odd)), size.stains
            belief = believe(seen, stains=stains)
            fit = _timed(lambda s=seen, n=stains: believe(s, stains=n), times)
            verdict = _timed(lambda b=belief, n=stains: _outlooks(b, n, b.rooms), times)
            print(f"{name}{', no form fits' * odd}: refit {fit}; all ways judged {verdict}")


def _timed(work, times: int) -> str:  # type: ignore[no-untyped-def]
    own, wall = [], []
    for _ in range(times):
        clock, processor = time.perf_counter(), time.process_time()
        work()
        own.append((time.process_time() - processor) * 1000)
        wall.append((time.perf_counter() - clock) * 1000)
    return (
        f"{min(own):.0f}, {statistics.median(own):.0f} ms of the processor, "
        f"{min(wall):.0f}, {statistics.median(wall):.0f} by the clock"
    )


def _outlooks(belief, stains: int, rooms: tuple[str, ...]) -> tuple[Outlook, ...]:  # type: ignore[no-untyped-def]
    ways = [Way(one, water, m2) for one in range(stains) for water in WATER for m2 in (0.2, 0.09)]
    return outlooks(
        belief, (Laid(0, 0.05),), (None, *ways), sample_lab=(38.0, 6.0, 11.0), dark_range=3.0,
        places=rooms or ("floor",),
    )  # fmt: skip


def _answer(number: int) -> list[list[float]]:
    """Chance of too dark, gap and its range, how far away, L, a, b of each way of a drawn case."""
    throws = np.random.Generator(np.random.PCG64([number, 99]))
    stains, many = int(throws.integers(1, 3)), throws.random() < 0.25
    samples = int(throws.integers(1, 22 if many else 10))
    rooms, coats = int(throws.integers(0, 13 if many else 5)), int(throws.integers(0, 4))
    odd = bool(throws.random() < 0.3)
    seen = looks_of(number, Size(samples, rooms, coats, stains, odd))
    belief = believe(seen, stains=stains, rooms=("never seen",) if number % 3 == 0 else ())
    found = _outlooks(belief, stains, ("floor", *belief.rooms[:3]))
    return [[one.too_dark, one.gap, one.gap_low, one.gap_high, one.away, *one.lab] for one in found]


def _compare(before: list[list[list[float]]]) -> None:
    """As shown: chances to the thousandth, colours to a tenth."""
    off, shown, moved, total = np.zeros(8), 0, 0, 0
    for number, told in enumerate(before):
        then, now = np.array(told), np.array(_answer(number))
        apart = np.abs(then - now)
        off, moved = np.maximum(off, apart.max(axis=0)), moved + bool(apart.max() > 1e-6)
        digits = np.array([1000.0] + [10.0] * 7)
        shown += int((np.round(then * digits) != np.round(now * digits)).sum())
        total += then.size
    names = ("too dark", "gap", "its low end", "its high end", "away", "L", "a", "b")
    most = ", ".join(f"{name} {one:.2g}" for name, one in zip(names, off, strict=True))
    print(f"{len(before)} cases; in {moved} anything moved by more than 1e-6; at the most: {most}")
    print(f"shown digits that differ: {shown} of {total}")


def _laid(steps: list[Step]) -> tuple[Laid, ...]:
    return tuple(Laid(stain, litres / (1 + water)) for stain, water, litres in steps)


def _triple(lab: np.ndarray) -> tuple[float, float, float]:  # type: ignore[type-arg]
    return float(lab[0]), float(lab[1]), float(lab[2])


if __name__ == "__main__":
    main()
