"""`farwall slab PLAN.json --out FILE.html`: the run sheet for a phone as one file."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

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
    parser.add_argument("--job", metavar="ID", help="the job's id in the log (default: the plan's)")


def run(options: argparse.Namespace) -> int:
    """Write the file. Raises Refused when the plan cannot be read."""
    from farwall.papers.folder import write_folder
    from farwall.readers.plan_json import plan_to_dict, read_plan
    from farwall.web.slab.one_file import one_file
    from farwall.web.slab.sheet import sheet_of

    plan = read_plan(options.plan)
    job = options.job or _job_beside(options.plan) or plan.job or options.plan.stem
    content = one_file(sheet_of(plan_to_dict(plan), job[:80]))
    write_folder(options.out.resolve().parent, {options.out.name: content})
    print(f"{options.out}: {len(content) / 1000:.0f} KB. Open it on the phone before the day.")
    print("What is logged there lies on that phone only: save it, then `farwall log --from`.",
          file=sys.stderr)  # fmt: skip
    return _DONE


def _job_beside(plan: Path) -> str:
    """The id that `farwall log` takes for this plan: that of the job.json beside it."""
    beside = plan.parent / "job.json"
    if not beside.exists():
        return ""
    facts = json.loads(beside.read_text(encoding="utf-8"))
    found = facts.get("id", "") if isinstance(facts, dict) else ""
    return found if isinstance(found, str) else ""
