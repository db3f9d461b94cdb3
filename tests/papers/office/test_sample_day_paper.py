"""The paper of the sample day: steps, mixes, a column for each cut, figures that are told."""

from dataclasses import replace

import pytest
from tests.papers.office.grounds import ground, own_texts, texts

from farwall.facts.numbered import stain_named
from farwall.facts.samples import Sample
from farwall.papers.office.blocks import Facts, Own, Page, Rows, Words
from farwall.papers.office.sample_day import sample_day


def tables(paper):
    return [one for one in paper.blocks if isinstance(one, Rows)]


def column(rows, n):
    return {row[0]: row[n].text for row in rows.rows if isinstance(row[n], Own)}


def test_a_column_for_each_cut_of_each_coat_two_coats_on_a_page():
    paper = sample_day(ground())
    _, first, second = tables(paper)
    assert [one.text for one in first.heads[1:]] == ["A1 · 1:3", "B1 · 1:1", "C1 · neat"]
    assert [one.text for one in second.heads[1:]] == ["A2 · 1:5", "B2 · 1:2", "C2 · 2:1"]
    assert sum(isinstance(one, Page) for one in paper.blocks) == 1
    assert column(first, 1)["water, then stain into it"] == "240 mL, 80 mL"
    assert column(first, 1)["size"] == "7.8 ft²"
    assert column(tables(sample_day(ground(units="metric")))[1], 1)["size"] == "0.72 m²"


def test_coats_are_told_by_their_number_not_by_the_id_of_the_file():
    facts = [dict(one.pairs) for one in sample_day(ground()).blocks if isinstance(one, Facts)]
    assert [one["Coat"].text for one in facts if "Coat" in one] == ["1", "2"]


def test_acid_into_water_stands_first_and_strong():
    danger = [one.text for one in sample_day(ground()).blocks
              if isinstance(one, Words) and one.tone == "danger"]  # fmt: skip
    assert danger[0].startswith("Water first, then stain into the water")
    assert any("waste" in one for one in danger[1:])


def test_the_waits_stand_beside_their_steps_with_their_rank():
    steps = {row[0]: row[2].text for row in tables(sample_day(ground()))[0].rows}
    assert steps["Scrub as hard as the floor"] == "4 h – 8 h – 24 h; common practice"
    assert "min" in steps["Wait for the gloss to go"]
    assert steps["Judge it"] == ""


@pytest.mark.common_practice
@pytest.mark.parametrize(
    "row",
    [
        "sprayer before, g", "sprayer after, g", "gloss gone after, min", "dry after, min",
        "washed at", "scrubs", "pH before, after", "white rag", "holds, weak, washes off",
        "photo clean and wet", "sealed at, with", "photo sealed, by day", "photo sealed, by lamp",
        "light, right, dark",
    ],
)  # fmt: skip
def test_all_that_is_recorded_has_a_place_for_the_pen_no_source(row):
    assert column(tables(sample_day(ground()))[1], 1)[row] == ""


def test_what_the_facts_tell_of_a_cut_stands_in_its_column():
    told = Sample("B1", coat="first", sprayer_before_kg=2.31, sprayer_after_kg=2.16,
                  sheen_loss_min=9.5, before_ph=11.0, after_ph=7.5, rag="grey")  # fmt: skip
    facts = ground().job
    found = column(tables(sample_day(ground(samples=(*facts.samples, told))))[1], 2)
    assert found["sprayer before, g"] == "2310"
    assert found["gloss gone after, min"] == "9.5"
    assert found["pH before, after"] == "11, 7.5"
    assert found["white rag"] == "grey"
    assert found["dry after, min"] == ""


def test_another_finish_has_columns_of_its_own():
    facts = ground().job
    rooms = facts.survey.rooms
    bath = replace(rooms["bath"], finish="float")
    survey = replace(facts.survey, rooms=rooms | {"bath": bath})
    paper = sample_day(ground(survey=survey))
    assert len(tables(paper)) == 1 + 4
    assert any("float" in one for one in own_texts(paper))
    assert "Sample day" in (paper.title, *texts(paper))


def test_coats_and_stains_are_told_as_on_every_other_paper_and_not_by_ids():
    one = ground()
    pairs = [pair for block in sample_day(one).blocks if isinstance(block, Facts)
             for pair in block.pairs]  # fmt: skip
    assert [value.text for name, value in pairs if name == "Coat"] == ["1", "2"]
    names = [stain_named(one.plan, coat.stain) for coat in one.plan.inputs.coats]
    assert [value.text for name, value in pairs if name == "Stain"] == names
    steps = {row[0]: row[2].text for row in tables(sample_day(one))[0].rows}
    assert steps["Wait until it is dry"].startswith("coat 1: ")
    assert "coat 2: " in steps["Wait until it is dry"]
