"""What the phone carries of a plan: all that it needs, true, and small."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from tests.midday import HOUSES, day_of

from farwall.papers.run_sheet.names import fits
from farwall.readers.plan_json import plan_to_dict
from farwall.web.slab.sheet import sheet_of


@pytest.fixture(params=HOUSES, scope="module")
def plan(request):
    return plan_to_dict(day_of(request.param))


@pytest.fixture(scope="module")
def sheet(plan):
    return sheet_of(plan, "house")


def test_every_band_is_carried_with_the_minutes_and_litres_of_the_plan(plan, sheet):
    told = {row[0]: row for field in sheet["fields"] for row in field["bands"]}
    own = {band["id"]: band for field in plan["fields"] for band in field["bands"]}
    assert told.keys() == own.keys()
    for name, band in own.items():
        _, sprayer, start, end, age, litres, _ = told[name]
        assert (sprayer, start, end) == (band["sprayer"], band["start_min"], band["end_min"])
        assert (age, litres) == (band["edge_age_min"], band["litres"])


def test_shapes_are_those_of_the_bands_to_the_centimetre(plan, sheet):
    for field, carried in zip(plan["fields"], sheet["fields"], strict=True):
        for band, row in zip(field["bands"], carried["bands"], strict=True):
            ring = band["polygon"]["coordinates"][0][:-1]
            flat = sheet["shapes"][row[6]]
            assert flat == [round(value * 100) for point in ring for value in point]


def test_a_fill_never_makes_the_tank_hold_more_than_it_can_and_covers_what_follows(plan, sheet):
    tank = plan["inputs"]["tools"]["tank_l"]
    assert sheet["fills"]
    for fill in sheet["fills"]:
        if plan["inputs"]["crew"]["sprayers"] == 1:
            assert fill["litres"] - 0.02 <= fill["tank"] <= tank + 0.02  # rounded to 0.01


def test_a_fill_comes_before_the_band_that_is_named_with_it(plan, sheet):
    starts = {b["id"]: b["end_min"] for f in plan["fields"] for b in f["bands"]}
    assert all(one["at"] + one["minutes"] <= starts[one["band"]] for one in sheet["fills"])
    assert sum(len(f["refills"]) for f in plan["fields"]) == len(sheet["fills"])


def test_fields_are_numbered_from_one_in_each_coat(sheet):
    for coat in sheet["coats"]:
        own = [one["no"] for one in sheet["fields"] if one["coat"] == coat["id"]]
        assert sorted(own) == list(range(1, len(own) + 1))


def test_the_door_of_the_first_fill_by_hand():
    """By hand: the bath is sprayed first; its one door leads to the hall, a wide one is none."""
    sheet = sheet_of(plan_to_dict(day_of("quince-street")), "house")
    assert sheet["fills"][0]["door"] == "Bath–Hall door"


def test_a_house_of_ten_rooms_stays_under_nineteen_kilobytes():
    sheet = sheet_of(plan_to_dict(day_of("quince-street")), "house")
    assert len(json.dumps(sheet, separators=(",", ":"), ensure_ascii=False).encode()) < 19_000


def test_a_coat_carries_the_name_of_its_stain_beside_the_id_that_the_gate_asks_by():
    plan = plan_to_dict(day_of("quince-street"))
    coats = sheet_of(plan, "house")["coats"]
    assert [(one["stain"], one["stain_name"]) for one in coats] == [
        ("light", "light earth"), ("dark", "dark earth"),
    ]  # fmt: skip
    unnamed = sheet_of({key: plan[key] for key in plan if key != "stain_names"}, "house")["coats"]
    assert not any("stain_name" in one for one in unnamed)


@pytest.mark.parametrize("verdict", ["fits", "helper", "two", "stop-line", "cannot"])
@pytest.mark.parametrize("helper", [True, False])
@pytest.mark.parametrize("sprayers", [1, 2])
def test_a_field_that_must_be_planned_again_says_so_as_the_run_sheet_does(
    verdict, helper, sprayers
):
    plan = day_of("quince-street")
    crew = replace(plan.inputs.crew, helper=helper, sprayers=sprayers)
    fields = (replace(plan.fields[0], verdict=verdict), *plan.fields[1:])
    told = replace(plan, inputs=replace(plan.inputs, crew=crew), fields=fields)
    carried = {one["id"]: one for one in sheet_of(plan_to_dict(told), "house")["fields"]}
    for one in told.fields:
        assert carried[one.id].get("cannot", False) is not fits(told, one), one.id
