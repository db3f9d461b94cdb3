"""Sample cards: a page for each coat, told samples in their columns, one approval."""

from dataclasses import replace

import pytest
from tests.papers.office.grounds import ground, own_texts, texts

from farwall.facts.samples import Sample
from farwall.papers.office.blocks import Own, Page, Picture, Rows, Sign
from farwall.papers.office.sample_card import CLAUSE, sample_card


def of_kind(paper, kind):
    return [one for one in paper.blocks if isinstance(one, kind)]


def column(rows, n):
    return {
        row[0]: row[n].text if isinstance(row[n], Own) else row[n] for row in rows.rows
    }  # fmt: skip


def test_a_card_for_each_coat_and_one_approval():
    paper = sample_card(ground())
    assert len(of_kind(paper, Rows)) == len(of_kind(paper, Picture)) == 2
    assert len(of_kind(paper, Page)) == 1
    (sign,) = of_kind(paper, Sign)
    assert sign.words == CLAUSE
    assert "natural range" in CLAUSE


@pytest.mark.common_practice
@pytest.mark.parametrize(
    "row",
    [
        "slab", "air, humidity", "drop goes in, s", "laid, mL/ft²", "gloss gone after, min",
        "dry after, min", "dwell, h", "scrubs", "pH before, after", "white rag",
        "sealer, coats", "photos, date",
    ],
)  # fmt: skip
def test_all_that_is_recorded_at_a_sample_has_a_row_no_source(row):
    assert row in column(of_kind(sample_card(ground()), Rows)[0], 1)


def test_a_told_sample_fills_its_column_and_the_others_stay_blank():
    told = column(of_kind(sample_card(ground()), Rows)[0], 1)
    assert told["stain : water"] == "1:1"
    assert told["room, place"] == "Closet"
    assert told["air, humidity"] == "70 °F, 48 %"
    assert told["gloss gone after, min"] == "16"
    assert told["against what is wished"] == "too light"
    assert told["dwell, h"] == ""
    assert set(column(of_kind(sample_card(ground()), Rows)[0], 2).values()) == {""}


def test_what_a_sample_drank_by_hand():
    """4.7 m²/L: 0.09290304 m² takes 1000 × 0.09290304 / 4.7 = 19.8 mL; 4.7 × 40.7458 ft²/gal per
    m²/L = 191.5; metric 1000 / 4.7 = 213 mL/m²."""
    assert column(of_kind(sample_card(ground()), Rows)[0], 1)["laid, mL/ft²"] == "20 (192 ft²/gal)"
    metric = column(of_kind(sample_card(ground(units="metric")), Rows)[0], 1)
    assert metric["laid, mL/m²"] == "213 (4.7 m²/L)"


def test_the_standard_is_the_sample_that_is_right():
    assert "closet-2" in list(own_texts(sample_card(ground())))
    facts = ground().job
    none = tuple(replace(one, verdict=None) for one in facts.samples)
    approval = list(own_texts(sample_card(ground(samples=none)).blocks[-3:]))
    assert any(set(one) == {"_"} for one in approval)


def test_three_dilutions_stand_side_by_side_whatever_was_told():
    many = tuple(Sample(f"try-{n}", coat="first") for n in range(5))
    for samples in ((), many[:1], many):
        rows = of_kind(sample_card(ground(samples=samples)), Rows)[0]
        assert len(rows.heads) == 4
        assert {len(row) for row in rows.rows} == {4}
    blank = of_kind(sample_card(ground(samples=())), Rows)[0]
    assert blank.heads[1:] == ("a weaker cut", "the planned cut", "a stronger cut")


def test_the_places_for_photos_are_kept_apart_and_named():
    svg = of_kind(sample_card(ground()), Picture)[0].svg
    for state in ("dry", "clean and wet", "sealed"):
        assert f">{state}</text>" in svg
    assert svg.count("<rect") == 3
    assert ">limpio y mojado</text>" in of_kind(sample_card(ground(language="es")), Picture)[0].svg


def test_a_house_without_coats_has_a_blank_card():
    paper = sample_card(ground(coats=(), samples=()))
    assert len(of_kind(paper, Rows)) == 1
    assert "chart" in " ".join(texts(paper))
