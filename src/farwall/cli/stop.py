"""`farwall stop PLAN.json [key=value …] --within-min 2`: where to stop soon."""

from __future__ import annotations

import argparse
import json
import math

from farwall.cli.midday_words import all_words, common, plan_and_day, with_rest
from farwall.errors import Mistake, Refused

_USAGE = "farwall stop PLAN.json [key=value …] [--so-far FILE] --within-min MINUTES [--json]"
_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall stop` takes."""
    _options(parser)
    with_rest(parser, _USAGE)


def _options(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--within-min",
        metavar="MINUTES",
        type=float,
        default=argparse.SUPPRESS,
        help="in how many minutes at the latest (default 2)",
    )
    common(parser)


def run(options: argparse.Namespace) -> int:
    """Say where to stop; 1 when a seam will show."""
    parser = argparse.ArgumentParser(prog="farwall stop", usage=_USAGE)
    _options(parser)
    options = all_words(options, parser, within_min=2.0)
    within = options.within_min
    if not math.isfinite(within) or within < 0:
        what = f"{within:g} is no time to stop in."
        raise Refused(Mistake("--within-min", what, "Minutes, 0 or more."))
    from farwall.facts.plain import plain
    from farwall.job.say_midday import said_stop
    from farwall.job.stop import stop

    plan, so_far = plan_and_day(options)
    found = stop(plan, so_far, within_min=within)
    if options.json:
        print(json.dumps(plain(found), ensure_ascii=False))
    else:
        print(said_stop(plan, found, within_min=within))
    return _NO if found.how == "feather" else _DONE
