"""`farwall job`: a job from a drawing, with defaults for all else; or an edited job."""

from __future__ import annotations

import argparse
import json
import os
import tempfile
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli import answers
from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.facts.plan import Ground

_DONE = 0
_MEASURE = (
    "drop seconds a room (survey.rooms.ID.drop_s), slab temperature (survey.slab_f or slab_c), "
    "and a sample's coverage and sheen-loss minutes (samples)"
)


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall job` takes."""
    parser.usage = "farwall job FILE --out JOB.json [key=value …]"
    parser.epilog = (
        "FILE is a drawing, or a job to change. key=value is a fact of the job, such as "
        "crew.helper=true tools.tank_gal=2 coats.0.cut=1:2 survey.slab_f=66; lists count from 0 "
        "or go by id, `none` takes a fact away. `farwall schema job` names every key."
    )
    _options(parser)
    # Options and settings may stand in any order after FILE, which argparse alone does not allow.
    parser.add_argument("words", nargs=argparse.REMAINDER, help=argparse.SUPPRESS)


def _options(parser: argparse.ArgumentParser) -> None:
    hidden = argparse.SUPPRESS
    parser.add_argument(
        "--out", metavar="JOB.json", type=Path, default=hidden, help="what to write"
    )
    parser.add_argument(
        "--storey", metavar="NAME", default=hidden, help="which storey, by name or id"
    )
    parser.add_argument(
        "--scale",
        metavar="METRES_PER_UNIT",
        type=float,
        default=hidden,
        help="metres that a drawing unit is",
    )
    answers.arguments(parser, default=hidden)
    parser.add_argument(
        "--json", action="store_true", default=hidden, help="print the job on stdout"
    )


def _all_words(options: argparse.Namespace) -> argparse.Namespace:
    """The options with those among the words found too. Raises Refused when FILE or out misses."""
    parser = argparse.ArgumentParser(
        prog="farwall job", usage="farwall job FILE --out JOB.json [key=value …]"
    )
    _options(parser)
    parser.add_argument("file", type=Path)
    parser.add_argument("settings", nargs="*")
    usual = argparse.Namespace(storey=None, scale=None, json=False, accept=None, refuse=None,
                               floors=None)  # fmt: skip
    for name, value in vars(options).items():
        setattr(usual, name, value)
    if not options.words:
        raise Refused(Mistake("", "Which drawing?", "farwall job FILE --out JOB.json"))
    found = parser.parse_intermixed_args(options.words, namespace=usual)
    if not hasattr(found, "out"):
        raise Refused(Mistake("--out", "Where should the job go?", "Say --out JOB.json."))
    return found


def run(options: argparse.Namespace) -> int:
    """Write the job and say what in it is a default. Raises Refused with every mistake."""
    from farwall.readers.job_json import job_from, job_to_dict, job_to_text
    from farwall.readers.job_settings import with_settings

    options = _all_words(options)
    raw = job_to_dict(_job_in(options))
    raw = with_settings(raw, options.settings)
    job = job_from(raw, options.out.name)
    text = job_to_text(job)
    _write_whole(options.out, text)
    print(text if options.json else _said(job, options.out), end="" if options.json else "\n")
    return _DONE


def _job_in(options: argparse.Namespace) -> Job:
    """The job that a file holds, or the one that its drawing gives."""
    data = _job_data(options.file)
    if data is not None:
        from farwall.readers.job_json import read_job

        return read_job(options.file)
    from farwall.job.from_reading import job_from_reading
    from farwall.readers.hints import Hints

    found = answers.read_answered(
        options.file,
        scale=options.scale,
        accept=options.accept,
        refuse=options.refuse,
        hints=Hints(floors=options.floors or "polygon"),
    )
    exits_told = any(setting.startswith("exits.") for setting in options.settings)
    return job_from_reading(
        found.reading, storey=options.storey, job_id=options.file.stem[:80], exits_told=exits_told
    )


def _job_data(path: Path) -> object | None:
    """The file's values when it looks like a job of ours, None when it is something else."""
    from farwall.readers.apart.start import insist_bearable
    from farwall.readers.json_text import MOST_BYTES

    try:
        what_it_is = path.stat()
        insist_bearable(what_it_is, path.name)
        if what_it_is.st_size > MOST_BYTES:
            return None
        head = path.read_bytes()[:64].lstrip(b"\xef\xbb\xbf \t\r\n")
    except OSError as error:
        what = f"{error.strerror or error}."
        raise Refused(Mistake(str(path), what, "Check the name and the folder.")) from None
    if not head.startswith(b"{"):
        return None
    try:
        data = json.loads(path.read_bytes())
    except (ValueError, RecursionError):
        return None
    ours = isinstance(data, dict) and "floor" in data and "type" not in data
    return data if ours else None


def _write_whole(path: Path, text: str) -> None:
    """Put the text in place whole or not at all."""
    try:
        handle, aside = tempfile.mkstemp(prefix=f".{path.name}-", dir=path.parent)
    except OSError as error:
        what = f"cannot be written ({error.strerror})."
        raise Refused(Mistake(str(path), what, "Name a folder that is there.")) from error
    try:
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
        Path(aside).chmod(0o644)
        Path(aside).replace(path)
    except OSError as error:
        Path(aside).unlink(missing_ok=True)
        what = f"cannot be written ({error.strerror})."
        raise Refused(Mistake(str(path), what, "Name another file.")) from error


def _said(job: Job, out: Path) -> str:
    """What was written, which of its figures are defaults, and what asks to be measured."""
    from farwall.facts.defaults import settle
    from farwall.job.sunlight import missing_for_sun
    from farwall.units import ft2_from_m2

    area_m2 = sum(room.polygon.shape.area for room in job.floor.rooms)
    ways = ", ".join(way.opening for way in job.exits)
    area = f"{ft2_from_m2(area_m2):,.0f} ft² ({area_m2:.1f} m²)"
    lines = [f"{out}: {len(job.floor.rooms)} rooms, {area}, ways out: {ways}."]
    settled = settle(job)
    for rank, title in (
        ("common practice", "Defaults by common practice (no source):"),
        ("guess", "Guesses of ours, until somebody measures:"),
    ):
        taken = [ground for ground in settled.grounds if ground.rank == rank]
        if taken:
            lines += [title, *(f"  {_figure(ground)}" for ground in taken)]
    lines += settled.warnings
    lacks = missing_for_sun(job)
    if lacks:
        lines.append(f"For the sun through its windows put in: {', '.join(lacks)}.")
    lines.append(f"Measure and put in what you can: {_MEASURE}.")
    lines.append(f"Then: farwall plan {out} --out DIR")
    return "\n".join(lines)


def _figure(ground: Ground) -> str:
    unit = f" {ground.unit}" if ground.unit else ""
    return f"{ground.name} = {ground.value}{unit}"
