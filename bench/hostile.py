"""What hostile files cost and what is said of them: the table of `docs/hostile.md`.

Each is read by a process of its own, as `farwall read` does; seconds are that process's processor
time, megabytes the most memory it held. `--once` tries the light ones alone.
"""

import resource
import sys
from os import _exit, fork, waitpid
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent))

from tests.hostile.bombs import Bomb, bombs

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.readers.any_plan import read_content


def told(answer: Reading | Refused) -> str:
    if isinstance(answer, Refused):
        return answer.mistakes[0].what
    notes = (*answer.mended, *answer.left, *answer.asks)
    word = next((note.what for note in notes if note.code != "scale-told"), "nothing")
    return f"*{len(answer.floor.rooms)} rooms read:* {word}"


def row(bomb: Bomb) -> str:
    data = bomb.make()
    try:
        answer: Reading | Refused = read_content(data)
    except Refused as refusal:
        answer = refusal
    spent = resource.getrusage(resource.RUSAGE_CHILDREN)
    seconds, most = spent.ru_utime + spent.ru_stime, spent.ru_maxrss / 1024
    size = f"{len(data) / 1e6:.1f} MB" if len(data) > 100_000 else f"{len(data) / 1e3:.1f} kB"
    return f"| {bomb.name} | {size} | {told(answer)} | {seconds:.1f} | {most:.0f} |"


def main() -> None:
    print("| file | size | what is said | s | MB |\n| --- | --- | --- | --- | --- |", flush=True)
    for bomb in bombs():
        if bomb.heavy and "--once" in sys.argv:
            continue
        child = fork()  # so that each has an account of its own
        if child == 0:
            print(row(bomb), flush=True)
            _exit(0)
        waitpid(child, 0)


if __name__ == "__main__":
    main()
