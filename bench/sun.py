"""How long the sun of a house takes: a first sun, a day of half hours, ten days hour by hour."""

import time
from datetime import timedelta
from pathlib import Path

from farwall.job.sun_heat import heat_by_room
from farwall.job.sunlight import sunlight_of
from farwall.readers.job_json import read_job

HOUSE = Path(__file__).resolve().parents[1] / "examples" / "thistle-end" / "job.json"


def main() -> None:
    job = read_job(HOUSE)
    began = time.process_time()
    sunlight = sunlight_of(job)
    assert sunlight is not None
    sunlight.sun([sunlight.starts_at])
    print(f"a first sun: {time.process_time() - began:.2f} s of processor time")
    for name, hours in (("a day of half hours", 0), ("ten days hour by hour", 240)):
        best = 9.0
        for _ in range(3):
            light = sunlight_of(job)
            assert light is not None
            began = time.process_time()
            if hours:
                heat_by_room(light, light.starts_at - timedelta(hours=8), hours)
            else:
                light.day(0)
            best = min(best, time.process_time() - began)
        print(f"{len(light.panes)} windows, {name}: {1000 * best:.0f} ms")


if __name__ == "__main__":
    main()
