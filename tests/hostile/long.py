"""Many spoilt files over all readers, one after another in one process; by hand, for an hour.

    python3 run.py test --long                  100,000 of them
    python3 run.py test --long 20000:30000      these; the same numbers are always the same files
    python3 run.py test --long 0:5000 ifc       these of one format

Stops at nothing: each fault is printed with the number that makes it again, and counted. A stretch
of numbers is read by one process without walls, so that a fault in a compiled library (it ends the
process) and a loop in one (nothing interrupts it) are seen as what they are; then the next number
is gone on with. Exit 1 when there was a fault.
"""

import json
import mmap
import os
import select
import signal
import sys
import time
from collections import Counter
from collections.abc import Sequence
from types import FrameType

from tests.hostile.mutators import WOUNDS, mutated
from tests.hostile.oracle import Wrong, judged
from tests.hostile.seeds import Seed, seeds

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_bytes
from farwall.readers.apart.limits import CPU_S

STRETCH = 1000
MANY = 100_000
_SHOWN = 3
Tally = Counter[str]


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


def data_of(number: int) -> bytes:
    """The file of this number."""
    return mutated(seed_of(number), number // len(seeds()))


def outcome_of(number: int) -> str:
    """What came of one file, in words; they begin with WRONG where a reader did what none may."""
    seed, data = seed_of(number), data_of(number)
    signal.setitimer(signal.ITIMER_VIRTUAL, CPU_S)
    found = read_here(seed, data)
    signal.setitimer(signal.ITIMER_VIRTUAL, 0)
    try:
        outcome = judged(seed, data, found)
    except Wrong as error:
        return f"WRONG {seed.name}: {str(error)[:160]}"
    return f"{seed.name}: {outcome.kind}{', told' if outcome.told else ''}"


def stretch_read(numbers: Sequence[int]) -> Tally:
    """What came of these, by a process for all of them, and a further one after each that fell."""
    tally, slowest = Tally(), 0.0
    while numbers:
        at = mmap.mmap(-1, 8)
        answers = os.memfd_create("answers")
        child = os.fork()
        if child == 0:
            _be_reader(numbers, at, answers)
        code = _watched(child, at)
        os.lseek(answers, 0, os.SEEK_SET)
        with os.fdopen(answers, "rb") as file:
            lines = file.read().splitlines()
        for line in lines:
            words, spent = json.loads(line)
            tally[words] += 1
            slowest = max(slowest, spent)
        numbers = numbers[len(lines) :]
        if code != 0 and numbers:
            how = "nothing interrupted it" if code == -signal.SIGKILL else f"it ended by {code}"
            tally[f"WRONG {seed_of(numbers[0]).name}: {how}"] += 1
            print(f"{numbers[0]}: {how}", flush=True)
            numbers = numbers[1:]
    if slowest > CPU_S / 2:
        print(f"the slowest of these took {slowest:.1f} s of processor time", flush=True)
    return tally


def _be_reader(numbers: Sequence[int], at: mmap.mmap, answers: int) -> None:
    signal.signal(signal.SIGVTALRM, _too_long)
    shown: Tally = Tally()
    for done, number in enumerate(numbers):
        at[:8] = done.to_bytes(8, "little")
        begun = time.process_time()
        words = outcome_of(number)
        os.write(answers, json.dumps([words, time.process_time() - begun]).encode() + b"\n")
        shown[words] += 1
        if words.startswith("WRONG") and shown[words] <= _SHOWN:
            wound = WOUNDS[(number // len(seeds())) % len(WOUNDS)].__name__
            print(f"{number} ({wound}): {words}", flush=True)
    os._exit(0)


def _watched(child: int, at: mmap.mmap) -> int:
    """How it ended; killed where it stays at one number for twelve times the limit of a file."""
    told, seen, since = os.pidfd_open(child), b"", time.monotonic()
    poll = select.poll()
    poll.register(told, select.POLLIN)
    while not poll.poll(1000):
        now = at[:8]
        if now != seen:
            seen, since = now, time.monotonic()
        elif time.monotonic() - since > 12 * CPU_S:
            os.kill(child, signal.SIGKILL)
    os.close(told)
    return os.waitstatus_to_exitcode(os.waitpid(child, 0)[1])


def _too_long(number: int, frame: FrameType | None) -> None:
    raise TooLong(f"longer than {CPU_S} s")


def main(words: Sequence[str]) -> int:
    """Read what is asked for and print what came of it."""
    first, _, last = (words[0] if words else f"0:{MANY}").partition(":")
    wanted = range(int(first), int(last or MANY))
    if len(words) > 1:
        at, step = [seed.name for seed in seeds()].index(words[1]), len(seeds())
        wanted = range(wanted.start + (at - wanted.start) % step, wanted.stop, step)
    tally, done = Tally(), 0
    for start in range(0, len(wanted), STRETCH):
        stretch = wanted[start : start + STRETCH]
        tally += stretch_read(stretch)
        done += len(stretch)
        wrong = sum(count for said, count in tally.items() if said.startswith("WRONG"))
        print(f"up to {stretch[-1]}: {done} read, {wrong} wrong", flush=True)
    print(*(f"{count:7} {said}" for said, count in sorted(tally.items())), sep="\n")
    print(f"{done} spoilt files from {wanted.start} on, {wrong} wrong")
    return 1 if wrong else 0


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
