"""How long ten days of weather take for one house: slab, air, sun in it, every clock, sealing.

Processor time, from a forecast in hand (ten days back and ten ahead) to all answers. The first
sun of a process also loads what it is reckoned by, which is told apart.
"""

import math
import time
from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta
from pathlib import Path

from farwall.air.sealers import limits_of
from farwall.air.sealing import HourToSeal, may_seal
from farwall.air.weather import Forecast
from farwall.facts.defaults import settle
from farwall.facts.job import Job, Sighting, Survey
from farwall.job.lasting import Lasting, lasting_of
from farwall.job.sunlight import sunlight_of
from farwall.job.waits import Waits
from farwall.readers.job_json import read_job

HOUSE = Path(__file__).resolve().parents[1] / "examples" / "thistle-end" / "job.json"
DAYS = 10
SEEN = (Sighting("dry to recoat", 130.0, room=None), Sighting("dry-down before sealing", 1500.0))


def foretold(start: datetime) -> Forecast:
    """Twenty invented days about the start: cool nights, a dry afternoon."""
    hours = range(-24 * DAYS, 24 * DAYS)
    wave = [math.cos(2 * math.pi * ((start.hour + n) % 24 - 15) / 24) for n in hours]
    return Forecast(
        start - timedelta(days=DAYS),
        tuple(17 + 7 * one for one in wave),
        tuple(55 - 20 * one for one in wave),
        tuple(3 + one for one in wave),
        issued_at=start - timedelta(hours=6),
    )


def house() -> tuple[Job, datetime]:
    job = read_job(HOUSE)
    start = datetime.fromisoformat(job.starts_at or "2026-05-14T08:00:00-06:00")
    start = start.replace(minute=0, second=0, microsecond=0)
    return replace(job, survey=replace(job.survey, **_unread(job.survey)), seen=SEEN), start


def _unread(survey: Survey) -> dict[str, None]:
    return {
        name: None for name in ("slab_c", "air_c", "rh_percent", "air_speed_m_s")
        if getattr(survey, name) is not None
    }  # fmt: skip


def clocks(found: Lasting) -> None:
    """Every clock of every coat, and the open time of every room for ten hours of the first day."""
    waits = Waits(found)
    coats = found.job.coats
    rooms = tuple(room.id for room in found.job.job.floor.rooms)
    for n, coat in enumerate(coats):
        last = n == len(coats) - 1
        waits.open_time(coat, 60.0)
        dry = waits.dry(coat, 60.0, last=last)
        if last:
            waits.after(coat, 120.0, dry)
        found.open_times(rooms, coat, 0.0, 600.0)


def sealing(found: Lasting) -> None:
    """Every hour's word on sealer, in the shade and in each room in the sun."""
    limits = limits_of(found.job.job.sealer)
    for hours in (found.hours, *found.sun.hours(found.hours).values()):
        may_seal([HourToSeal(one.starts_at, one.conditions) for one in hours], limits)


def measured(name: str, task: Callable[[], object]) -> object:
    best, answer = math.inf, None
    for _ in range(5):
        began = time.process_time()
        answer = task()
        best = min(best, time.process_time() - began)
    print(f"{name:<44} {1000 * best:7.1f} ms of processor time")
    return answer


def main() -> None:
    job, start = house()
    settled, forecast = settle(job), foretold(start)
    began = time.process_time()
    lasting_of(settled, forecast).sun  # noqa: B018
    print(f"{'the first sun of a process':<44} {1000 * (time.process_time() - began):7.1f} ms")

    def all_of_it() -> None:
        found = lasting_of(settle(job), forecast)
        clocks(found)
        sealing(found)

    found = lasting_of(settled, forecast)
    measured("slab and air, twenty days", lambda: lasting_of(settled, forecast))
    measured("sun in the slab, thirteen days", lambda: replace(found).sun)
    measured("patches of sun, two days", lambda: sunlight_of(job, forecast).patches(0.0, 1440.0))
    measured("every clock of every coat, open times", lambda: clocks(found))
    measured("hours for sealer, in shade and sun", lambda: sealing(found))
    measured("all of it, ten days ahead", all_of_it)


if __name__ == "__main__":
    main()
