"""What `replan` and `stop` share: the plan, and the day so far by file or by words."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli.by_number import DAY_KEYS, with_id
from farwall.errors import Mistake, Refused

if TYPE_CHECKING:
    from farwall.facts.plan import Plan
    from farwall.facts.so_far import SoFar
    from farwall.job.daylight import Daylight

WORDS = (
    "now=9:12 (or at_min=72; with its date on a later day), done=1.6.4 (the last band done; a "
    "field will do; none: nothing is sprayed yet), "
    "band=1.6.5 (in your hand), tank_gal=1.5 (tank_l), tub_gal=3 (tub_l), "
    "closed=bath:9:40,closet (until when, if known), at=3.2,1.5; of the second of two "
    "at_2, tank_2_gal (tank_2_l), and sprayers=1 where the second leaves. "
    "What is left out is as planned."
)


def common(parser: argparse.ArgumentParser) -> None:
    """The plan and the file; words follow in any order."""
    hidden = argparse.SUPPRESS
    parser.add_argument(
        "--so-far", metavar="FILE", type=Path, default=hidden, help="the day so far, as JSON"
    )
    parser.add_argument(
        "--json", action="store_true", default=hidden, help="one JSON document on stdout"
    )


def with_rest(parser: argparse.ArgumentParser, usage: str) -> None:
    """Let options and words stand in any order, which argparse alone does not allow."""
    parser.usage = usage
    parser.epilog = f"key=value tells the day so far: {WORDS}"
    parser.add_argument("words", nargs=argparse.REMAINDER, help=argparse.SUPPRESS)


def all_words(
    options: argparse.Namespace, parser: argparse.ArgumentParser, **usual: object
) -> argparse.Namespace:
    """The options with those among the words found too; `file` and `told` are what is left."""
    parser.add_argument("file", type=Path)
    parser.add_argument("told", nargs="*")
    space = argparse.Namespace(so_far=None, json=False, **usual)
    for name, value in vars(options).items():
        setattr(space, name, value)
    if not options.words:
        raise Refused(Mistake("", "Which plan?", parser.usage or ""))
    return parser.parse_intermixed_args(options.words, namespace=space)


def plan_and_day(options: argparse.Namespace) -> tuple[Plan, SoFar]:
    """The plan and what is told of the day. Raises Refused."""
    from farwall.readers.plan_json import read_plan
    from farwall.readers.so_far import read_so_far_values, so_far_from, with_words

    plan = read_plan(options.file)
    raw = {} if options.so_far is None else read_so_far_values(options.so_far)
    told = [with_id(word, plan, DAY_KEYS) for word in options.told]
    raw = with_words(raw, told, plan.starts_at, us=not getattr(options, "metric", False))
    if "at_min" not in raw:
        what = "what time is it?"
        raise Refused(Mistake("now", what, "Say now=9:12 by the clock, or at_min=72."))
    return plan, so_far_from(raw)


def light_beside(file: Path, plan: Plan) -> Daylight | None:
    """The light of the days of a plan by `job.json` beside it; None where there is none."""
    from farwall.job.daylight import daylight_of
    from farwall.readers.job_json import read_job

    beside = file.with_name("job.json")
    if not beside.exists():
        return None
    try:
        return daylight_of(read_job(beside), plan.starts_at)
    except Refused:  # no reason to keep the rest of a day from who asks for it
        print(f"{beside} could not be read: the sunset is not known.", file=sys.stderr)
        return None
