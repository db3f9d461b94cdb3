"""How long one tap takes, in seconds of processor time: printed, never asserted.

.venv/bin/python bench/live.py
"""

import time
from datetime import datetime, timedelta
from pathlib import Path

from farwall.facts.log import Entry, Kept
from farwall.job.live import again, now
from farwall.job.live.say import said_now
from farwall.job.plan_job import plan_job
from farwall.job.story import story
from farwall.readers.job_json import read_job

EXAMPLES = Path(__file__).resolve().parents[1] / "examples"


def main():
    for house in ("quince-street", "sorrel-rise"):
        job = read_job(EXAMPLES / house / "job.json")
        plan = plan_job(job)
        kept = list(entries(plan))
        last = max(band.end_min for field in plan.fields for band in field.bands)
        spent = []
        for count in range(1, len(kept) + 1, max(len(kept) // 40, 1)):
            begun = time.process_time()
            told = story(plan, kept[:count])
            found = now(job, plan, told, at_min=told.ends_min + 0.1)
            said_now(plan, found, again=again(plan, told, at_min=told.ends_min + 0.1).says)
            spent.append(time.process_time() - begun)
        spent.sort()
        print(
            f"{house:15} {len(plan.inputs.floor.rooms)} rooms, up to {len(kept)} entries in "
            f"{last:.0f} min: story, what to do now, does the plan hold: median "
            f"{spent[len(spent) // 2]:.3f} s, worst {spent[-1]:.3f} s"
        )


def entries(plan):
    """Every band, every filling weighed, three looks at the floor."""
    start = datetime.fromisoformat(plan.starts_at)
    things = [(-9.0, "mixed", {"coat": coat.id, "litres": 40.0}) for coat in plan.inputs.coats[:1]]
    for field in plan.fields:
        things.append((field.start_min, "field-started", {"field": field.id}))
        things += [(band.end_min, "band-done", {"band": band.id}) for band in field.bands]
        things.append((field.end_min, "field-done", {"field": field.id, "tank_l": 2.0}))
        things += [(r.at_min, "filled", {"litres": r.litres}) for r in field.refills]
    things += [(200.0 + n, "still-damp", {"coat": plan.inputs.coats[0].id}) for n in range(3)]
    for number, (at, word, about) in enumerate(sorted(things, key=lambda one: one[0]), 1):
        moment = (start + timedelta(minutes=at)).isoformat()
        entry = Entry(f"{number:05d}", "j", word, moment, device="d", number=number, about=about)
        yield Kept(entry, number, moment, 0.0)


if __name__ == "__main__":
    main()
