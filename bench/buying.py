"""How long a purchase takes: 30 materials of 40 container sizes each, four sellers with deliveries.

Once with trade sizes (quarts, gallons, pails, which share a measure), once with sizes that share
none. Wanted: each in 0.5 s. `--once` takes one drawn purchase of each kind.
"""

import random
import statistics
import sys
import time
from decimal import Decimal
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT / "src"))

import numpy as np  # noqa: E402, F401  what is loaded once is not timed

from farwall.facts.wares import Seller, Ware  # noqa: E402
from farwall.price.buying import Material, buy  # noqa: E402
from farwall.units import L_PER_US_GAL  # noqa: E402

DRAWN = 1 if "--once" in sys.argv else 8
MATERIALS, SIZES = 30, 40
_PINTS = (*range(1, 25), 28, 32, 36, 40, 44, 48, 56, 64, 72, 80, 88, 96, 100, 104, 112, 120)


def drawn(seed: int, *, trade: bool) -> tuple[list[Material], list[Seller]]:
    """Materials and sellers, the same for the same seed."""
    draw = random.Random(seed)
    sellers = [
        Seller(
            f"s{n}", draw.choice(["0", "15.00", "25.00", "40.00"]),
            draw.choice([None, "200", "500", "1000"]),
        )
        for n in range(4)
    ]  # fmt: skip
    materials = []
    for m in range(MATERIALS):
        wares = []
        for n in range(SIZES):
            size = _PINTS[n] * L_PER_US_GAL / 8 if trade else round(draw.uniform(0.3, 25), 3)
            cents = int(100 * size**0.85 * draw.uniform(8, 16))
            wares.append(
                Ware(
                    f"w{m}-{n}", "other", size, "l", str(Decimal(cents) / 100),
                    seller=draw.choice(sellers).id,
                    in_stock=draw.choice([None, None, 1, 3, 10]),
                )
            )  # fmt: skip
        materials.append(Material(f"m{m}", draw.uniform(5, 60), tuple(wares)))
    return materials, sellers


def timed(*, trade: bool) -> None:
    """Print seconds of the processor and of the clock, and how good the answers are."""
    for aim in ("cheapest", "fewest left over"):
        seconds, walls, gaps, best = [], [], [], 0
        for seed in range(DRAWN):
            materials, sellers = drawn(seed, trade=trade)
            before, clock = time.process_time(), time.perf_counter()
            found = buy(materials, sellers, aim)  # type: ignore[arg-type]
            seconds.append(time.process_time() - before)
            walls.append(time.perf_counter() - clock)
            gaps.append(float(found.proof.gap / found.total))
            best += found.proof.status == "best"
        sizes = "sizes that share a measure" if trade else "sizes that share none"
        print(
            f"{sizes:<27} {aim:<16} {statistics.median(seconds):5.2f} s "
            f"({min(seconds):.2f}-{max(seconds):.2f}), clock {max(walls):.2f} at most  "
            f"proven best {best} of {DRAWN}, "
            f"gap at most {max(gaps):.2%}"
        )


if __name__ == "__main__":
    print(f"{MATERIALS} materials, {SIZES} sizes each, four sellers")
    timed(trade=True)
    timed(trade=False)
