"""`farwall replan PLAN.json [key=value …] --out DIR`: the rest of the day, from the state told."""

from __future__ import annotations

import argparse
import json
from pathlib import Path

from farwall.cli.midday_words import all_words, common, light_beside, plan_and_day, with_rest
from farwall.errors import Mistake, Refused

_USAGE = "farwall replan PLAN.json [key=value …] [--so-far FILE] --out DIR [--metric] "
_USAGE += "[--language en|es] [--revision N] [--json]"
_DONE, _NO = 0, 1


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall replan` takes."""
    _options(parser)
    with_rest(parser, _USAGE)


def _options(parser: argparse.ArgumentParser) -> None:
    hidden = argparse.SUPPRESS
    parser.add_argument("--out", metavar="DIR", type=Path, default=hidden, help="where to write")
    parser.add_argument(
        "--metric", action="store_true", default=hidden, help="the sheet in metres and litres"
    )
    parser.add_argument(
        "--language", choices=("en", "es"), default=hidden, help="of the run sheet and the drawings"
    )
    parser.add_argument(
        "--revision", metavar="N", type=int, default=hidden,
        help="of the facts, for the foot of the sheet; the plan does not tell it",
    )  # fmt: skip
    common(parser)


def run(options: argparse.Namespace) -> int:
    """Write plan.json, run-sheet.pdf and floor.svg of the day planned again; 1 when it is a no."""
    parser = argparse.ArgumentParser(prog="farwall replan", usage=_USAGE)
    _options(parser)
    options = all_words(options, parser, out=None, metric=False, language="en", revision=None)
    if options.out is None:
        raise Refused(Mistake("--out", "Where should the new plan go?", "Say --out DIR."))
    from farwall.job.faults_told import faults_told
    from farwall.job.replan import replan
    from farwall.job.say_midday import said_again
    from farwall.papers.folder import write_folder
    from farwall.papers.plan_files import files_of
    from farwall.readers.plan_json import plan_to_dict
    from farwall.spray.check import check_plan

    plan, so_far = plan_and_day(options)
    again = replan(plan, so_far, light=light_beside(options.file, plan))
    document = plan_to_dict(again)
    faults = check_plan(document)
    files = files_of(
        again, document, units="metric" if options.metric else "us",
        language=options.language, revision=options.revision,
    )  # fmt: skip
    write_folder(options.out, files)
    us = not options.metric
    if options.json:
        print(json.dumps(document, ensure_ascii=False))
    else:
        told = faults_told(document, faults, us=us)
        print(said_again(again, told, folder=str(options.out), us=us))
    no_mix = again.more_mix is not None and again.more_mix.how == "no"
    bad = bool(faults) or no_mix or any(field.verdict == "cannot" for field in again.fields)
    return _NO if bad else _DONE
