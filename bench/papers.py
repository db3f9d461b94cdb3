"""What the bundle of a house of twelve rooms costs: seconds of clock and of processor, by paper.

    python bench/papers.py [--once]

Sorrel Rise, planned beforehand; every paper in both languages (--once: those of Quince Street).
Wanted: all papers of one language within 2 s by the clock on a quiet machine.
Each bundle is set in a process of its own: typst keeps
what it has set, and a second bundle in the same process would be a tenth of the first.
"""

from __future__ import annotations

import argparse
import json
import os
import subprocess
import sys
import time
from pathlib import Path

EXAMPLES = Path(__file__).resolve().parents[1] / "examples"
ROUNDS = 3


def main() -> None:
    """Measure and tell."""
    parser = argparse.ArgumentParser()
    parser.add_argument("--once", action="store_true")
    parser.add_argument("--here", metavar="LANGUAGE")
    parser.add_argument("--house", default="sorrel-rise")
    parser.add_argument("--each", action="store_true")
    options = parser.parse_args()
    if options.here:
        print(json.dumps(bundle(options.here, options.house, each=options.each)))
        return
    print(f"load before: {os.getloadavg()[0]:.1f}")
    house = ("--house", "quince-street" if options.once else options.house)
    for language in ("es",) if options.once else ("en", "es"):
        found = [apart(language, *house) for _ in range(1 if options.once else ROUNDS)]
        best = min(found, key=lambda one: one["clock_s"])
        print(
            f"{language}: {best['papers']} papers, {best['bytes'] / 1e6:.1f} MB: "
            f"{best['clock_s']:.2f} s by the clock, {best['cpu_s']:.2f} s of processor"
        )
    for name, cpu_s in apart("en", "--each", *house)["each"].items():
        print(f"  {name}: {1e3 * cpu_s:.0f} ms of processor")


def apart(language: str, *more: str) -> dict[str, object]:
    """One bundle in a process of its own."""
    words = [sys.executable, __file__, "--here", language, *more]
    return json.loads(subprocess.run(words, check=True, capture_output=True, text=True).stdout)


def bundle(language: str, house: str, *, each: bool) -> dict[str, object]:
    """Plan, then set; only what is set counts, with all that is imported for it."""
    from farwall.job.office import OfficeGround
    from farwall.job.plan_job import plan_job
    from farwall.readers.job_json import read_job

    job = read_job(EXAMPLES / house / "job.json")
    plan = plan_job(job)
    clock_s, cpu_s = time.perf_counter(), _cpu_s()
    from farwall.cli.forked import forked
    from farwall.papers.office.bundles import PAPERS, office_files
    from farwall.papers.office.ground import PaperGround

    ground = PaperGround(OfficeGround(job, plan), language, screens="https://book.example/houses/7")
    took: dict[str, float] = {}
    if each:
        files = {}
        for one in (each for each in PAPERS if each.lacks is None):
            begun = time.process_time()
            files[one.file] = one.make(ground)
            took[one.file] = time.process_time() - begun
    else:
        files = office_files(ground, beside=forked)
    return {
        "papers": len(files), "bytes": sum(map(len, files.values())), "each": took,
        "clock_s": time.perf_counter() - clock_s, "cpu_s": _cpu_s() - cpu_s,
    }  # fmt: skip


def _cpu_s() -> float:
    """Seconds of processor of this process and of those that it waited for."""
    told = os.times()
    return told.user + told.system + told.children_user + told.children_system


if __name__ == "__main__":
    main()
