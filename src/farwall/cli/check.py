"""`farwall check PLAN.json [--job JOB.json] [--json]`: replay a plan and say what is wrong."""

from __future__ import annotations

import argparse
import json
from collections.abc import Mapping
from dataclasses import asdict
from pathlib import Path
from typing import Any

from farwall.errors import Mistake, Refused
from farwall.job.faults_told import FaultWords
from farwall.spray.check import Fault, Unreadable, check_plan

STANDS, HAS_FAULTS = 0, 1
SHOWN = 20


def arguments(parser: argparse.ArgumentParser) -> None:
    """The plan, the job beside it if it is to be compared, and the shape of the answer."""
    parser.add_argument("plan", metavar="PLAN.json", type=Path, help="a plan that `plan` wrote")
    parser.add_argument(
        "--job", metavar="JOB.json", type=Path, help="the job whose facts the plan should rest on"
    )
    parser.add_argument(
        "--metric",
        action="store_true",
        help="tell metres, litres and 24 hours (with --job: its own)",
    )
    parser.add_argument("--json", action="store_true", help="one JSON document on stdout")


def run(options: argparse.Namespace) -> int:
    """0 when the plan stands, 1 when it has faults; raises `Refused` when it cannot be read."""
    plan = _loaded(options.plan)
    if not isinstance(plan, Mapping):
        raise Refused(
            _mistake("an object with the keys of a plan is expected."), about=_about(options.plan)
        )
    job = _facts(options.job) if options.job else None
    us = job["wishes"]["units"] == "us" if job else not options.metric
    try:
        faults = check_plan(plan, job=job)
    except Unreadable as error:
        raise Refused(*_mistakes(error), about=_about(options.plan)) from error
    if options.json:
        print(json.dumps({"faults": [asdict(fault) for fault in faults]}, ensure_ascii=False))
    else:
        _show(plan, faults, us=us)
    return HAS_FAULTS if faults else STANDS


def _about(path: Path) -> str:
    return f"{path} cannot be read as a plan:"


def _mistakes(error: Unreadable) -> list[Mistake]:
    shown = [Mistake(where="", what=what) for what in error.mistakes[:SHOWN]]
    more = len(error.mistakes) - SHOWN
    if more > 0:
        shown.append(Mistake(where="", what=f"… and {more} more."))
    return [*shown, _mistake("Plan the job again with `farwall plan`, or mend the file.", "")]


def _mistake(what: str, remedy: str = "Is it the plan.json that `farwall plan` wrote?") -> Mistake:
    return Mistake(where="", what=what, remedy=remedy)


def _show(plan: Mapping[str, object], faults: list[Fault], *, us: bool) -> None:
    if not faults:
        print("The plan stands: the replay finds no fault.")
        return
    words = FaultWords.of(plan, us=us)
    for fault in faults:
        print(f"{fault.code:<14} {words.told(fault.what)}")
    print(f"{len(faults)} {'fault' if len(faults) == 1 else 'faults'}. Do not spray by this plan.")


def _facts(path: Path) -> dict[str, Any]:
    """The facts in a job file as plain values in SI; raises `Refused` with its mistakes."""
    from farwall.readers.job_json import job_to_dict, read_job

    return job_to_dict(read_job(path))


def _loaded(path: Path) -> object:
    """The JSON in a file; `Refused` with a calm line when there is none."""
    try:
        text = path.read_text(encoding="utf-8-sig")
        return json.loads(text, object_pairs_hook=_once, parse_constant=_no_constant)
    except UnicodeDecodeError as error:
        raise Refused(_mistake("it is not text in UTF-8."), about=f"{path}:") from error
    except RecursionError as error:
        raise Refused(_mistake("its values are nested too deep."), about=f"{path}:") from error
    except ValueError as error:
        raise Refused(_mistake(f"it is not JSON: {error}."), about=f"{path}:") from error


def _once(pairs: list[tuple[str, object]]) -> dict[str, object]:
    found = dict(pairs)
    if len(found) != len(pairs):
        raise ValueError("a key stands twice in one object")
    return found


def _no_constant(word: str) -> object:
    raise ValueError(f"{word} is no JSON number")
