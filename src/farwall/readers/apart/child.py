"""The process that reads one file: it shuts itself in, reads, answers, ends.

Started by `start` as `python -I -S -c BOOT ORDER`. The file comes as standard input, the answer
goes to standard output. Nothing of any format's library is imported before the doors are shut.
"""

from __future__ import annotations

import gc
import json
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.readers.apart import limits

if TYPE_CHECKING:
    from farwall.readers.apart.guards import Guards

_CHUNK = 1 << 20
_MANY = 400_000
"""New things after which lost ones are looked for."""


def main(order: str) -> None:
    """Do what the order says (JSON: `path`, `hints`, `do`, `also`) and end the process."""
    told = json.loads(order)
    # A drawing makes many small things that live to the end of this process.
    gc.set_threshold(_MANY)
    answers_to = os.dup(1)
    nowhere = os.open(os.devnull, os.O_WRONLY)
    os.dup2(nowhere, 1)  # what a library prints is no answer
    os.dup2(nowhere, 2)
    guards = shut_in(told["path"], limits.MOST_ANSWER_BYTES, told.get("parent"))
    if told["do"] == "guards":
        from farwall.readers.apart.guards import tried

        text = json.dumps(tried(guards)).encode()
    else:
        text = answer(taken_in(0), told["hints"], told["do"], told.get("also"))
    put(answers_to, text)
    os._exit(0)  # nothing is left to be tidied, and a spoilt library might hang over it


def shut_in(path: Sequence[str], answer_bytes: int, parent: int | None = None) -> Guards:
    """Limit this process for good, by all that the system has; what took hold.

    path: the folders imports come from. parent: the process with which this one ends.
    """
    from farwall.readers.apart.guards import Guards
    from farwall.readers.apart.hook import refuse_deeds
    from farwall.readers.apart.landlock import read_only_below
    from farwall.readers.apart.places import readable
    from farwall.readers.apart.powers import end_with, give_up
    from farwall.readers.apart.seccomp import filter_calls

    places = readable(path)
    if parent is not None:
        end_with(parent)
    limited = limits.limit_process(answer_bytes)
    given_up = give_up()
    landlock = read_only_below(places)
    filtered = filter_calls()
    refuse_deeds(places)
    return Guards(limits=limited, powers=given_up, landlock=landlock, seccomp=filtered, hook=True)


def taken_in(file: int) -> bytes:
    """All bytes of an open file, up to one more than is read here."""
    chunks: list[bytes] = []
    left = limits.MOST_FILE_BYTES + 1
    while left and (chunk := os.read(file, min(_CHUNK, left))):
        chunks.append(chunk)
        left -= len(chunk)
    return b"".join(chunks)


def answer(data: bytes, hints: object, do: str = "read", also: object = None) -> bytes:
    """What is in the bytes, as text for the process that asked; never raises.

    hints: what a person told, as JSON values. do: `read` a plan; of a photo, `look` where its sheet
    lies, or lay it `flat` and read it; `prices`: read a price list; `colours`: of a photo, with
    `also` the values of its target; of a photo of a floor, `floor-look`: make it fit for a page,
    `floor`: lay it on the plan, by what `also` tells.
    """
    try:
        return _answer(data, hints, do, also)
    except MemoryError:
        return b'{"broke":"MemoryError"}'
    except BaseException as error:  # whatever it is, it is told and not thrown
        return _broken(error)


def _answer(data: bytes, told: object, do: str, also: object) -> bytes:
    from farwall.errors import Refused
    from farwall.readers.apart import wire
    from farwall.readers.hints import hints_from

    hints = hints_from(told)
    try:
        if do == "read":
            from farwall.readers.any_plan import reading_in

            text = wire.reading_text(reading_in(data, hints))
        elif do == "prices":
            from farwall.readers.price_list.rows import list_in

            text = wire.prices_text(list_in(data))
        elif do in {"floor", "floor-look"}:
            from farwall.readers.apart.floors import floor_text

            text = floor_text(data, also)
        elif do == "colours":
            from farwall.readers.colour_photo.packed import packed
            from farwall.readers.colour_photo.read import read_colour_photo

            text = wire.colours_text(packed(read_colour_photo(data, own_values=also)))  # type: ignore[arg-type]
        else:
            from farwall.readers.photo.shown import photo_shown

            text = wire.photo_text(photo_shown(data, hints, flat=do == "flat"))
    except Refused as refusal:
        return wire.refusal_text(refusal)
    return text if len(text) <= limits.MOST_ANSWER_BYTES else wire.broken_text("TooLong")


def _broken(error: BaseException) -> bytes:
    """The kind of error and where it rose, without a word of the file."""
    trace, place = error.__traceback__, ""
    while trace is not None:
        file = Path(trace.tb_frame.f_code.co_filename).name
        place = f"{file}:{trace.tb_lineno}"
        trace = trace.tb_next
    return json.dumps({"broke": f"{type(error).__name__} at {place}"}).encode("ascii")


def put(file: int, text: bytes) -> None:
    """Write the whole text."""
    left = memoryview(text)
    while left:
        left = left[os.write(file, left) :]


if __name__ == "__main__":
    main(sys.argv[1])
