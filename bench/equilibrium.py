"""What one equilibrium of acid, base and carbon dioxide takes, and how far it is from PHREEQC's.

Wanted: under 2 ms for one. The waters are drawn as those of `tests/acid/test_equilibrium.py`. With
--far also the distance from both of PHREEQC's databases (group `oracle`), by ionic strength.
"""

import statistics
import sys
import time
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
sys.path.insert(0, str(ROOT))

from tests.acid.drawn_water import drawn  # noqa: E402

from farwall.acid.equilibrium import equilibrium  # noqa: E402

ONCE = "--once" in sys.argv
FAR = "--far" in sys.argv
COUNT = 60 if ONCE else 1500
AIR_PPM = 10**2.62


def speed(waters):
    taken = []
    for totals, co2 in waters:
        start = time.process_time()
        equilibrium(totals, co2=co2)
        taken.append((time.process_time() - start) * 1000)
    taken.sort()
    print(
        f"one equilibrium: median {statistics.median(taken):.2f} ms of the processor, 95 % under "
        f"{taken[len(taken) * 95 // 100]:.2f}, worst {taken[-1]:.2f} ({len(taken)} waters)"
    )


def left_over(waters):
    worst = {}
    for totals, co2 in waters:
        for name, value in vars(equilibrium(totals, co2=co2).proof).items():
            worst[name] = max(worst.get(name, 0.0), abs(value))
    told = ", ".join(f"{name} {value:.0e}" for name, value in worst.items())
    print(f"most left over, mol/kg: {told}")


def far(waters, database):
    from tests.acid.phreeqc import ph_of

    thin, strong = [], []
    for totals, co2 in waters:
        if database == "pitzer.dat" and totals.ammonia:
            continue
        theirs, strength = ph_of(totals, co2=co2, database=database)
        gap = abs(equilibrium(totals, co2=co2, air_ppm=AIR_PPM).ph - theirs)
        (thin if strength <= 0.3 else strong).append(gap)
    for name, gaps in (("to 0.3 mol/kg", sorted(thin)), ("above", sorted(strong))):
        print(
            f"{database:<12} {name:<14} {len(gaps):5} waters: 95 % within "
            f"{gaps[len(gaps) * 95 // 100]:.3f}, worst {gaps[-1]:.3f}"
        )


if __name__ == "__main__":
    waters = drawn(COUNT, 7)
    equilibrium(waters[0][0])
    speed(waters)
    left_over(waters)
    if FAR:
        for database in ("phreeqc.dat", "pitzer.dat"):
            far(waters, database)
