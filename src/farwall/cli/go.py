"""`farwall go`: may this floor be stained at all, and what must be asked, done or signed first."""

from __future__ import annotations

import argparse
import json
from datetime import UTC, datetime
from pathlib import Path
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from farwall.facts.go import Go
    from farwall.facts.job import Job
    from farwall.job.sealing import SealingPlan

_GO, _NO = 0, 1
_STAND_IN = datetime(2001, 5, 15, 8, tzinfo=UTC)
_MOST_WINDOWS = 12


def arguments(parser: argparse.ArgumentParser) -> None:
    """The words that `farwall go` takes."""
    from farwall.cli.log_kept import log_word

    parser.add_argument("job", metavar="JOB.json", type=Path, help="the facts of the job")
    parser.add_argument(
        "--weather",
        metavar="FILE",
        type=Path,
        help="hourly weather, to tell when the floor may be sealed",
    )
    parser.add_argument("--out", metavar="DIR", type=Path, help="write go.pdf, one page, there")
    log_word(parser, what="with plan.json beside: pH and rag of each room, samples")
    parser.add_argument("--json", action="store_true", help="print the findings as JSON")


def run(options: argparse.Namespace) -> int:
    """Print verdict and reasons by weight; 0 go (also with work first), 1 no or not yet."""
    from farwall.cli.log_kept import kept_of, rinsed_by_log
    from farwall.cli.weather_file import weather_of
    from farwall.job.colour.told import survey_told
    from farwall.job.go import go_or_no_go
    from farwall.job.sealing import sealing_of
    from farwall.readers.job_json import read_job

    job = rinsed_by_log(read_job(options.job), options.log)
    job = survey_told(job, kept_of(options.log, again=True))
    weather = weather_of(options.weather)
    go = go_or_no_go(job)
    sealing = sealing_of(job, weather, starts_at=_STAND_IN)
    if options.out is not None:
        from farwall.papers.folder import write_folder
        from farwall.papers.go_page import go_pdf

        pdf = go_pdf(go, job, units=job.wishes.units)
        write_folder(options.out, {"go.pdf": pdf})
    if options.json:
        print(json.dumps(_document(go, sealing), ensure_ascii=False))
    else:
        _say(go, job, sealing, options.out)
    return _GO if go.verdict in {"go", "go with"} else _NO


def _say(go: Go, job: Job, sealing: SealingPlan | None, out: Path | None) -> None:
    from farwall.job.go.say import said
    from farwall.job.sealing import coats_in_words, limits_in_words, window_in_words
    from farwall.units import measures_own_first

    labels = {room.id: room.label for room in job.floor.rooms}
    us = job.wishes.units == "us"
    print(measures_own_first(said(go, name=job.name or job.id, labels=labels), us=us))
    if sealing is not None:
        print(f"Sealing: {limits_in_words(sealing.limits, us=sealing.us)}.")
        for window in sealing.windows[:_MOST_WINDOWS]:
            print(f"  {window_in_words(window, us=sealing.us)}")
        if len(sealing.hours) > 1:
            print(f"  {coats_in_words(sealing)}; only if it is dry and clean by then")
        for note in sealing.notes:
            print(f"  {note}")
    if out is not None:
        print(f"Open {out}/go.pdf.")


def _document(go: Go, sealing: SealingPlan | None) -> dict[str, object]:
    from farwall.facts.plain import plain

    found = plain(go)
    assert isinstance(found, dict)
    document: dict[str, object] = dict(found)
    document["sealing"] = None if sealing is None else _sealing(sealing)
    return document


def _sealing(sealing: SealingPlan) -> dict[str, object]:
    limits = sealing.limits
    return {
        "sealer": limits.name,
        "least_slab_c": limits.least_slab_c,
        "most_slab_c": limits.most_slab_c,
        "most_rh_percent": limits.most_rh_percent,
        "least_margin_k": limits.least_margin_k,
        "rank": limits.rank.value,
        "source": limits.source,
        "hours": [
            {
                "starts_at": one.starts_at.isoformat(),
                "word": one.word,
                "reasons": list(one.reasons),
                "slab_c": round(one.slab_c, 2),
                "dew_point_c": round(one.dew_point_c, 2),
                "margin_k": round(one.margin_k, 2),
                "rh_percent": round(one.rh_percent, 1),
            }
            for one in sealing.hours
        ],
        "windows": [
            {
                "starts_at": one.starts_at.isoformat(),
                "ends_at": one.ends_at.isoformat(),
                "word": one.word,
                "reasons": list(one.reasons),
            }
            for one in sealing.windows
        ],
        "coats": [one.isoformat() for one in sealing.coats],
        "notes": list(sealing.notes),
        "advised": list(sealing.advised),
    }
