"""Plans of real houses, read where they lie: what our readers can read today, and what not yet.

One of them comes with the source of Farwall, under `tests/published`. Others
are read from a folder that the caller names; nothing is copied. Only the floor
is taken: all other facts are those of the bench.
"""

from __future__ import annotations

from pathlib import Path

from farwall.bench.nouns import Case, bench_job
from farwall.errors import Refused
from farwall.facts.reading import Reading
from farwall.job.from_reading import job_from_reading
from farwall.nouns import dataclass
from farwall.readers.any_plan import read_plan

OUR_FOLDER = Path(__file__).parents[3] / "tests" / "published" / "data" / "plans"
OUR_PLAN = "single_storey_house_inches.dxf"
SUFFIXES = {".dxf", ".dwg", ".geojson", ".ifc", ".gml", ".xml", ".svg", ".pdf"}


@dataclass(frozen=True)
class NotRead:
    """A plan that is not among the cases, and why."""

    name: str
    why: str


def real_cases(
    folder: Path | None = None, *, ours: Path = OUR_FOLDER
) -> tuple[tuple[Case, ...], tuple[NotRead, ...]]:
    """A case for every storey of every plan that can be read; and the plans that cannot.

    Raises OSError when `folder` is not there.
    """
    files = {OUR_PLAN: ours / OUR_PLAN}
    if folder is not None:
        files |= {path.name: path for path in folder.iterdir() if path.suffix.lower() in SUFFIXES}
    cases: list[Case] = []
    unread: list[NotRead] = []
    for name, path in sorted(files.items()):
        if not path.exists():
            unread.append(NotRead(name, "not there: it comes with the source of Farwall only."))
            continue
        try:
            reading = read_plan(path)
        except Refused as refusal:
            unread.append(NotRead(name, "not read yet: " + _first(refusal)))
            continue
        try:
            cases += _cases(name, reading)
        except Refused as refusal:
            unread.append(NotRead(name, "read, but no job comes of it yet: " + _first(refusal)))
    return tuple(cases), tuple(unread)


def _first(refusal: Refused) -> str:
    more = len(refusal.mistakes) - 1
    return refusal.mistakes[0].what + (f" (and {more} more)" if more else "")


def _cases(name: str, reading: Reading) -> list[Case]:
    built = {room.storey for room in reading.floor.rooms}
    storeys = [storey for storey in reading.storeys if storey.id in built]
    if len(storeys) < 2:
        return [_case(name, reading, None)]
    return [_case(f"{name}, {one.name or one.id}", reading, one.id) for one in storeys]


def _case(name: str, reading: Reading, storey: str | None) -> Case:
    job = job_from_reading(reading, storey=storey)
    return Case(name, bench_job(name, job.floor, job.exits))
