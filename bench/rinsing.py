"""How often the range of rinses to come holds, on floors drawn apart from the model.

python bench/rinsing.py [--once] [--houses N] [--seed N] [--darker X]: invented houses whose rinses
are reckoned by other physics than `acid.rinse_belief` (a film stirred for a while over six layers
of pores, loose powder beside powder that lets go slowly, pH by charge balance with part of the gas
gone, rags judged by two people). The finisher follows `acid.rinsing`. `--darker` adds X to the
natural logarithm of all powder, beyond what the model expects. Told: how many of the ranges hold,
how wide they are, and how near the likely number comes, for the first room of a house and later
ones.
"""

import math
import sys
import time
from dataclasses import dataclass

import numpy as np

from farwall.acid.rinsing import Round, Wanted, next_step

MOST, LAYERS = 16, 6
PK1, PK2, PKW = 6.35, 10.33, 14.0


@dataclass
class Floor:
    """A true room: everything in its own units, nothing shared with the model."""

    loose: float
    bound: float
    lets_go: float
    pores: np.ndarray
    seeps: float
    film_l_m2: float
    mixed: float
    acid_mmol_m2: float
    alkalinity: float
    gas_gone: float


def house(rng: np.random.Generator, darker: float = 0.0) -> dict[str, float]:
    """What the rooms of a house have in common."""
    return {
        "loose": rng.normal(4.0, 0.8) + darker,
        "bound": rng.normal(2.8, 0.8) + darker,
        "lets_go": rng.normal(-0.4, 0.3),
        "pores": rng.normal(0.6, 0.7),
        "seeps": rng.normal(-2.2, 0.4),
        "film": rng.normal(-1.6, 0.35),
        "mixed": rng.normal(1.2, 0.4),
        "acid": rng.normal(0.0, 1.2),
        "alkalinity": rng.uniform(0.7, 4.0),
        "gas": rng.uniform(0.2, 0.7),
    }


def floor_of(own: dict[str, float], rng: np.random.Generator) -> Floor:
    """One room of it."""

    def near(key: str, spread: float) -> float:
        return own[key] + rng.normal(0, spread)

    return Floor(
        loose=math.exp(near("loose", 0.4)),
        bound=math.exp(near("bound", 0.4)),
        lets_go=1 / (1 + math.exp(-near("lets_go", 0.2))),
        pores=np.full(LAYERS, math.exp(near("pores", 0.4))),
        seeps=min(math.exp(near("seeps", 0.2)), 0.45),
        film_l_m2=math.exp(near("film", 0.2)),
        mixed=1 / (1 + math.exp(-near("mixed", 0.2))),
        acid_mmol_m2=math.exp(near("acid", 0.5)),
        alkalinity=own["alkalinity"],
        gas_gone=own["gas"],
    )


def rinsed(floor: Floor, water: float, *, scrubbed: bool) -> None:
    """One scrub, if asked, one rinse and the vacuum: what is left of everything."""
    if scrubbed:
        freed = 0.6 * floor.bound
        floor.bound -= freed
        floor.loose = 0.5 * (floor.loose + freed)
        floor.pores[0] *= 0.5
        floor.acid_mmol_m2 *= 0.25
    freed = floor.bound * floor.lets_go * 0.5
    floor.bound -= freed
    floor.loose += freed
    stays = 1 - floor.mixed * water / (water + floor.film_l_m2)
    floor.loose *= stays
    floor.acid_mmol_m2 *= stays
    for _ in range(3):
        flow = floor.seeps * np.diff(floor.pores)
        floor.pores[:-1] += flow
        floor.pores[1:] -= flow
        up = floor.seeps * 0.4 * floor.pores[0]
        floor.pores[0] -= up
        floor.loose += up


def ph_of(floor: Floor, water: float) -> float:
    """By charge balance in h, half-way between closed and open."""
    alkali = floor.alkalinity / 1000
    acid = floor.acid_mmol_m2 / 1000 / (water + floor.film_l_m2)
    carbon = alkali * (1 + 10 ** (PK1 - 7.6))
    freed = max(min(acid, carbon) * floor.gas_gone, 0.0)
    carbon = max(carbon - freed, 1e-9)
    low, high = 0.0, 14.0
    for _ in range(50):
        mid = (low + high) / 2
        h = 10**-mid
        first, second = 10**-PK1 / h, 10 ** -(PK1 + PK2) / h**2
        bicarbonate = carbon * first / (1 + first + second)
        carbonate = carbon * second / (1 + first + second)
        charge = h + alkali - acid - bicarbonate - 2 * carbonate - 10**-PKW / h
        low, high = (mid, high) if charge > 0 else (low, mid)
    return (low + high) / 2


def read(floor: Floor, water: float, rng: np.random.Generator) -> tuple[str, float]:
    """Rag and paper, as people read them."""
    seen = math.log(max(floor.loose, 1e-9)) + rng.logistic(0, 0.25)
    rag = "clean" if seen < 0 else "grey" if seen < 1.3 else "coloured"
    paper = round(2 * (ph_of(floor, water) + rng.normal(0, 0.25))) / 2
    return rag, min(max(paper, 1.0), 11.0)


@dataclass
class Tally:
    """Ranges against what came."""

    held: int = 0
    told: int = 0
    width: float = 0.0
    off: float = 0.0

    def add(self, more: object, came: int) -> None:
        """One range, and what came."""
        self.told += 1
        self.held += more.low <= came <= more.high  # type: ignore[attr-defined]
        self.width += more.high - more.low  # type: ignore[attr-defined]
        self.off += abs(more.likely - came)  # type: ignore[attr-defined]

    def said(self) -> str:
        """In a line."""
        return (
            f"{self.told:5} ranges, {100 * self.held / max(self.told, 1):5.1f} % hold, "
            f"{self.width / max(self.told, 1):4.2f} rinses wide, likely off by "
            f"{self.off / max(self.told, 1):4.2f}"
        )


def wash(own: dict[str, float], rooms: int, rng: np.random.Generator, tallies: dict) -> list[int]:
    """Wash a house room by room as the tool says; every range that was told is kept."""
    known: list[tuple[Round, ...]] = []
    counts = []
    for number in range(rooms):
        floor, water = floor_of(own, rng), 1.22
        done: list[Round] = []
        tap = round(2 * 7.6) / 2
        told = []
        step = next_step((), known, wanted=Wanted(tap), l_per_m2=water)
        rinsed(floor, water, scrubbed=True)  # the scrub that every floor gets
        while len(done) < MOST and step.verdict != "enough":
            if step.more is not None:
                told.append((len(done), step.more))
            poured = water * math.exp(rng.normal(0, 0.15))
            scrubbed = step.verdict == "scrub"
            rinsed(floor, poured, scrubbed=scrubbed)
            rag, ph = read(floor, poured, rng)
            done.append(Round(poured, rag, (ph,), scrubbed))
            step = next_step(done, known, wanted=Wanted(tap), l_per_m2=water)
        for at, more in told:
            key = (
                "first room" if number == 0 else "later rooms",
                "before" if at == 0 else "during",
            )
            tallies.setdefault(key, Tally()).add(more, len(done) - at)
        counts.append(len(done))
        known.append(tuple(done))
    return counts


def main() -> None:
    """Wash the houses and tell."""
    houses = 12 if "--once" in sys.argv else 150
    if "--houses" in sys.argv:
        houses = int(sys.argv[sys.argv.index("--houses") + 1])
    seed = int(sys.argv[sys.argv.index("--seed") + 1]) if "--seed" in sys.argv else 8
    rng = np.random.default_rng(seed)
    darker = float(sys.argv[sys.argv.index("--darker") + 1]) if "--darker" in sys.argv else 0.0
    tallies: dict[tuple[str, str], Tally] = {}
    begun = time.process_time()
    counts = [n for _ in range(houses) for n in wash(house(rng, darker), 6, rng, tallies)]
    took = time.process_time() - begun
    print(f"{houses} houses of 6 rooms, seed {seed}: rinses of a room, tenth to ninth tenth "
          f"{np.percentile(counts, 10):.0f} to {np.percentile(counts, 90):.0f}, "
          f"middle {np.median(counts):.0f}")  # fmt: skip
    whole = Tally()
    for (room, when), tally in sorted(tallies.items()):
        print(f"  {room}, {when} its rinses: {tally.said()}")
        for key in ("held", "told", "width", "off"):
            setattr(whole, key, getattr(whole, key) + getattr(tally, key))
    print(f"  all: {whole.said()}")
    print(f"  {1000 * took / max(whole.told, 1):.1f} ms of processor a range, rounds of the house "
          "in it")  # fmt: skip


if __name__ == "__main__":
    main()
