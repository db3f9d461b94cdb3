"""`farwall picture PLAN.json --out DIR`: the floor, each field and telling moments as drawings."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.plan import Plan

_MOST_MOMENTS = 24


def arguments(parser: argparse.ArgumentParser) -> None:
    """The plan, where to draw, and what of it."""
    parser.add_argument("plan", metavar="PLAN.json", type=Path, help="a plan that `plan` wrote")
    parser.add_argument("--out", metavar="DIR", type=Path, required=True, help="where to write")
    parser.add_argument("--coat", metavar="ID", help="the coat to draw (the first one without)")
    parser.add_argument(
        "--at", metavar="MIN,…", help="moments to draw, in minutes from the start (else six)"
    )
    parser.add_argument("--units", choices=("us", "metric"), default="us", help="units on drawings")
    parser.add_argument("--json", action="store_true", help="print the files' names as JSON")


def run(options: argparse.Namespace) -> int:
    """Write floor.svg, moments.svg and field-1.svg, field-2.svg and so on, whole or not at all."""
    from farwall.papers.folder import write_folder
    from farwall.papers.plan_files import picture_files
    from farwall.readers.plan_json import read_plan

    plan = read_plan(options.plan)
    mistakes = [*_coat_mistakes(plan, options.coat), *_moment_mistakes(options.at)]
    if mistakes:
        raise Refused(*mistakes)
    at = tuple(float(word) for word in options.at.split(",")) if options.at else ()
    files = picture_files(plan, coat=options.coat, minutes=at, units=options.units)
    write_folder(options.out, files)
    if options.json:
        print(json.dumps({"folder": str(options.out), "files": list(files)}, ensure_ascii=False))
    else:
        print(f"{options.out}: {', '.join(files)}.")
    return 0


def _coat_mistakes(plan: Plan, coat: str | None) -> list[Mistake]:
    known = list(dict.fromkeys(field.coat for field in plan.fields))
    if coat is None or coat in known:
        return []
    return [Mistake("--coat", f"the plan has no coat {coat}.", f"It has: {', '.join(known)}.")]


def _moment_mistakes(at: str | None) -> list[Mistake]:
    mistakes = []
    words = at.split(",") if at else []
    for word in words:
        try:
            if not 0 <= float(word) < float("inf"):
                raise ValueError
        except ValueError:
            remedy = "Write minutes from the plan's start, such as --at 5,12.5,40."
            mistakes.append(Mistake("--at", f"{word or 'nothing'} is not a minute.", remedy))
    if len(words) > _MOST_MOMENTS:
        mistakes.append(
            Mistake("--at", f"{len(words)} moments are too many.", f"At most {_MOST_MOMENTS}.")
        )
    return mistakes
