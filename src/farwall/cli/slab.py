"""`farwall slab PLAN.json --out FILE.html`: the run sheet for a phone as one file."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Mapping
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.phrasebook import LANGUAGES, Language, speaking

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.facts.plan import Plan

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall slab` takes."""
    parser.epilog = (
        "The file opens on a phone without a server and without signal. It sends nothing: what was "
        "logged on it is saved\nas JSON lines, which `farwall log JOB --from FILE` takes. With a "
        "server: `farwall serve`, then /slab/ID#KEY."
    )
    parser.formatter_class = argparse.RawDescriptionHelpFormatter
    parser.add_argument("plan", type=Path, metavar="PLAN.json")
    parser.add_argument("--out", type=Path, required=True, metavar="FILE.html")
    parser.add_argument(
        "--no-paper", dest="paper", action="store_false",
        help="leave the pages of the paper run sheet out: a small file that prints nothing",
    )  # fmt: skip
    parser.add_argument("--job", metavar="ID", help="the job's id in the log (default: the plan's)")


def run(options: argparse.Namespace) -> int:
    """Write the file. Raises Refused when the plan cannot be read."""
    from farwall.papers.folder import write_folder
    from farwall.papers.run_sheet.pages import run_sheet_pages
    from farwall.readers.plan_json import plan_to_dict, read_plan
    from farwall.web.slab.one_file import one_file
    from farwall.web.slab.pours import pours_of
    from farwall.web.slab.sheet import sheet_of
    from farwall.web.slab.washing import washing_of

    plan = read_plan(options.plan)
    beside = _facts_beside(options.plan)
    told = beside.get("id", "")
    job = options.job or (told if isinstance(told, str) else "") or plan.job or options.plan.stem
    wishes = _wishes(beside)
    pages: tuple[bytes, ...] = ()
    if options.paper:
        pages = run_sheet_pages(
            plan, job_name=plan.job or job, units=wishes.units, notes=wishes.notes,
            language=wishes.language,
        )  # fmt: skip
    washing = washing_of(_job(beside, plan), plan)
    sheet = sheet_of(plan_to_dict(plan), job[:80], wishes=wishes, washing=washing)
    if beside:
        with speaking(wishes.language):
            sheet["pours"] = pours_of(_job(beside, plan))
    content = one_file(sheet, pages)
    write_folder(options.out.resolve().parent, {options.out.name: content})
    print(f"{options.out}: {len(content) / 1000:.0f} KB. Open it on the phone before the day.")
    if not beside:
        print("No job.json lies beside the plan, so it tells gallons and speaks as the phone does: "
              "put the job there, and write it anew.", file=sys.stderr)  # fmt: skip
    print("What is logged there lies on that phone only: save it, then `farwall log --from`.",
          file=sys.stderr)  # fmt: skip
    return _DONE


@dataclass(frozen=True)
class _Wishes:
    """What the job wishes of a screen, as far as the file beside the plan says it."""

    units: Units = "us"
    language: Language = "en"
    notes: str = ""


def _facts_beside(plan: Path) -> dict[str, Any]:
    """The facts of the job.json beside the plan: `farwall log` knows the job by its id."""
    beside = plan.parent / "job.json"
    if not beside.exists():
        return {}
    facts = json.loads(beside.read_text(encoding="utf-8"))
    return facts if isinstance(facts, dict) else {}


def _job(facts: Mapping[str, Any], plan: Plan) -> Job:
    """The job beside the plan; where it is not there or cannot be read, what the plan tells."""
    from farwall.errors import Refused
    from farwall.job.live.job_of_plan import job_of_plan
    from farwall.readers.job_json import job_from

    try:
        return job_from(dict(facts), "The job") if facts else job_of_plan(plan)
    except Refused:
        return job_of_plan(plan)


def _wishes(facts: Mapping[str, Any]) -> _Wishes:
    told = facts.get("wishes")
    wishes = told if isinstance(told, dict) else {}
    told_language = wishes.get("language")
    language: Language = next((one for one in LANGUAGES if one == told_language), "en")
    units: Units = "metric" if wishes.get("units") == "metric" else "us"
    return _Wishes(units, language, str(wishes.get("notes") or ""))
