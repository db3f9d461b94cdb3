"""The page of the van: told where a van was told, and nowhere else."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.facts.job import Wishes
from farwall.job.plan_job import plan_job
from farwall.job.van.van_plan import van_plan
from farwall.papers.run_sheet.sheet import run_sheet_pdf
from farwall.papers.run_sheet.van_page import van_page
from farwall.readers.van_json import read_van

EXAMPLE = Path(__file__).resolve().parents[3] / "examples" / "van" / "van.json"


@pytest.fixture(scope="module")
def plans():
    asked = job(TWO_ROOMS)
    plan = plan_job(asked)
    return plan, replace(plan, van=van_plan(read_van(EXAMPLE), plan, asked))


def test_no_van_no_page(plans):
    assert van_page(plans[0], units="us") is None


def test_every_need_stands_once_to_buy_or_to_load(plans):
    told = van_page(plans[1], units="us")
    rows = told["buy"] + told["load"]
    assert len(rows) == len(plans[1].van.shopping)
    assert told["take"] == "Take green; beside it blue."
    assert all(row["buy"] for row in told["buy"])
    assert not any(row["buy"] for row in told["load"])


def test_metric_tells_no_gallons(plans):
    asked = job(TWO_ROOMS, wishes=Wishes(units="metric"))
    metric = replace(plans[0], van=van_plan(read_van(EXAMPLE), plans[0], asked))
    told = str(van_page(metric, units="metric"))
    assert "L/min" in told
    assert " gal" not in told
    assert " ft" not in told


def test_the_page_is_printed(plans):
    pypdfium2 = pytest.importorskip("pypdfium2")
    pdf = pypdfium2.PdfDocument(run_sheet_pdf(plans[1], job_name="A house"))
    words = pdf[1].get_textpage().get_text_range()
    assert "Take green; beside it blue." in words
    assert "To buy" in words
