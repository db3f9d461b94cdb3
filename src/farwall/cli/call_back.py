"""`farwall call-back`: a call after hand-over: likely causes, whose, what to take."""

from __future__ import annotations

import argparse
import json
from typing import TYPE_CHECKING

from farwall.cli.office_ground import office_arguments, office_ground
from farwall.job.office.ground import handed_over_on

if TYPE_CHECKING:
    pass

_DONE = 0


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall call-back` takes."""
    from farwall.job.call_back.asked import QUESTIONS

    office_arguments(parser)
    told = "; ".join(
        f"{one.key}={'|'.join(one.answers)}" if one.answers else f"{one.key}=…" for one in QUESTIONS
    )
    parser.add_argument(
        "told", metavar="KEY=VALUE", nargs="*", help=f"what the caller says: {told}"
    )
    parser.add_argument("--json", action="store_true", help="print all of it as JSON")


def run(options: argparse.Namespace) -> int:
    """Tell it."""
    from farwall.facts.plain import plain
    from farwall.job.call_back import call_from, triage_of
    from farwall.job.call_back.say import said

    ground = office_ground(options)
    rooms = {one.id: one.label for one in ground.job.floor.rooms}
    latitude = ground.job.place.latitude_deg
    call = call_from(
        options.told, rooms, handed_over=handed_over_on(ground),
        north=None if latitude is None else latitude > 0,
    )  # fmt: skip
    found = triage_of(ground.job, ground.plan, ground.story, call, ground.lessons)
    if options.json:
        print(json.dumps(plain(found), ensure_ascii=False))
    else:
        print("\n".join(said(found)))
    return _DONE
