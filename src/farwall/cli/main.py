"""The command line: parse, call one use case, show. Nothing is reckoned here.

Each command lives in a module of its own with `arguments(parser)` and
`run(options) -> exit code`; only the one that is called gets imported, so that
`farwall --help` answers at once.
"""

from __future__ import annotations

import argparse
import gc
import importlib
import os
import sys
from collections.abc import Sequence

from farwall.errors import FarwallError, Refused, Unanswerable

_MANY, _VERY_MANY = 100_000, 1_000_000
_PLANS = ("plan", "demo")
"""Commands that make a plan and end."""
DONE, ANSWER_IS_NO, CALLERS_MISTAKE = 0, 1, 2
STOPPED = 130
"""Ctrl-C, as every shell tells it."""

COMMANDS = {
    "demo": "plan an invented house, to see what comes out",
    "read": "read a drawing: rooms, openings, exits, what was mended and what is left",
    "walk-sheet": "blank sheets to fill in while walking a floor with a tape",
    "job": "make a job from a plan, with defaults for all else",
    "enquiry": "the first call: twelve answers to a visit, a no, or a rough range",
    "go": "go or no-go: what stands against this floor, what to ask, test and sign first",
    "plan": "plan a job: fields, order, bands, mix, clocks; plan.json, run sheet, floor drawing",
    "acid": "strength, fumes, neutralising, wash day, waste water, cards and labels of a job",
    "colour": "what the samples say, the next coat, and what a photo of the floor shows",
    "pour": "may these be poured together, in this order, in this vessel; unknown means refused",
    "seal": "plan the seal day: hours, crossed coats, litres, waits; seal.json, sheet, drawing",
    "plan-many": "plan every job of a folder, by all processors or several machines; resumable",
    "days": "the calendar: one house by the hour, many houses and crews by the day",
    "check": "replay a plan on the floor and say what is wrong with it",
    "picture": "draw a plan: the floor, each field, and the floor at any moment",
    "export": "a floor for other programs: GeoJSON, DXF, SVG, in layers; read back without loss",
    "learn": "what closed jobs teach: coverage, pace, waits, hours; which job moved what",
    "price": "what to buy, hours, cost with its range, what to ask for the job",
    "papers": "every paper of a job as PDF: before the pour, quote, day, hand-over",
    "call-back": "a call after hand-over: likely causes with reasons, whose, what to take along",
    "van": "what is in the van: a sound sprayer and a spare, what to buy, what a job used up",
    "sync": "send what was logged without signal to the book, fetch what others logged",
    "serve": "the job book for phones and screens, over HTTP",
    "people": "who may come into the book; a link for who forgot their password",
    "authority": "a certificate of your own that phones on the local network can be made to trust",
    "slab": "the run sheet for a phone as one file that needs no signal",
    "sun": "where the sun falls on the floor, room by room and hour by hour",
    "year": "which days and hours of a typical year suit a floor: stain, second coat, sealer",
    "replan": "plan the rest of the day again: what is done stays, from the state told",
    "log": "enter what happens on the slab, and know at once what to do next",
    "stop": "where to stop in the next minutes so that no seam shows, or where to feather",
    "book": "the job book: its jobs, a look through it, backups, open formats",
    "reckon": "one sum: coverage, batch, evaporation, open time and others",
    "bench": "score the planner on floors that are always the same",
    "schema": "the JSON Schema of a job, a plan, a day so far, a van or a price list",
}


def main(argv: Sequence[str] | None = None) -> int:
    """Exit code: 0 done, 1 the answer is no, 2 the caller's mistake, 130 stopped by Ctrl-C."""
    code = _done(argv)
    if argv is None:
        gc.freeze()  # the program ends: nobody needs to look through all it holds once more
        if _command(sys.argv[1:]) in _PLANS:
            _leave(code)
    return code


def _leave(code: int) -> None:
    """End the process here: all is written, and to take down what was loaded takes 0.05 s."""
    try:
        sys.stdout.flush()
        sys.stderr.flush()
    except (OSError, ValueError):
        return  # nobody reads: Python tells it in its own way
    os._exit(code)


def _command(words: Sequence[str]) -> str | None:
    return next((word for word in words if not word.startswith("-")), None)


def _done(argv: Sequence[str] | None) -> int:
    # A plan makes many small things that live to its end: looking for lost ones after every 700
    # of them is a tenth of its time.
    gc.set_threshold(_MANY)
    words = list(sys.argv[1:] if argv is None else argv)
    command = _command(words)
    if argv is None:
        _own_process(command)
        _let_all_be_said(words)
    if command is not None and command not in COMMANDS:
        return _say(*_no_command(command), code=CALLERS_MISTAKE)
    parser = _parser(command)
    options = parser.parse_args(words)
    if options.command is None:
        parser.print_help()
        return DONE
    module = importlib.import_module(_module(options.command))
    try:
        return int(module.run(options))
    except Refused as refusal:
        return _say(refusal.about, *map(str, refusal.mistakes), code=CALLERS_MISTAKE)
    except Unanswerable as no:
        return _say(no.reason, *no.remedies, code=ANSWER_IS_NO)
    except FarwallError as error:
        return _say(str(error), code=CALLERS_MISTAKE)
    except KeyboardInterrupt:
        return _say("Stopped before it was done.", code=STOPPED)
    except BrokenPipeError:
        sys.stderr.close()
        return DONE
    except OSError as error:
        place = f"{error.filename}: " if error.filename else ""
        return _say(f"{place}{error.strerror or error}.", code=CALLERS_MISTAKE)


def _no_command(word: str) -> tuple[str, ...]:
    from pathlib import Path
    from shlex import quote

    from farwall.near_word import near_word

    ending = Path(word).suffix.lower()
    if ending == ".json":
        then = f"A file stands behind its command: farwall plan {quote(word)} --out DIR"
    elif ending:
        then = f"A file stands behind its command: farwall read {quote(word)}"
    else:
        near = near_word(word[:40], COMMANDS)
        then = f"Did you mean {near}?" if near else ""
    return (f"{word[:80]}: there is no such command.", then, "`farwall --help` lists them all.")


def _own_process(command: str | None) -> None:
    """Make a process that is ours alone ready, before anything is loaded for its command."""
    # None of pydantic's plugins is used, and to look for them reads what is said of each library.
    os.environ.setdefault("PYDANTIC_DISABLE_PLUGINS", "__all__")
    if command not in _PLANS:
        return
    # No matrix of a plan is large: threads for their products would only be begun and ended anew
    # with each fork. And a plan of 12 rooms ends before it has lost anything worth looking for.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    gc.set_threshold(_VERY_MANY)


def _let_all_be_said(words: Sequence[str]) -> None:
    """Have no letter that a terminal lacks end a command; nothing is loaded where all are there."""
    if all((getattr(one, "encoding", "") or "").lower() == "utf-8"
           for one in (sys.stdout, sys.stderr)):  # fmt: skip
        return
    from farwall.cli.outlet import let_all_be_said

    let_all_be_said(words)


def _parser(command: str | None) -> argparse.ArgumentParser:
    from farwall import __version__

    parser = argparse.ArgumentParser(
        prog="farwall",
        description="Plan the spraying of an acid-stained slab: from the far wall to the door.",
        epilog="The sheet of the material in hand, local codes and licensed practice win over "
        "anything printed here.",
    )
    parser.add_argument("--version", action="version", version=f"farwall {__version__}")
    commands = parser.add_subparsers(dest="command", metavar="COMMAND")
    for name, what in COMMANDS.items():
        sub = commands.add_parser(name, help=what, description=what)
        if name == command:
            importlib.import_module(_module(name)).arguments(sub)
    return parser


def _module(command: str) -> str:
    return f"farwall.cli.{command.replace('-', '_')}"


def _say(*lines: str, code: int) -> int:
    for line in lines:
        if line:
            print(line, file=sys.stderr)
    return code
