"""`farwall days`: from pour to hand-over, one house by the hour, many houses by the day."""

from __future__ import annotations

import argparse
import json
from datetime import UTC, date, datetime, time
from pathlib import Path
from typing import TYPE_CHECKING

from farwall.cli.paper_words import paper_words
from farwall.cli.weather_file import weather_ahead
from farwall.errors import Mistake, Refused
from farwall.units import measures_own_first

if TYPE_CHECKING:
    from farwall.facts.job import Job
    from farwall.job.plan_days import Answer, Ask

_DONE, _NO = 0, 1
_WEEK = ("mon", "tue", "wed", "thu", "fri", "sat", "sun")


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall days` takes."""
    parser.epilog = (
        "DAY is a date like 2026-05-14 or a day of the week, the first from the start on. "
        "`--rain` and `--away` are questions: what would move? The first answer is held to "
        "as far as may be."
    )
    parser.add_argument("jobs", metavar="JOB.json", type=Path, nargs="*", help="jobs to be placed")
    parser.add_argument(
        "--check", metavar="FILE", type=Path, help="read a days.json again and say what is wrong"
    )
    parser.add_argument(
        "--weather", metavar="FILE", type=Path, action="append", default=[],
        help="an hourly EPW weather file, or a forecast as CSV or JSON; both: the forecast for its "
        "own days, the file for all others",
    )  # fmt: skip
    parser.add_argument(
        "--lessons", metavar="FILE", type=Path, help="what closed jobs taught, for the hours"
    )
    parser.add_argument("--crews", metavar="N", type=int, default=1, help="vans (default 1)")
    parser.add_argument("--people", metavar="N", type=int, default=2, help="in each (default 2)")
    parser.add_argument("--from", dest="begins", metavar="DATE", help="the first day")
    parser.add_argument("--days", metavar="N", type=int, help="how many days to look ahead")
    parser.add_argument(
        "--free", metavar="[JOB/]DATE", action="append", default=[],
        help="not before this day (for one job, or for all)",
    )  # fmt: skip
    parser.add_argument(
        "--due", metavar="[JOB/]DATE", action="append", default=[], help="to be handed over by"
    )
    parser.add_argument("--rain", metavar="DAY,…", default="", help="what if it rains then?")
    parser.add_argument(
        "--away", metavar="[JOB/]TRADE:DAY", action="append", default=[],
        help="what if this trade has the house that day?",
    )  # fmt: skip
    parser.add_argument("--out", metavar="DIR", type=Path, help="write days.json, tape and pages")
    parser.add_argument("--ics", metavar="FILE", type=Path, help="write a calendar file (RFC 5545)")
    parser.add_argument(
        "--stamp", metavar="MOMENT", help="the moment that the calendar file is stamped with"
    )
    paper_words(parser, what="the tape and the pages")
    parser.add_argument("--json", action="store_true", help="print one JSON document")


def run(options: argparse.Namespace) -> int:
    """0 when all is placed in time and the checker agrees; 1 when not; all written anyway."""
    from farwall.job.house_days import begun_before
    from farwall.job.plan_days import house_ids, plan_days
    from farwall.job.say_days import said_days
    from farwall.readers.job_json import read_job

    if options.check is not None:
        return _check(options)
    if not options.jobs:
        raise Refused(Mistake("jobs", "None is named.", "Name a job file, or --check a days.json."))
    if options.screens and len(options.jobs) > 1:
        raise Refused(
            Mistake("--screens", "It is the address of one house.", "Name one job, or leave it.")
        )
    jobs = [read_job(path) for path in options.jobs]
    weather = weather_ahead(options.weather)
    lessons = None
    if options.lessons is not None:
        from farwall.readers.lessons_json import read_lessons

        lessons = read_lessons(options.lessons)
    ask = asked(options, jobs)
    if len(jobs) == 1 and options.begins is None and not ask.free:
        ask = begun_before(jobs[0], ask, weather=weather, lessons=lessons)
    answer = plan_days(jobs, ask, weather=weather, lessons=lessons)
    if options.out is not None:
        from farwall.papers.days_files import days_files
        from farwall.papers.folder import write_folder

        by_id = dict(zip(house_ids(jobs), jobs, strict=True))
        files = days_files(
            answer.document, by_id, language=options.language, screens=options.screens
        )
        write_folder(options.out, files)
    if options.ics is not None:
        _write_ics(options, answer)
    if options.json:
        print(json.dumps(answer.document, ensure_ascii=False))
    else:
        us = all(one.wishes.units == "us" for one in jobs)
        print(measures_own_first(said_days(answer, us=us, folder=str(options.out or "")), us=us))
    late = any(one.late_days for one in answer.calendar.houses)
    return _NO if answer.faults or late else _DONE


def _check(options: argparse.Namespace) -> int:
    """1 when the calendar in a file has faults."""
    from dataclasses import asdict

    from farwall.days.check import check_days
    from farwall.readers import json_text

    told = json_text.parse(
        json_text.read_text(options.check), about=f"{options.check.name} is no calendar."
    )
    faults = check_days(told.data if isinstance(told.data, dict) else {})
    if options.json:
        print(json.dumps({"faults": [asdict(one) for one in faults]}, ensure_ascii=False))
    else:
        lines = [f"{one.code} {one.house} {one.at}: {one.what}" for one in faults]
        print("\n".join(lines) or "The calendar holds.")
    return _NO if faults else _DONE


def asked(options: argparse.Namespace, jobs: list[Job]) -> Ask:
    """The words of the command line as a question. Raises `Refused` with all mistakes at once."""
    from farwall.job.plan_days import Ask, first_day, house_ids
    from farwall.readers.zones import zone_of

    words = _Words(house_ids(jobs), first_day(jobs))
    if options.begins is not None:
        words.begins = words.day("--from", options.begins)
    for name, least in (("crews", 1), ("people", 2), ("days", 14)):
        value = getattr(options, name)
        if value is not None and value < least:
            why = " Nobody works alone with acid." if name == "people" else ""
            words.mistakes.append(Mistake(f"--{name}", f"{value} is less than {least}.{why}"))
    ask = Ask(
        begins=words.begins,
        crews=options.crews,
        people=options.people,
        days=options.days,
        rain=tuple(words.day("--rain", one) for one in options.rain.split(",") if one.strip()),
        away=tuple(words.away(one) for one in options.away),
        free=words.by_house("--free", options.free),
        due=words.by_house("--due", options.due),
        zone=zone_of(jobs),
    )
    if words.mistakes:
        raise Refused(*words.mistakes)
    return ask


class _Words:
    """Reads days and houses from words, and keeps what is wrong with them."""

    def __init__(self, ids: list[str], begins: date) -> None:
        self.ids = ids
        self.begins = begins
        self.mistakes: list[Mistake] = []

    def day(self, where: str, word: str) -> date:
        """A date, or the first such day of the week from the start on."""
        from datetime import timedelta

        word = word.strip()
        short = word.lower()[:3]
        if short in _WEEK and word.lower().isalpha():
            return self.begins + timedelta(days=(_WEEK.index(short) - self.begins.weekday()) % 7)
        try:
            return date.fromisoformat(word)
        except ValueError:
            what = f"“{word}” is no day."
            self.mistakes.append(Mistake(where, what, "Write 2026-05-14, or thu."))
            return self.begins

    def house(self, where: str, name: str) -> str:
        """The id of a house, as named or the only one there is."""
        if name and name not in self.ids:
            there = f"There are: {', '.join(self.ids[:8])}."
            self.mistakes.append(Mistake(where, f"there is no job {name}.", there))
        if not name and len(self.ids) > 1:
            self.mistakes.append(
                Mistake(where, "it does not say which house.", f"Write {self.ids[0]}/… before it.")
            )
        return name or self.ids[0]

    def away(self, word: str) -> tuple[str, str, date]:
        """House, trade and day of `HOUSE/TRADE:DAY`."""
        place, _, rest = word.rpartition("/")
        trade, colon, day = rest.rpartition(":")
        if not colon or not trade:
            self.mistakes.append(Mistake("--away", f"“{word}” names no trade or no day.",
                                         "Write plumber:tue."))  # fmt: skip
            return (self.ids[0], rest, self.begins)
        return (self.house("--away", place), trade, self.day("--away", day))

    def by_house(self, where: str, words: list[str]) -> dict[str, date]:
        """Dates by house id; without one the date is for all."""
        found: dict[str, date] = {}
        for word in sorted(words, key=lambda one: "/" in one):
            place, _, day = word.rpartition("/")
            names = [self.house(where, place)] if place else self.ids
            found |= dict.fromkeys(names, self.day(where, day))
        return found


def _write_ics(options: argparse.Namespace, answer: Answer) -> None:
    from farwall.papers.calendar_file import calendar_file

    earlier = options.ics.read_bytes().decode() if options.ics.exists() else ""
    stamp = datetime.combine(answer.calendar.question.ahead.begins.date(), time(), UTC)
    if options.stamp is not None:
        try:
            stamp = datetime.fromisoformat(options.stamp)
        except ValueError:
            what = f"“{options.stamp}” is no moment."
            raise Refused(Mistake("--stamp", what, "Write 2026-05-11T08:00:00Z.")) from None
        if stamp.tzinfo is None:
            raise Refused(Mistake("--stamp", "It has no offset.", "Write it like -06:00, or Z."))
    text = calendar_file(answer.document, stamp=stamp, earlier=earlier)
    options.ics.parent.mkdir(parents=True, exist_ok=True)
    aside = options.ics.with_name(f".{options.ics.name}.new")
    aside.write_bytes(text.encode())
    aside.replace(options.ics)
