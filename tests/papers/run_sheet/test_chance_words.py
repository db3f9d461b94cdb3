"""Chances on the day's page."""

from __future__ import annotations

from dataclasses import replace

from tests.papers.invented_plan import small_house

from farwall.facts.plan import Chances, FieldChance, Mattering
from farwall.papers.run_sheet.chance_words import dies, how_sure
from farwall.papers.run_sheet.sheet import run_sheet_pdf

PLAN = small_house()


def mattering(name, share, what=""):
    return Mattering(name, share, "guess", "house-guess", what, 0.01)


def drawn(*inputs, dies=0.04, mix=0.0):
    own = tuple(FieldChance(field.id, 0.021, 0.001) for field in PLAN.fields)
    return replace(PLAN, chances=Chances(10_000, 1, own, dies, mix, inputs))


def test_a_plan_that_was_not_drawn_says_nothing():
    assert how_sure(PLAN) == []
    assert dies(PLAN, PLAN.fields[0]) == ""


def test_no_chance_is_told_as_nothing():
    assert how_sure(drawn(mix=0.0))[:2] == [
        ["4 %", "that an edge dies somewhere"],
        ["under 0.1 %", "that the mix runs short inside a field"],
    ]
    assert dies(drawn(), PLAN.fields[0]) == "2.1 %"


def test_what_matters_most_comes_with_what_to_do():
    told = how_sure(drawn(mattering("open time", 0.6, "Time it: it would halve the range.")))
    assert told[2] == ["", "Most of it hangs on the open time. Time it: it would halve the range."]


def test_where_the_weightiest_is_measured_the_next_that_is_not_is_named():
    both = (mattering("open time", 0.6), mattering("spray rate", 0.3, "Time yourself: a third."))
    assert how_sure(drawn(*both))[2][1] == (
        "Most of it hangs on the open time (guess). Time yourself: a third."
    )
    trifle = (mattering("open time", 0.6), mattering("spray rate", 0.01, "Time yourself."))
    assert how_sure(drawn(*trifle))[2][1] == "Most of it hangs on the open time (guess)."


def test_where_nothing_can_be_sprayed_nothing_is_sure():
    no = tuple(replace(field, verdict="cannot") for field in PLAN.fields)
    assert how_sure(replace(drawn(), fields=no)) == []


def test_the_page_with_chances_is_set():
    plan = drawn(mattering("open time", 0.6, "Time the sheen loss: it would halve the range."))
    assert run_sheet_pdf(plan, job_name="A house").startswith(b"%PDF")
