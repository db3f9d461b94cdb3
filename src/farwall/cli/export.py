"""`farwall export FILE --out DIR`: a floor for other programs: GeoJSON, DXF and SVG in layers."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli import answers

if TYPE_CHECKING:
    from farwall.facts.plan import Plan
    from farwall.facts.reading import Reading

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """What to export, and where to."""
    parser.add_argument(
        "file",
        metavar="FILE",
        type=Path,
        help="a plan.json, a job.json, or a drawing of any kind that `farwall read` reads",
    )
    parser.add_argument("--out", metavar="DIR", type=Path, required=True, help="where to write")
    parser.add_argument(
        "--job",
        metavar="JOB.json",
        type=Path,
        help="the job of a plan: its windows and its north are not in the plan itself",
    )
    parser.add_argument(
        "--scale", metavar="METRES_PER_UNIT", type=float, help="of a drawing, as for `farwall read`"
    )
    answers.arguments(parser)
    parser.add_argument("--json", action="store_true", help="print the files' names as JSON")


def run(options: argparse.Namespace) -> int:
    """Write floor.geojson, floor.dxf and floor-layers.svg, whole or not at all."""
    from farwall.papers.exchange.files import exchange_files
    from farwall.papers.folder import write_folder

    reading, name, plan = _exported(options)
    files = exchange_files(reading, name=name, plan=plan)
    write_folder(options.out, files)
    if options.json:
        print(json.dumps({"folder": str(options.out), "files": list(files)}, ensure_ascii=False))
    else:
        print(f"{options.out}: {', '.join(files)}.")
    return _DONE


def _exported(options: argparse.Namespace) -> tuple[Reading, str, Plan | None]:
    """The floor in a file with its name, and its plan where the file is one. Raises Refused."""
    from farwall.errors import Mistake, Refused
    from farwall.job.exchange import exchanged_job, exchanged_plan
    from farwall.readers.hints import Hints
    from farwall.readers.job_json import read_job
    from farwall.readers.plan_json import read_plan

    path, job_file = options.file, options.job
    kind = _kind(path)
    if kind != "plan" and job_file is not None:
        what = "A job beside it is for a plan only."
        raise Refused(Mistake("--job", what, "Leave it out: this file is no plan."))
    if kind == "plan":
        plan = read_plan(path)
        job = read_job(job_file) if job_file is not None else None
        if job is not None and set(job.floor.room_by_id) != {r.id for r in plan.inputs.floor.rooms}:
            what = "The rooms of this job are not those of the plan."
            raise Refused(Mistake("--job", what, "Name the job that was planned."))
        return exchanged_plan(plan, job), plan.job, plan
    if kind == "job":
        job = read_job(path)
        return exchanged_job(job), job.name or job.id, None
    found = answers.read_answered(
        path, scale=options.scale, accept=options.accept, refuse=options.refuse,
        hints=Hints(floors=options.floors or "polygon"),
    )  # fmt: skip
    return found.reading, path.stem, None


def _kind(path: Path) -> str:
    """plan, job or drawing: by the keys of a JSON file, whatever it is called."""
    data = path.read_bytes()
    if not data.lstrip(b"\xef\xbb\xbf \t\r\n").startswith(b"{"):
        return "drawing"
    try:
        found = json.loads(data)
    except (ValueError, RecursionError):
        return "drawing"
    if isinstance(found, dict) and "inputs" in found and "fields" in found:
        return "plan"
    return "job" if isinstance(found, dict) and "floor" in found else "drawing"
