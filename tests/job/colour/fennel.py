"""The invented house of `examples/fennel-court`: a ladder of samples, and a log to add to."""

from __future__ import annotations

import json
from dataclasses import replace
from functools import cache
from pathlib import Path

from tests.job.story.entries import Log

from farwall.job.colour.asked import Asked
from farwall.job.plan_job import plan_job
from farwall.readers.job_json import job_from

FOLDER = Path(__file__).parents[3] / "examples" / "fennel-court"


def facts():
    """Its job.json as plain values."""
    return json.loads((FOLDER / "job.json").read_text(encoding="utf-8"))


@cache
def job():
    """Its facts."""
    return job_from(facts(), "the invented house")


@cache
def plan():
    """Its plan, made once."""
    return plan_job(job())


def with_samples(*samples):
    """Its facts with other samples."""
    return replace(job(), samples=samples)


def first_coat(*looks, laid=True):
    """A log in which the first coat is laid (3.9 gal mixed, 1.15 left) and looked at.

    looks: room, lightness, and more that the entry carries.
    """
    log = Log(plan())
    if laid:
        log("mixed", -10, coat="first", litres=14.76, cut="1:1")
        log("coat-done", 30, coat="first", left_over_l=4.35)
    for minute, (room, lightness, more) in enumerate(looks, 320):
        about = {"state": "clean wet", "lightness": lightness, "lab_a": 8.7, "lab_b": 13.7,
                 "error_de": 0.6, "spots": 6, "spread_lightness": 1.3} | more  # fmt: skip
        log("colour-seen", minute, **({"room": room} if room else {}), **about)
    return tuple(log.kept)


def asked(kept=(), of=None, **more):
    """The question about it."""
    return Asked(of or job(), plan(), tuple(kept), **more)
