"""`farwall plan`: the day's plan of a job, replayed before it is shown."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.cli.office_ground import lessons_in
from farwall.cli.paper_words import wishing
from farwall.cli.weather_file import job_out_weather, weather_of
from farwall.errors import Mistake, Refused
from farwall.nouns import dataclass
from farwall.units import measures_own_first

if TYPE_CHECKING:
    from farwall.air.weather import Forecast, WeatherFile
    from farwall.facts.job import Job
    from farwall.facts.lessons import Lessons
    from farwall.facts.plan import Plan
    from farwall.job.plan_job import PlanBegun

_DONE, _NO = 0, 1
_AS_BEFORE = "As planned before: all that the plan hangs on is the same. --fresh plans anew."


@dataclass(frozen=True)
class _Made:
    """A plan with its files, planned now or before; `faults` waits for the checker."""

    plan: Plan
    document: dict[str, object]
    files: dict[str, bytes]
    faults: Callable[[], list[str]]
    before: bool = False


@dataclass(frozen=True)
class Asked:
    """What a plan is asked for with, beside its job.

    lessons: read already; of a book they have no file, and such a plan is made anew each time.
    """

    weather_file: Path | None = None
    van_file: Path | None = None
    lessons_file: Path | None = None
    lessons: Lessons | None = None
    sprayer: str = ""
    order: tuple[str, ...] = ()
    thorough: bool = False

    @property
    def by_book(self) -> bool:
        """Whether its lessons are a book's."""
        return self.lessons is not None and self.lessons_file is None

    @property
    def read(self) -> dict[str, Path | None]:
        """The files beside the job that the plan hangs on."""
        return {
            "weather": self.weather_file,
            "van": self.van_file,
            f"lessons for {self.sprayer}": self.lessons_file,
        }


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall plan` takes."""
    job_out_weather(parser)
    parser.add_argument(
        "--van", metavar="FILE", type=Path, help="what is in the van: sprayer, spare, what to buy"
    )
    parser.add_argument(
        "--order", metavar="ROOM,…", help="spray the rooms in this order, if that is possible"
    )
    parser.add_argument(
        "--lessons",
        metavar="FILE",
        type=Path,
        help="what closed jobs taught (`farwall learn`), for what the job does not tell",
    )
    parser.add_argument(
        "--book", metavar="ADDRESS", help="take the lessons that this book keeps (`learn --keep`)"
    )
    parser.add_argument(
        "--sprayer", metavar="NAME", default="", help="who sprays: whose rate of the lessons"
    )
    parser.add_argument(
        "--thorough",
        action="store_true",
        help="seek younger edges in every field, also where plain bands hold (slower)",
    )
    parser.add_argument(
        "--explain",
        action="store_true",
        help="say why this order, and what --order would cost; without --out nothing is written",
    )
    parser.add_argument(
        "--language",
        choices=("en", "es"),
        help="of the run sheet and the drawings; without it what the job wishes for",
    )
    parser.add_argument(
        "--json", action="store_true", help="print plan.json on stdout (or the explanation)"
    )
    fresh_word(parser)


def fresh_word(parser: argparse.ArgumentParser) -> None:
    """The word of every command that may show a plan as it was planned before."""
    parser.add_argument(
        "--fresh",
        action="store_true",
        help="plan anew, also where the same was planned before",
    )


def run(options: argparse.Namespace) -> int:
    """Write plan.json, run-sheet.pdf and floor.svg; 1 when a field cannot be done as planned."""
    if options.out is None and not options.explain:
        raise Refused(Mistake("--out", "no folder was named.", "Add --out DIR, or --explain."))
    if options.lessons is None and options.book is None and options.sprayer:
        raise Refused(Mistake("--sprayer", "it goes with --lessons.", "Add --lessons FILE."))
    tool = None if options.book or options.out is None else _tool_begun(fresh=options.fresh)
    lessons = _of_book(options.book) if options.lessons is None else lessons_in(options.lessons)
    job = wishing(_read(options.job, fresh=options.fresh), options.language)
    words = tuple(word.strip() for word in (options.order or "").split(",") if word.strip())
    asked = Asked(
        weather_file=options.weather,
        van_file=options.van,
        lessons_file=options.lessons,
        lessons=lessons,
        sprayer=options.sprayer,
        order=_room_ids(job, words),
        thorough=options.thorough,
    )
    if options.explain:
        code = _explained(job, asked, as_json=options.json)
        if options.out is None or code != _DONE:
            return code
    return plan_into(
        job,
        options.out,
        asked,
        as_json=options.json and not options.explain,
        quiet=options.json and options.explain,
        fresh=options.fresh,
        tool=tool,
    )


def _tool_begun(*, fresh: bool) -> Callable[[], bytes | None]:
    """The digest of Farwall itself, for what a plan is kept under, taken beside all else.

    A plan made `fresh` is asked for it at the end only.
    """
    from farwall.beside import AtLeisure
    from farwall.cli.forked import forked
    from farwall.cli.kept_plans import are_kept, tool_digest

    if not are_kept():
        return lambda: None
    return forked(AtLeisure(tool_digest) if fresh else tool_digest)


def _read(path: Path, *, fresh: bool) -> Job:
    """The job, read beside the loading of what is asked of it next: either takes 0.15 s."""
    from importlib import import_module

    from farwall.cli.forked import forked

    import_module("farwall.facts.job")  # what both need
    reading = forked(partial(_job_in, path))
    import_module("farwall.job.plan_job" if fresh else "farwall.spray.check")
    return reading()


def _job_in(path: Path) -> Job:
    from farwall.readers.job_json import read_job  # loaded where the file is read, nowhere else

    return read_job(path)


def _of_book(address: str | None) -> Lessons | None:
    """What the book keeps of its firm's closed jobs; None without a book."""
    if address is None:
        return None
    from farwall.store.book import Book
    from farwall.web.firm import lessons_of

    with Book.open(address) as book:
        return lessons_of(book)


def _explained(job: Job, asked: Asked, *, as_json: bool) -> int:
    """Say why; 1 when the order that was asked for does not stand."""
    from farwall.facts.plain import plain
    from farwall.job.explain import explain
    from farwall.job.say_why import said_why

    found = explain(
        job, weather=_weather(asked.weather_file), order=asked.order, lessons=asked.lessons,
        sprayer=asked.sprayer,
    )  # fmt: skip
    if as_json:
        print(json.dumps(plain(found), ensure_ascii=False))
    else:
        us = job.wishes.units == "us"
        print(measures_own_first(said_why(found, us=us), us=us))
    return _NO if found.asked is not None and not found.asked.stands else _DONE


def _weather(path: Path | None) -> WeatherFile | Forecast | None:
    weather = weather_of(path)
    if weather is not None:
        _say_age(weather)
    return weather


def plan_into(
    job: Job,
    out: Path,
    asked: Asked | None = None,
    *,
    also: dict[str, bytes] | None = None,
    as_json: bool = False,
    quiet: bool = False,
    fresh: bool = False,
    tool: Callable[[], bytes | None] | None = None,
) -> int:
    """Plan `job`, have the checker replay it, write everything into `out`, say what came out.

    What was planned before under the same facts is shown again, unless `fresh`; the checker
    replays it all the same. also: more files for the folder. tool: the digest of Farwall itself,
    where it was begun.
    """
    from farwall.cli.kept_plans import keep_files, key_of, tool_digest

    asked = asked or Asked()
    weather = _weather(asked.weather_file)
    again = _planner(weather, asked)
    tool = tool or (tool_digest if asked.by_book else _tool_begun(fresh=fresh))
    asked_key = partial(
        key_of, job, read=asked.read, order=asked.order, thorough=asked.thorough, tool=tool
    )
    key = None if fresh or asked.by_book else asked_key()
    made = None if key is None else _planned_before(key, us=job.wishes.units == "us")
    if made is None:
        made = _planned(job, again, weather, van_file=asked.van_file)
        key = asked_key() if fresh and not asked.by_book else key
        if key is not None:
            keep_files(key, made.files)
    plan, faults = made.plan, made.faults()

    from farwall.job.say import said
    from farwall.papers.folder import write_folder

    write_folder(out, {**(also or {}), **made.files})
    if as_json:
        print(json.dumps(made.document, ensure_ascii=False))
    elif not quiet:
        us = job.wishes.units == "us"
        print(measures_own_first(said(plan, faults, folder=str(out), us=us), us=us))
    if made.before:
        print(_AS_BEFORE, file=sys.stderr)
    if not as_json and not quiet:
        _say_since_morning(job, plan, again)
    bad = bool(faults) or any(field.verdict == "cannot" for field in plan.fields)
    bad = bad or (plan.go is not None and plan.go.verdict == "no")
    return _NO if bad else _DONE


def _planner(weather: WeatherFile | Forecast | None, asked: Asked) -> Callable[..., PlanBegun]:
    """`plan_begun` with all but the job told; nothing is loaded before a plan is asked for."""
    lessons = asked.lessons or lessons_in(asked.lessons_file)

    def planner(job: Job, **more: Any) -> PlanBegun:
        from farwall.job.plan_job import plan_begun

        return plan_begun(
            job, weather=weather, order=asked.order, thorough=asked.thorough,
            sprayer=asked.sprayer, lessons=lessons, **more,
        )  # fmt: skip

    return planner


def _planned(
    job: Job,
    planner: Callable[..., PlanBegun],
    weather: WeatherFile | Forecast | None,
    *,
    van_file: Path | None,
) -> _Made:
    """The plan made now, with its files."""
    from dataclasses import replace
    from importlib import import_module

    from farwall.cli.forked import forked

    begun = planner(job, beside=forked)
    # While what is told beside its fields is sought by other processes, the fumes are reckoned,
    # and what draws and checks is loaded.
    from farwall.job.acid_day.fumes.caution import with_fumes
    from farwall.papers.plan_files import plan_files_begun
    from farwall.readers.clock_change import with_clock_change
    from farwall.readers.plan_json import plan_to_dict

    import_module("farwall.spray.check")
    cautions = with_fumes(begun.bare, job, weather).cautions
    plan = with_clock_change(replace(begun.whole(), cautions=cautions), job)
    if van_file is not None:
        plan = _with_van(plan, job, van_file)
    document = plan_to_dict(plan)
    files = plan_files_begun(plan, job, document, beside=forked)
    faults = checked_faults(document, us=job.wishes.units == "us")  # while the sheet is set
    for needed_to_keep in ("tempfile", "zipfile"):
        import_module(needed_to_keep)
    return _Made(plan, document, files(), lambda: faults)


def _planned_before(key: str, *, us: bool) -> _Made | None:
    """The plan kept under this key, None when there is none that can be read."""
    from farwall.cli.forked import forked
    from farwall.cli.kept_plans import kept_files
    from farwall.readers.plan_json import plan_from

    files = kept_files(key)
    if files is None or "plan.json" not in files:
        return None
    try:
        document = json.loads(files["plan.json"])
        faults = forked(partial(checked_faults, document, us=us))
        return _Made(plan_from(document, "plan.json"), document, files, faults, before=True)
    except (ValueError, Refused):
        return None


def _with_van(plan: Plan, job: Job, file: Path) -> Plan:
    from dataclasses import replace

    from farwall.job.van.van_plan import van_plan
    from farwall.readers.van_json import read_van

    return replace(plan, van=van_plan(read_van(file), plan, job))


def checked_faults(document: dict[str, object], *, us: bool) -> list[str]:
    """What the checker finds wrong with a plan, in words."""
    from farwall.job.faults_told import faults_told
    from farwall.spray.check import check_plan

    return faults_told(document, check_plan(document), us=us)


def _say_age(weather: WeatherFile | Forecast) -> None:
    """How old a forecast is now; the plan itself tells its age at the first stroke."""
    from datetime import UTC, datetime

    from farwall.air.weather import Forecast
    from farwall.job.slab_words import issued

    if isinstance(weather, Forecast):
        told = issued(weather.age_h(datetime.now(UTC)))
        print(f"{weather.name}: {told}", file=sys.stderr)


def _say_since_morning(job: Job, plan: Plan, again: Callable[[Job], PlanBegun]) -> None:
    """What the check of the morning changed; nothing when it changed no fact of the plan."""
    from farwall.job.replanned import before_morning, what_changed

    before = before_morning(job)
    if before is None:
        return
    was = again(before).whole()
    print("Since the morning's check: " + " ".join(what_changed(was, plan)))


def _room_ids(job: Job, words: tuple[str, ...]) -> tuple[str, ...]:
    """The ids of rooms named by id or as written on the plan; refuses unknown ones, all at once."""
    from farwall.near_word import near_word

    known = {room.id: room.id for room in job.floor.rooms}
    labels = {room.label.casefold(): room.id for room in job.floor.rooms}
    found, mistakes = [], []
    for word in words:
        room = known.get(word) or labels.get(word.casefold())
        if room is not None:
            found.append(room)
            continue
        near = near_word(word.casefold(), [*known, *labels])
        there = f"Did you mean {near}?" if near else f"It has: {', '.join(known)}."
        mistakes.append(Mistake("--order", f"the job has no room {word}.", there))
    if mistakes:
        raise Refused(*mistakes)
    return tuple(dict.fromkeys(found))
