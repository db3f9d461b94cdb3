"""`farwall van VAN.json`: its state; for a job, sprayer and what to buy; after one, the rest."""

from __future__ import annotations

import argparse
import json
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.van import Van

_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall van` takes."""
    parser.add_argument("van", metavar="VAN.json", type=Path, help="what is in the van")
    parser.add_argument(
        "--job", metavar="JOB.json", type=Path, help="what this job needs: sprayer, spare, to buy"
    )
    parser.add_argument(
        "--plan", metavar="PLAN.json", type=Path, help="its plan, where there is one already"
    )
    parser.add_argument(
        "--used",
        metavar="WORD",
        nargs="+",
        default=[],
        help="after a job: sprayer=blue:0.68 (with its flow, L/min), stain=walnut:9.5:7 "
        "(litres, lot), tape-1=40 (by its id)",
    )
    parser.add_argument(
        "--after", metavar="JOB", help="after this job: what its log says was sprayed and mixed"
    )
    parser.add_argument("--book", metavar="ADDRESS", help="JOB is a job of this book")
    parser.add_argument(
        "--on",
        metavar="DATE",
        default="",
        help="the day of the job, 2026-06-08 (else its plan's): what is past its day is left out",
    )
    parser.add_argument("--out", metavar="FILE", type=Path, help="the van afterwards, as a file")
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


def run(options: argparse.Namespace) -> int:
    """Show the van; 1 when no sprayer, or no spare, is sound for the job."""
    from farwall.readers.van_json import read_van

    _insist_day(options.on)
    van = read_van(options.van)
    if options.used or options.after is not None:
        return _after(van, options)
    if options.job is not None:
        return _for_job(van, options)
    if options.plan is not None:
        raise Refused(Mistake("--plan", "whose floor is it?", "Add --job JOB.json."))
    from farwall.facts.plain import plain
    from farwall.job.van.say import said_state
    from farwall.job.van.sprayers import condition

    states = tuple(map(condition, van.sprayers))
    if options.json:
        print(json.dumps({"conditions": plain(states), "van": plain(van)}, ensure_ascii=False))
    else:
        print(said_state(van, states))
    return _DONE


def _insist_day(on: str) -> None:
    """Raises Refused when `on` is told and is no day."""
    try:
        date.fromisoformat(on or "2026-06-08")
    except ValueError:
        raise Refused(Mistake("--on", f"{on} is no day.", "Such as --on 2026-06-08.")) from None


def _for_job(van: Van, options: argparse.Namespace) -> int:
    from farwall.facts.plain import plain
    from farwall.job.plan_job import plan_job
    from farwall.job.van.say import said_for_job
    from farwall.job.van.van_plan import van_plan
    from farwall.readers.job_json import read_job
    from farwall.readers.plan_json import read_plan

    job = read_job(options.job)
    plan = read_plan(options.plan) if options.plan is not None else plan_job(job)
    found = van_plan(van, plan, job, on=options.on)
    if options.json:
        print(json.dumps(plain(found), ensure_ascii=False))
    else:
        print(said_for_job(found))
    return _DONE if found.sprayer and found.spare else _NO


def _after(van: Van, options: argparse.Namespace) -> int:
    from farwall.facts.plain import plain
    from farwall.job.van.after import after
    from farwall.job.van.say import said_state
    from farwall.job.van.sprayers import condition
    from farwall.readers.van_json import used_from, van_to_text

    then = van
    odd: tuple[str, ...] = ()
    if options.after is not None:
        from farwall.cli.closed_jobs import told_at
        from farwall.job.van.used import used_up

        place, story = told_at(options.after, options.book)
        then, odd = after(then, used_up(place.plan, story, van))
    if options.used:
        if not options.on:
            raise Refused(Mistake("--on", "which day was it?", "Say --on 2026-06-08."))
        then, more = after(then, used_from(options.used, options.on))
        odd = (*odd, *more)
    if options.out is not None:
        aside = options.out.with_name(f".{options.out.name}.new")
        aside.write_text(van_to_text(then), encoding="utf-8")
        aside.replace(options.out)
    if options.json:
        print(json.dumps({"van": plain(then), "odd": list(odd)}, ensure_ascii=False))
    else:
        print(said_state(then, tuple(map(condition, then.sprayers))))
        for one in odd:
            print(f"Mind: {one}")
    return _DONE
