"""Many spoilt files over all readers, one after another in this process; by hand, for hours.

    python3 run.py test --long                  100,000 of them
    python3 run.py test --long 20000:30000      these; the same numbers are always the same files
    python3 run.py test --long 0:5000 ifc       these of one format

Stops at nothing: each fault is printed with the number that makes it again. Exit 1 when there was
one. A reader that does not come back within the limit is told too, and its stack printed.
"""

import faulthandler
import signal
import sys
import time
from collections import Counter
from types import FrameType

from tests.hostile.mutators import WOUNDS, mutated
from tests.hostile.oracle import Wrong, judged
from tests.hostile.seeds import Seed, seeds

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.apart.limits import CPU_S

EVERY = 1000
MANY = 100_000


class TooLong(BaseException):
    """The reader went past the limit of a file."""


def read_here(seed: Seed, data: bytes) -> Reading | Refused | str:
    """What this process makes of the file; whatever is raised is the answer."""
    try:
        return read_bytes(data, name="spoilt", scale_m_per_unit=seed.scale_m_per_unit)
    except Refused as refusal:
        return refusal
    except (Exception, TooLong) as error:
        place, trace = "", error.__traceback__
        while trace is not None:
            code = trace.tb_frame.f_code
            if "farwall" in code.co_filename:
                place = f"{code.co_filename.rpartition('farwall/')[2]}:{trace.tb_lineno}"
            trace = trace.tb_next
        return f"{type(error).__name__} at {place}: {str(error)[:100]}"


def seed_of(number: int) -> Seed:
    """Formats take turns, so that any stretch of numbers tries all of them."""
    known = seeds()
    return known[number % len(known)]


def tried(numbers: range) -> int:
    """How many of these went wrong; what came of them is printed."""
    signal.signal(signal.SIGVTALRM, _too_long)
    ends: Counter[str] = Counter()
    wrong: Counter[str] = Counter()
    begun, slowest = time.process_time(), (0.0, 0)
    for done, number in enumerate(numbers, 1):
        seed, start = seed_of(number), time.process_time()
        data = mutated(seed, number // len(seeds()))
        faulthandler.dump_traceback_later(6 * CPU_S)
        signal.setitimer(signal.ITIMER_VIRTUAL, CPU_S)
        found = read_here(seed, data)
        signal.setitimer(signal.ITIMER_VIRTUAL, 0)
        faulthandler.cancel_dump_traceback_later()
        slowest = max(slowest, (time.process_time() - start, number))
        try:
            outcome = judged(seed, data, found)
            ends[f"{seed.name}: {outcome.kind}{', told' if outcome.told else ''}"] += 1
        except Wrong as error:
            kind = f"{seed.name}: {str(error)[:160]}"
            wrong[kind] += 1
            if wrong[kind] <= 3:
                wound = WOUNDS[(number // len(seeds())) % len(WOUNDS)].__name__
                print(f"WRONG {number} ({wound}) {kind}", flush=True)
        if done % EVERY == 0:
            spent = time.process_time() - begun
            print(f"{number}: {done} tried, {wrong.total()} wrong, {spent:.0f} s", flush=True)
    print(*(f"{count:7} {end}" for end, count in sorted(ends.items())), sep="\n")
    print(*(f"WRONG {count:5} x {kind}" for kind, count in wrong.most_common()), sep="\n")
    print(f"the slowest, {slowest[1]}, took {slowest[0]:.1f} s of processor time")
    print(f"{len(numbers)} spoilt files from {numbers.start} on, {wrong.total()} wrong")
    return wrong.total()


def _too_long(number: int, frame: FrameType | None) -> None:
    raise TooLong(f"longer than {CPU_S} s")


if __name__ == "__main__":
    first, _, last = (sys.argv[1] if len(sys.argv) > 1 else f"0:{MANY}").partition(":")
    wanted = range(int(first), int(last or MANY))
    if len(sys.argv) > 2:
        at = [seed.name for seed in seeds()].index(sys.argv[2])
        step = len(seeds())
        wanted = range(wanted.start + (at - wanted.start) % step, wanted.stop, step)
    sys.exit(1 if tried(wanted) else 0)
