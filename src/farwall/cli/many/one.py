"""One job of the many, from its text to its files: what a worker does, wherever it sits.

It leans on nothing but what it is handed, so that a machine without the same folders gives the
same files, and it raises nothing: one bad job never stops the rest.
"""

from __future__ import annotations

import hashlib
import json
import signal
import tempfile
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from farwall import __version__
from farwall.cli.many.nouns import How, OneJob, Outcome, State
from farwall.errors import FarwallError, Refused, Unanswerable

if TYPE_CHECKING:
    from farwall.air.weather import Forecast, WeatherFile


class OverTime(Exception):
    """A job took longer than it may."""


def made_from(job: OneJob, how: How) -> str:
    """SHA-256, as hex, of all that a plan of this job is made from."""
    told = hashlib.sha256()
    for part in (
        __version__.encode(), job.text, how.weather_name.encode(), how.weather, bytes([how.pages]),
    ):  # fmt: skip
        told.update(len(part).to_bytes(8, "big") + part)
    return told.hexdigest()


def plan_one(job: OneJob, how: How) -> Outcome:
    """Plan `job`, have the checker replay it, and give its files. Never raises."""
    began = time.perf_counter()

    def outcome(state: State, *why: str) -> Outcome:
        return Outcome(job.id, state, made_from(job, how), _since(began), tuple(why))

    try:
        with _within(how.most_s):
            return _planned(job, how, began)
    except Refused as refusal:
        return outcome("refused", *filter(None, [refusal.about, *map(str, refusal.mistakes)]))
    except Unanswerable as no:
        return outcome("no", no.reason, *no.remedies)
    except OverTime:
        return outcome("lost", f"It took longer than {how.most_s:g} s.")
    except FarwallError as error:
        return outcome("refused", str(error))
    except Exception as error:  # whatever it is, the other jobs go on, and it is told
        return outcome("failed", f"{type(error).__name__}: {error}")


def _planned(job: OneJob, how: How, began: float) -> Outcome:
    from farwall.facts.numbered import numbered
    from farwall.job.acid_day.fumes.caution import with_fumes
    from farwall.job.faults_told import faults_told
    from farwall.job.plan_job import plan_job
    from farwall.papers.json_text import json_text
    from farwall.papers.plan_files import plan_files
    from farwall.papers.words import listed, room_names
    from farwall.readers.clock_change import with_clock_change
    from farwall.readers.job_json import job_from
    from farwall.readers.plan_json import plan_to_dict
    from farwall.spray.check import check_plan

    facts = job_from(_values(job), job.named)
    weather = _weather(how.weather_name, how.weather)
    plan = with_fumes(plan_job(facts, weather=weather), facts, weather)
    plan = with_clock_change(plan, facts)
    document = plan_to_dict(plan)
    faults = faults_told(document, check_plan(document), us=facts.wishes.units == "us")
    if how.pages:
        files = plan_files(plan, facts, document)
    else:
        files = {"plan.json": (json_text(document) + "\n").encode()}
    cannot = [
        f"field {numbered(plan, one.id)} ({listed(room_names(plan, one.rooms))}) cannot be done"
        for one in plan.fields
        if one.verdict == "cannot"
    ]
    go = ["go or no-go says no"] if plan.go is not None and plan.go.verdict == "no" else []
    against = (*faults, *cannot, *go)
    coats = {one.coat for one in plan.fields}
    area = sum(one.area_m2 for one in plan.fields) / max(len(coats), 1)
    return Outcome(
        job.id, "no" if against else "planned", made_from(job, how), _since(began), against,
        len(plan.fields), round(area, 2), files,
    )  # fmt: skip


def _values(job: OneJob) -> object:
    from farwall.errors import Mistake
    from farwall.readers.json_text import parse

    try:
        text = job.text.decode("utf-8-sig")
    except UnicodeDecodeError:
        what = "it is not text in UTF-8."
        raise Refused(Mistake(job.named, what, "Save it as UTF-8.")) from None
    parsed = parse(text, about=f"{job.named} is not a job yet.")
    if parsed.mistakes:
        raise Refused(*parsed.mistakes, about=f"{job.named} is not a job yet:")
    return json.loads(text)


@cache
def _weather(name: str, content: bytes) -> WeatherFile | Forecast | None:
    """Read once in each worker."""
    if not name:
        return None
    from farwall.readers.any_weather import read_weather

    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / name
        path.write_bytes(content)
        return read_weather(path)


@contextmanager
def _within(seconds: float) -> Iterator[None]:
    """Raise OverTime after so many seconds, where this system and thread know alarms."""
    main = threading.current_thread() is threading.main_thread()
    if seconds <= 0 or not hasattr(signal, "SIGALRM") or not main:
        yield
        return

    def late(_signal: int, _frame: object) -> None:
        raise OverTime

    before = signal.signal(signal.SIGALRM, late)
    signal.setitimer(signal.ITIMER_REAL, seconds)
    try:
        yield
    finally:
        signal.setitimer(signal.ITIMER_REAL, 0)
        signal.signal(signal.SIGALRM, before)


def _since(began: float) -> float:
    return round(time.perf_counter() - began, 3)
