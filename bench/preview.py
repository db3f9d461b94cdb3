"""How quick a preview is while a wall is dragged, and how it agrees with the full plan.

Wanted: 100 ms at the 95th percentile on the demo house, within 5 % of the full plan, and rather
too strict than too mild. Walls are dragged by chance (seeds 0 up), on the demo house and on a few
houses of the bench; `--drags N` says how many on each. Seconds are those of the processor.
"""

import sys
import time
from dataclasses import replace

import numpy as np
from timing import ONCE, ROOT

from farwall.bench.dice import Dice
from farwall.bench.drags import dragged
from farwall.bench.houses import houses
from farwall.errors import FarwallError
from farwall.job.plan_job import plan_job
from farwall.job.preview import RELAID_M2, keep, preview
from farwall.readers.job_json import read_job

THROWS = 60
WORDS = dict(zip(sys.argv, sys.argv[1:], strict=False))
DRAGS = 2 if ONCE else int(WORDS.get("--drags", "40"))
HOUSES = (3, 8, 14)
HAIR_MIN = 0.05


def drags(floor):
    for seed in range(DRAGS):
        dice = Dice(seed)
        moved = next((m for m in (dragged(floor, dice) for _ in range(THROWS)) if m), None)
        if moved is not None:
            yield moved


def quick_of(kept, floor, relaid_m2):
    """The preview and the processor's seconds for it; None for a floor that makes no house."""
    begun = time.process_time()
    try:
        found = preview(kept, floor, relaid_m2=relaid_m2)
    except FarwallError:
        found = None
    return found, time.process_time() - begun


def full_of(job, floor):
    try:
        return plan_job(replace(job, floor=floor))
    except FarwallError:
        return None


class Tally:
    """What previews of one kind came to on one house."""

    def __init__(self):
        self.seconds, self.ratios, self.safe = [], [], []
        self.milder = self.stricter = self.otherwise = self.houses = 0

    def take(self, kept, full, quick, seconds):
        """One drag more."""
        self.seconds.append(seconds)
        self.houses += 1
        fits = full is not None and all(f.peak_age_min <= f.open_time_min.low for f in full.fields)
        self.milder += quick is not None and quick.fits and not fits
        self.stricter += fits and not (quick is not None and quick.fits)
        if quick is None or full is None:
            return
        ages = {(f.coat, f.rooms): f.peak_age_min for f in full.fields}
        coat = {f.id: f.coat for f in kept.plan.fields}
        for one in quick.fields:
            age = ages.get((coat[one.id], one.rooms))
            if age is None or one.peak_age_min is None:
                self.otherwise += 1
            elif one.how != "kept" or abs(one.peak_age_min - age) > HAIR_MIN:
                self.ratios.append(max(one.peak_age_min, HAIR_MIN) / max(age, HAIR_MIN))
                self.safe.append(max(one.safe_age_min, HAIR_MIN) / max(age, HAIR_MIN))

    def said(self):
        """One line."""
        p50, p95 = np.quantile(self.seconds, [0.5, 0.95]) * 1000
        likely, safe = np.array(self.ratios or [1.0]), np.array(self.safe or [1.0])
        low, high = np.quantile(likely, [0.05, 0.95])
        return (
            f"p50 {p50:.0f} ms, p95 {p95:.0f} ms, {self.houses} drags; {len(self.ratios)} changed "
            f"fields: age within 5 % {np.mean(abs(likely - 1) <= 0.05):.0%}, 5th and 95th "
            f"percentile {low:.2f} and {high:.2f}, safe age not younger "
            f"{np.mean(safe >= 0.999):.0%}; cut otherwise {self.otherwise}; told to fit and does "
            f"not {self.milder}, told not to fit and does {self.stricter}"
        )


cases = [] if ONCE else [("sorrel-rise", read_job(ROOT / "examples/sorrel-rise/job.json"))]
cases += [(case.name, case.job) for case in (houses()[n] for n in (HOUSES[:1] if ONCE else HOUSES))]
for name, job in cases:
    kept = keep(job)
    preview(kept, job.floor)  # what is imported on first use is no part of a drag
    dragging, let_go = Tally(), Tally()
    for floor in drags(job.floor):
        full = full_of(job, floor)
        dragging.take(kept, full, *quick_of(kept, floor, RELAID_M2))
        let_go.take(kept, full, *quick_of(kept, floor, float("inf")))
    print(f"{name}, dragged: {dragging.said()}", flush=True)
    print(f"{name}, let go: {let_go.said()}", flush=True)
