"""What may come of a spoilt file, and what may not."""

import re
from collections import Counter
from dataclasses import dataclass
from functools import cache

from tests.hostile.seeds import Seed
from tests.hostile.soundness import keeps_grammar

from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.floor.faults import faults_of
from farwall.readers.any_plan import read_bytes
from farwall.readers.apart import wire

_BESIDE = {"north", "windows", "water"}
_MACHINE = re.compile(
    r"Traceback|Error\b|Exception\b|<class|object at 0x|NoneType|\bNone\b|File \""
)
LONGEST_SENTENCE = 700


class Wrong(AssertionError):
    """A reader did what none may do."""


@dataclass(frozen=True)
class Outcome:
    """What came of a file: `read` a floor, read `nothing` of a floor, or `refused`."""

    kind: str
    told: bool
    """Whether something was said that is not said of the sound file."""


def judged(seed: Seed, data: bytes, found: Reading | Refused | str) -> Outcome:
    """The outcome of a spoilt file. Raises Wrong.

    found: a reading, a refusal, or what the reader broke on.
    """
    if isinstance(found, str):
        raise Wrong(f"the reader broke: {found}")
    if isinstance(found, Refused):
        _insist_calm(found)
        return Outcome("refused", told=True)
    _insist_sound(found)
    told = _said(found) - _said(sound_reading(seed))
    if not told and not _same(found, sound_reading(seed)) and not keeps_grammar(data):
        raise Wrong("another floor came of a file that breaks its grammar, without a word")
    return Outcome("read" if found.floor.rooms else "nothing", told=bool(told))


@cache
def sound_reading(seed: Seed) -> Reading:
    """What is in the file before it is spoilt."""
    try:
        return read_bytes(seed.data, scale_m_per_unit=seed.scale_m_per_unit)
    except Refused:  # no reader for this kind yet
        return read_bytes(b'{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,0]]]}')


def _insist_calm(refusal: Refused) -> None:
    if not refusal.mistakes:
        raise Wrong("a refusal without a sentence")
    for mistake in refusal.mistakes:
        sentence = str(mistake)
        if not mistake.what.strip() or _MACHINE.search(sentence):
            raise Wrong(f"no calm sentence: {sentence!r}")
        if len(sentence) > LONGEST_SENTENCE:
            raise Wrong(f"a sentence of {len(sentence)} letters: {sentence[:200]!r}")


def _insist_sound(reading: Reading) -> None:
    try:
        back = wire.answer_in(wire.reading_text(reading))
    except (ValueError, wire.Unsound) as error:
        raise Wrong(f"a reading that cannot be sent: {error!r}") from error
    if back != reading:
        raise Wrong("a reading that does not come back the same")
    if reading.scale_m_per_unit is not None and reading.floor.rooms:
        words = " ".join(note.what.lower() for note in reading.left)
        faults = faults_of(reading.floor, reading.exits)
        untold = [str(fault) for fault in faults if fault.what.lower() not in words]
        if untold:
            raise Wrong(f"a floor with faults that are not told: {untold[:3]}")
    if not reading.floor.rooms and not _said(reading):
        raise Wrong("no room and no word")
    for note in (*reading.mended, *reading.left, *reading.asks):
        if not note.code or not note.what.strip() or _MACHINE.search(note.what):
            raise Wrong(f"no calm note: {note}")


def _said(reading: Reading) -> Counter[tuple[str, str]]:
    """What is told of the file; what sun, air and water are asked for is no word on it."""
    notes = (*reading.mended, *reading.left, *reading.asks)
    return Counter((note.code, note.what) for note in notes if note.code not in _BESIDE)


def _same(one: Reading, other: Reading) -> bool:
    return _measures(one) == _measures(other)


def _measures(reading: Reading) -> tuple[object, ...]:
    """Rooms and openings as they are laid and stained, to the millimetre; names are no measure."""
    floor = reading.floor
    rooms = sorted(round(room.polygon.shape.area, 3) for room in floor.rooms)
    openings = sorted((one.kind, round(one.width_m or 0, 3)) for one in floor.openings)
    return rooms, openings, reading.scale_m_per_unit
