"""A drawing read for the command line, its repairs accepted or refused by their numbers."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.reading import Note, Reading
    from farwall.job.repairs import Answered
    from farwall.readers.hints import Hints

_MOST_DIGITS = 6
_METRES = {"in": 0.0254, "ft": 0.3048, "mm": 0.001, "cm": 0.01, "m": 1.0}
"""By definition [nist-hb44]."""


def arguments(parser: argparse.ArgumentParser, *, default: object = None) -> None:
    """The words by which notes are answered."""
    parser.add_argument(
        "--accept",
        metavar="N,…",
        default=default,
        help="do what these notes propose; `farwall read` numbers them",
    )
    parser.add_argument(
        "--refuse",
        metavar="N,…",
        default=default,
        help="undo or contradict these notes: a guessed name goes, a slab left out is a room",
    )
    parser.add_argument(
        "--floors",
        choices=("polygon", "shell"),
        default=default,
        help="of a building model whose floor polygons lie beside its walls: the floors of its "
        "shells",
    )


def read_answered(
    path: Path, *, scale: float | None, accept: str | None, refuse: str | None,
    hints: Hints | None = None,
) -> Answered:  # fmt: skip
    """The reading of a drawing with its notes answered.

    Where the unit is refused that overruled the file's header, the drawing is read again by the
    header. All else is then read anew, so that nothing more can be answered in the same breath.
    Raises Refused.
    """
    from farwall.job.repairs import Answered, answered, numbered
    from farwall.readers.any_plan import read_plan

    reading = read_plan(path, scale_m_per_unit=scale, hints=hints)
    yes, no = _numbers("--accept", accept), _numbers("--refuse", refuse)
    notes = numbered(reading)
    unit = next((n for n in no if 1 <= n <= len(notes) and _is_unit(notes[n - 1], reading)), None)
    if unit is None:
        return answered(reading, accept=yes, refuse=no)
    if len(yes) + len(no) > 1:
        what = f"note {unit} is the unit, by which all else is read anew."
        raise Refused(Mistake("--refuse", what, "Refuse it alone, then look at the notes again."))
    metres = header_metres(reading)
    again = read_plan(path, scale_m_per_unit=metres, hints=hints)
    said = f"The unit was refused: read again by the file's header, {metres:g} m a drawing unit."
    return Answered(again, {0: said})


def header_metres(reading: Reading) -> float | None:
    """Metres of the unit that the file's header names, None where it names none."""
    return _METRES.get(reading.header_unit)


def _is_unit(note: Note, reading: Reading) -> bool:
    return note.code == "unit-overruled" and header_metres(reading) is not None


def _numbers(name: str, words: str | None) -> list[int]:
    """The numbers of a list joined by commas, each once. Raises Refused with all that are none."""
    parts = [word.strip() for word in words.split(",")] if words else []
    wrong = [word for word in parts if not (word.isdecimal() and len(word) <= _MOST_DIGITS)]
    if wrong:
        said = ", ".join(f"“{word}”" for word in wrong)
        raise Refused(Mistake(name, f"{said}: no number of a note.", f"Say {name} 3,5."))
    return sorted({int(word) for word in parts})
