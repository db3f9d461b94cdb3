"""How often the wall that was misread is named: 1,000 houses of 12 rooms, walked with a tape.

Tape 5 mm, walls 0.2 degrees out of square, one wall misread by 100 mm or more. Wanted: named first
in 90 of 100. `--once`: 20 houses. Seeds from 0.
"""

import os
import statistics
import sys
import time

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

from farwall.bench.walk_slips import slipped, slipped_beside
from farwall.bench.walks import walked
from farwall.floor.walk.adjust import adjusted
from farwall.floor.walk.held import advice
from farwall.floor.walk.lay import lay_of
from farwall.floor.walk.net import net_of
from farwall.floor.walk.suspect import by_danish, by_least_sum, by_weight, find

ONCE = "--once" in sys.argv
HOUSES = 20 if ONCE else 1000
OTHERS = 10 if ONCE else 200
CHECKS = ("none", "one", "advised", "two", "across")


def share(hits: list[bool]) -> str:
    return f"{100 * sum(hits) / max(len(hits), 1):5.1f} %"


def is_it(row, slip, kind="wall") -> bool:
    return row.kind == kind and row.room == slip.room and row.wall == slip.wall


def measured(seed: int, checks: str):
    """A walk without a slip; `advised`: one diagonal a room, then the check that is asked for."""
    if checks != "advised":
        return walked(seed, checks=checks)
    first = walked(seed, checks="one")
    net = net_of(first, lay_of(first))
    return walked(seed, checks="one", more=advice(first, net, adjusted(net)))


def houses(checks: str) -> None:
    first, second, alarms, quiet, plain, rows, seconds = [], [], [], [], [], [], []
    by_how: dict[str, list[bool]] = {}
    without_ways, danish, least, sure = [], [], [], []
    for seed in range(HOUSES):
        clean = measured(seed, checks)
        lay = lay_of(clean)
        net = net_of(clean, lay)
        quiet.append(find(clean, net, adjusted(net)).alarm)
        walk, slip = slipped(clean, seed)
        start = time.process_time()
        net = net_of(walk, lay)
        whole = adjusted(net)
        found = find(walk, net, whole)
        seconds.append(time.process_time() - start)
        rows.append(len(net.rows))
        hits = [is_it(net.rows[one.row], slip) for one in found.suspects]
        alarms.append(found.alarm)
        first.append(found.alarm and hits[0])
        if found.alarm:
            sure.append((found.suspects[0].chance, hits[0]))
        second.append(found.alarm and any(hits[:2]))
        by_how.setdefault(slip.how, []).append(first[-1])
        plain.append(is_it(net.rows[by_weight(whole, net)[0]], slip))
        told = find(walk, net, whole, known=False)
        without_ways.append(told.alarm and is_it(net.rows[told.suspects[0].row], slip))
        if seed < OTHERS and checks == "one":
            danish.append(is_it(net.rows[by_danish(net)[0]], slip))
            least.append(is_it(net.rows[by_least_sum(net)[0]], slip))
    print(
        f"\n{HOUSES} houses, diagonals a room: {checks}; about {statistics.median(rows):.0f} rows"
    )
    print(f"  named first, with an alarm        {share(first)}")
    print(f"  among the first two               {share(second)}")
    for how in sorted(by_how):
        print(
            f"    misread in the way `{how}`".ljust(36)
            + f"{share(by_how[how])} of {len(by_how[how])}"
        )
    mean = 100 * statistics.fmean(one for one, _ in sure)
    right = share([hit for _, hit in sure])
    print(f"  chance told of the first, mean    {mean:5.1f} %; it was in {right}")
    print(f"  alarm given                       {share(alarms)}")
    print(f"  alarm without any slip            {share(quiet)}   (level 5 %)")
    print(f"  first, ways of misreading unknown {share(without_ways)}")
    print(f"  first by Baarda's test alone      {share(plain)}")
    if danish:
        print(f"  first by the Danish way           {share(danish)} of {len(danish)}")
        print(f"  first by the least sum            {share(least)} of {len(least)}")
    print(f"  processor time a walk             {1000 * statistics.median(seconds):5.0f} ms")


def beside() -> None:
    """A slip beside the walls, one diagonal a room."""
    named: dict[str, list[bool]] = {}
    for seed in range(OTHERS):
        clean = walked(seed)
        walk, slip = slipped_beside(clean, seed)
        net = net_of(walk, lay_of(walk))
        found = find(walk, net, adjusted(net))
        row = net.rows[found.suspects[0].row]
        place = slip.wall
        if slip.how == "diagonal":
            place = walk.rooms[slip.room].diagonals[slip.wall].start
        hit = row.kind == slip.how and row.room == slip.room and row.wall == place
        named.setdefault(slip.how, []).append(found.alarm and hit)
    print(f"\n{OTHERS} houses, the slip beside the walls, named first:")
    for how in sorted(named):
        print(f"    {how}".ljust(36) + f"{share(named[how])} of {len(named[how])}")


def rough() -> None:
    """The tape and the walls twice as bad as the sums believe, one diagonal a room."""
    first, quiet = [], []
    for seed in range(OTHERS):
        clean = walked(seed, rough=2.0)
        net = net_of(clean, lay_of(clean))
        quiet.append(find(clean, net, adjusted(net)).alarm)
        walk, slip = slipped(clean, seed)
        net = net_of(walk, lay_of(walk))
        found = find(walk, net, adjusted(net))
        first.append(found.alarm and is_it(net.rows[found.suspects[0].row], slip))
    print(f"\n{OTHERS} houses, tape 10 mm and walls 0.4 degrees out of square:")
    print(f"  named first, with an alarm        {share(first)}")
    print(f"  alarm without any slip            {share(quiet)}")


if __name__ == "__main__":
    for each in CHECKS:
        houses(each)
    beside()
    rough()
