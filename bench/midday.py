"""How long a day planned again takes, in seconds of processor time: printed, never asserted.

.venv/bin/python bench/midday.py [--once]
"""

import time
from pathlib import Path

from timing import ONCE

from farwall.facts.so_far import ClosedRoom, SoFar
from farwall.job.plan_job import plan_job
from farwall.job.replan import replan
from farwall.job.stop import stop
from farwall.readers.job_json import read_job
from farwall.readers.plan_json import plan_to_dict
from farwall.spray.check import check_plan

EXAMPLES = Path(__file__).resolve().parents[1] / "examples"


def main():
    for house in ("quince-street",) if ONCE else ("quince-street", "sorrel-rise"):
        plan = plan_job(read_job(EXAMPLES / house / "job.json"))
        first = plan.inputs.coats[0].id
        bands = [b for f in plan.fields if f.coat == first for b in f.bands]
        tried = bands[2:-1:5][: 1 if ONCE else None]
        far = plan.fields[6].rooms[0]
        cases = {
            "nothing changed": {},
            "a minute late": {"late_min": 1.0},
            "less in the tank": {"tank_l": 3.0},
            "a room closed for an hour": {"closed": 60.0},
        }
        for words, told in cases.items():
            spent = sorted(_seconds(plan, one, far, **told) for one in tried)
            middle, worst = spent[len(spent) // 2], spent[-1]
            print(f"{house:15} replan, {words:26} median {middle:.3f} s, worst {worst:.3f} s")
        spent = sorted(_stop_seconds(plan, one) for one in tried)
        print(f"{house:15} stop within 2 min {'':15} median {spent[len(spent) // 2]:.3f} s")
        document = plan_to_dict(plan)
        begun = time.process_time()
        check_plan(document)
        print(f"{house:15} the checker on all of it       {time.process_time() - begun:.3f} s")


def _told(one, far, *, late_min=0.0, tank_l=None, closed=None):
    rooms = () if closed is None else (ClosedRoom(far, one.end_min + closed),)
    now = one.end_min + late_min
    return SoFar(at_min=now, done_up_to=one.id, tank_l=tank_l, closed=rooms)


def _seconds(plan, one, far, **told):
    so_far = _told(one, far, **told)
    begun = time.process_time()
    replan(plan, so_far)
    return time.process_time() - begun


def _stop_seconds(plan, one):
    so_far = _told(one, "")
    begun = time.process_time()
    stop(plan, so_far, within_min=2.0)
    return time.process_time() - begun


if __name__ == "__main__":
    main()
