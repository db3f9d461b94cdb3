"""`farwall log JOB [EVENT key=value …]`: enter what happened, and know at once what to do next."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Sequence
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli.by_number import LOG_KEYS, with_id
from farwall.cli.log_asked import USAGE, Asked, asked_of, options_of, parsed, what_it_carries
from farwall.cli.log_time import is_on, moment_of
from farwall.cli.weather_file import weather_of
from farwall.errors import Mistake, Refused, Unanswerable
from farwall.nouns import dataclass

if TYPE_CHECKING:
    from farwall.cli.log_place import Place
    from farwall.facts.log import Entry, Kept
    from farwall.job.live import Again, Now
    from farwall.job.live.say import Over
    from farwall.job.story import Story

_DONE, _NO = 0, 1
_STRUCK = "struck"
_LATE = timedelta(hours=12)
"""An entry for a minute longer ago is of another day, looked at as it was. Rank: guess."""


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall log` takes."""
    from farwall.facts.log_words import WORDS

    parser.usage = USAGE
    parser.formatter_class = argparse.RawDescriptionHelpFormatter
    wide = max(map(len, WORDS)) + 2
    events = "\n".join(f"  {one.name:<{wide}}{one.what}" for one in WORDS.values())
    parser.epilog = (
        "JOB is a folder with plan.json in it, a plan.json, or a job of the book (--book). The log "
        "lies beside the\nplan in log.jsonl. EVENT is one of:\n"
        f"{events}\n"
        "`farwall log JOB EVENT --help` tells what it carries. Gallons and °F are understood "
        "(tank_gal=1.5, slab_f=70),\ncoats, fields and bands by their numbers (coat=2 "
        "field=2.3 band=2.3.14), rooms by their names.\nat=9:12, at=1:30pm or at_min=72 when it "
        "was not just now; who=NAME. "
        "struck entry=ID takes an entry back: the end\nof its id does. Without EVENT: what to do "
        "now, or with at=9:12, then. Exit 1 when that is a stop."
    )
    options_of(parser)
    parser.add_argument("words", nargs=argparse.REMAINDER, help=argparse.SUPPRESS)


@dataclass(frozen=True)
class _Entered:
    """The log as it is now: its entries, those made just now, and the clock then."""

    kept: Sequence[Kept]
    made: Sequence[Entry]
    clock: datetime


def run(options: argparse.Namespace) -> int:
    """Enter what is told, then print what to do now; 1 when that is a stop or a no."""
    from farwall.cli.log_place import place_of

    options = parsed(options)
    asked = asked_of(options.words)
    if "help" in options:
        return what_it_carries(asked.event) if asked.event else _help()
    with place_of(
        asked.where, job_file=options.job, book=options.book, lessons_file=options.lessons
    ) as place:
        clock = datetime.now().astimezone()
        made = _enter(place, asked, options, clock)
        kept = place.log.entries()
        for line in place.log.torn:
            print(line, file=sys.stderr)
        return _show(place, _Entered(kept, made, clock), asked, options)


def _help() -> int:
    """The help of the command, where it was asked for behind the job."""
    parser = argparse.ArgumentParser(prog="farwall log")
    arguments(parser)
    parser.print_help()
    return _DONE


def _enter(
    place: Place, asked: Asked, options: argparse.Namespace, clock: datetime
) -> tuple[Entry, ...]:
    """What was entered just now; nothing where only the state is asked for."""
    received_at = clock.isoformat(timespec="milliseconds")
    if options.from_file is not None:
        return _from_phone(place, options.from_file, received_at)
    if not asked.event:
        return ()

    from farwall.cli.device import device_name
    from farwall.cli.log_photo import photos_in

    device = device_name(options.device)

    photos = photos_in(asked.event, asked.carried)
    asked = replace(asked, carried=photos.carried)

    def make(there: Sequence[Kept]) -> Sequence[Entry]:
        entry = _made(place, asked, device, there, clock)
        for content in photos.contents:  # on the disk before the entry that names it
            place.log.put_file(content)
        return [entry]

    return place.log.keep(make, received_at=received_at)


def _from_phone(place: Place, path: str, received_at: str) -> tuple[Entry, ...]:
    """The entries that a phone saved, or that come in by stdin, with their photos."""
    from farwall.cli.log_saved import read_saved, saved_in
    from farwall.readers.log_json import entries_from_text

    saved = saved_in(sys.stdin.buffer.read()) if path == "-" else read_saved(Path(path))
    offered = entries_from_text(saved.entries, place.plan)
    for content in saved.photos:  # on the disk before the entry that names it
        place.log.put_file(content)
    return place.log.keep(lambda _: offered, received_at=received_at)


def _made(
    place: Place, asked: Asked, device: str, there: Sequence[Kept], clock: datetime
) -> Entry:  # fmt: skip
    """The entry. One told for another minute claims no place among those of its device."""
    from farwall.readers.log_json import Head, entry_from_words, word_named
    from farwall.store.new_id import new_id

    at = moment_of(asked.at, place.plan, there, clock)
    counted = [one.entry.number for one in there if one.entry.device == device]
    head = Head(
        id=new_id(),
        job=place.job_id,
        at=at.isoformat(timespec="milliseconds"),
        who=asked.who,
        device=device,
        number=0 if asked.at else max(counted, default=0) + 1,
    )
    told = tuple(with_id(one, place.plan, LOG_KEYS) for one in asked.carried)
    if word_named(asked.event).name == _STRUCK:
        told = tuple(_whole_id(one, there) for one in told)
    return entry_from_words(asked.event, told, head, place.plan)


def _whole_id(told: str, there: Sequence[Kept]) -> str:
    """`entry=` with the whole id for its beginning or its end. Raises Refused."""
    key, _, text = told.partition("=")
    if key != "entry":
        return told
    bare = text.replace("-", "").lower()
    ids = [one.entry.id for one in there]
    plain = {name: name.replace("-", "").lower() for name in ids}
    found = [n for n in ids if bare and (plain[n].startswith(bare) or plain[n].endswith(bare))]
    found = [name for name in ids if name == text] or found
    if len(found) == 1:
        return f"entry={found[0]}"
    what = f"{len(found)} entries have {text[:40]} in their id." if found else (
        f"no entry has {text[:40]} at either end of its id."
    )  # fmt: skip
    raise Refused(Mistake("entry", what, "`farwall log JOB --story` shows every id."))


def _show(place: Place, log: _Entered, asked: Asked, options: argparse.Namespace) -> int:
    from farwall.job.aside import of_the_floor, over_by
    from farwall.job.live import again, now
    from farwall.job.story import story

    every, told = (story(place.plan, kept) for kept in (log.kept, of_the_floor(log.kept)))
    at_min = _minute(place, log, asked, told)
    weather = weather_of(options.weather)
    found = now(place.job, place.plan, told, at_min=at_min, weather=weather, lessons=place.lessons)
    us = place.job.wishes.units == "us"
    holds = again(place.plan, told, at_min=at_min, us=us)
    if options.replan:
        return _replanned(place, told, found, holds, options)
    document: dict[str, object] = {}
    lines: list[str] = []
    if log.made:
        document["entered"], entered = _entered(place, log.made, every, us=us)
        lines += entered
    if options.story:
        from farwall.facts.plain import plain
        from farwall.job.story.say import told as said_story

        document["story"] = plain(every)
        lines.append(said_story(place.plan, every, us=us))
    else:
        document |= _said(place, found, holds, over_by(log.kept, told))
        lines += _with_commands(document["said"], found)  # type: ignore[arg-type]
    print(json.dumps(document, ensure_ascii=False) if options.json else "\n".join(lines))
    return _NO if found.stops and not options.story else _DONE


def _with_commands(said: Sequence[str], found: Now) -> list[str]:
    """What is said, with the commands that help; a phone and a screen have keys for them."""
    lines = [
        one.replace("planning again:", "planning again (--replan --out DIR):", 1)
        if one.startswith("The rest is worth planning again:")
        else one
        for one in said
    ]
    asks = any(one.stop for one in found.advice) or any("hides a seam" in one for one in said)
    more = asks and found.field  # with no field in hand there is nothing to stop in
    return [*lines, "`farwall stop` names the next line that hides a seam."] if more else lines


def _minute(place: Place, log: _Entered, asked: Asked, told: Story) -> float:
    """The minute that is asked about: as told, else the clock's while the plan's days last.

    What is entered late on its day is told for its own minute, and what to do is asked of now.
    """
    start = datetime.fromisoformat(place.plan.starts_at)
    if asked.at:
        before = [one for one in log.kept if one.entry not in log.made]
        at = moment_of(asked.at, place.plan, before, log.clock)
        if log.made and is_on(place.plan, log.clock) and at < log.clock < at + _LATE:
            at = log.clock
        return (at - start).total_seconds() / 60
    if is_on(place.plan, log.clock):
        return (log.clock - start).total_seconds() / 60
    return told.ends_min


def _entered(
    place: Place, made: Sequence[Entry], told: Story, *, us: bool
) -> tuple[list[dict[str, object]], list[str]]:  # fmt: skip
    from farwall.job.story.say import line_of
    from farwall.readers.log_json import entry_to_dict

    here = {one.id: one for one in (*told.happened, *told.struck)}
    told_now = [here[one.id] for one in made if one.id in here]
    lines = [f"Entered {line_of(place.plan, one, us=us)}" for one in told_now]
    return [dict(entry_to_dict(one)) for one in made], lines


def _said(place: Place, found: Now, holds: Again, over: Over) -> dict[str, object]:
    from farwall.facts.plain import plain
    from farwall.job.live.say import said_now

    said = said_now(place.plan, found, again=holds.says, over=over)
    return {"now": plain(found), "again": plain(holds), "said": said.splitlines()}


def _replanned(
    place: Place, told: Story, found: Now, holds: Again, options: argparse.Namespace
) -> int:  # fmt: skip
    """The slower answer: the rest of the day laid anew, written as `replan` writes it."""
    if options.out is None:
        raise Refused(Mistake("--out", "Where should the new plan go?", "Say --out DIR."))
    from farwall.job.daylight import daylight_of
    from farwall.job.faults_told import faults_told
    from farwall.job.live.again import so_far_of
    from farwall.job.live.say import said_now
    from farwall.job.replan import replan
    from farwall.job.say_midday import said_again
    from farwall.papers.folder import write_folder
    from farwall.papers.plan_files import files_of
    from farwall.readers.plan_json import plan_to_dict
    from farwall.spray.check import check_plan

    try:
        light = daylight_of(place.job, place.plan.starts_at)
        so_far = so_far_of(place.plan, told, at_min=found.at_min)
        plan = replan(place.plan, so_far, light=light)
    except (Refused, Unanswerable):
        if not options.json:  # the quick answer holds all the same
            print(said_now(place.plan, found, again=holds.says))
        raise
    document = plan_to_dict(plan)
    faults = check_plan(document)
    wishes = place.job.wishes
    units = "metric" if options.metric else wishes.units
    files = files_of(
        plan, document, units=units, notes=wishes.notes,
        language=options.language or wishes.language, revision=options.revision,
    )  # fmt: skip
    write_folder(options.out, files)
    if options.json:
        print(json.dumps(document, ensure_ascii=False))
    else:
        us = units == "us"
        found_wrong = faults_told(document, faults, us=us)
        print(said_again(plan, found_wrong, folder=str(options.out), us=us))
    no_mix = plan.more_mix is not None and plan.more_mix.how == "no"
    bad = bool(faults) or no_mix or any(one.verdict == "cannot" for one in plan.fields)
    return _NO if bad else _DONE
