"""Grounds for the papers of the office: a house that told nothing, one that told all."""

from __future__ import annotations

import json
from dataclasses import fields, is_dataclass, replace
from functools import cache
from importlib.resources import files

from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.firm import Address, Firm, Party
from farwall.facts.job import Survey
from farwall.facts.sealer import Sealer
from farwall.job.office import OfficeGround
from farwall.job.plan_job import plan_job
from farwall.papers.office.blocks import Own, Picture
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.setting import own_names
from farwall.papers.words import names_in
from farwall.phrasebook import in_spanish
from farwall.readers.job_json import job_from

LONG = "Wilhelmina Featherstonehaugh-Castellanos of the Lower Meadow, lot 9"
ADDRESS = Address(("410 Sandpiper Road, unit 7",), "Marlow", "Idaho", "83000", "US")


def _demo():
    return json.loads(files("farwall.cli").joinpath("demo_house.json").read_text(encoding="utf-8"))


def told_job():
    """The invented house, with firm, customer, builder, and a sealer by its type."""
    return replace(
        job_from(_demo(), "the invented house"),
        firm=Firm(
            "Stonewright and Daughters Floor Finishing", ADDRESS, "555 0142",
            "office@stonewright.example", licence="licence C-00000",
        ),
        customer=Party(LONG, ADDRESS, "555 0177"),
        builder=Party("Larkspur Building Company", phone="555 0110"),
        sealer=Sealer(type="water acrylic", name="clear satin"),
    )  # fmt: skip


def bare_job(**more):
    """Two rooms and nothing else that anybody told."""
    return job(TWO_ROOMS, survey=Survey(), **more)


@cache
def planned(which="told"):
    """A job and its plan."""
    facts = told_job() if which == "told" else bare_job()
    return facts, plan_job(facts)


def ground(which="told", *, language="en", units="us", calendar=None, story=None, **changed):
    """A ground; `changed` are facts that differ, none of which the plan hangs on."""
    facts, plan = planned(which)
    wishes = replace(facts.wishes, language=language, units=units)
    facts = replace(facts, wishes=wishes, **changed)
    return PaperGround(OfficeGround(facts, plan, story=story), language, calendar)


def texts(value):
    """Every text of a paper that is ours to say, blocks inside blocks too."""
    if isinstance(value, str):
        yield value
    elif isinstance(value, Picture):
        yield from texts(value.words)
    elif isinstance(value, tuple | list):
        for one in value:
            yield from texts(one)
    elif is_dataclass(value) and not isinstance(value, Own):
        for one in fields(value):
            if one.name not in {"pen", "tone", "svg", "screen", "to"}:
                yield from texts(getattr(value, one.name))


def own_texts(value):
    """Every text of a paper that is the user's own, a number or a date."""
    if isinstance(value, Own):
        yield value.text
    elif isinstance(value, tuple | list):
        for one in value:
            yield from own_texts(one)
    elif is_dataclass(value):
        for one in fields(value):
            yield from own_texts(getattr(value, one.name))


def english_left(paper, paper_ground):
    """Texts of a paper that the phrasebook does not hold whole."""
    names = frozenset(names_in(paper_ground.plan) | own_names(paper_ground))
    return sorted({one for one in texts(paper) if one and in_spanish(one, names) is None})
