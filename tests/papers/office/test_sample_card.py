"""Sample cards: a page for each coat, told samples in their columns, one approval."""

import re
from dataclasses import replace

import pytest
from tests.papers.office.grounds import ground, own_texts, texts
from tests.papers.office.test_all_papers import pages_of

from farwall.facts.samples import Look, Sample
from farwall.papers.office.blocks import Facts, Own, Page, Picture, Rows, Sign
from farwall.papers.office.sample_card import CLAUSE, sample_card
from farwall.papers.office.setting import paper_pdf


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
    assert told["stain : water, over"] == "1:1"
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


def test_a_card_tells_its_coat_by_number():
    facts = [dict(one.pairs) for one in of_kind(sample_card(ground()), Facts)]
    assert [one["Coat"].text for one in facts if "Coat" in one] == ["1", "2"]


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


LONG = "a sample whose name has sixty letters and that is not cut of"
LADDER = (
    Sample("P", coat="first", cut="1:2", area_m2=0.5, sprayer_before_kg=3.11, sprayer_after_kg=3.0,
           dry_min=80, dwell_h=9.0, scrubs=3, before_ph=11.5, after_ph=8, rag="clean",
           sealer="clear satin",
           looks=(Look("clean wet", (45.0, 8.0, 18.0), error_de=1.04), Look("dry", (70, 2, 9)))),
    Sample("P2", coat="second", over="P", cut="1:4", approved_by="Ann Field",
           approved_on="2026-04-20", looks=(Look("sealed", (36.0, 9.0, 20.0), error_de=0.8),)),
    Sample(LONG, coat="first", cut="1:9"),
)  # fmt: skip


def test_what_was_told_of_a_rung_fills_its_column():
    """0.11 kg of 1:2 at (1.25 + 2)/3 kg/L are 102 mL on 0.5 m²: 203 mL/m², 19 mL/ft²."""
    paper = sample_card(ground(samples=LADDER))
    first, second = (column(rows, 1) for rows in of_kind(paper, Rows))
    assert (first["stain : water, over"], second["stain : water, over"]) == ("1:2", "1:4, P")
    assert first["how large"] == "5.4 ft²"
    assert first["laid, mL/ft²"].startswith("19 (")
    assert first["sprayer before, after, lb"] == "6.856, 6.614"
    assert (first["dry after, min"], first["dwell, h"], first["scrubs"]) == ("80", "9.0", "3")
    assert (first["pH before, after"], first["white rag"]) == ("11.5, 8.0", "clean")
    assert first["sealer, coats"] == "clear satin"


def test_looks_stand_under_their_state_with_figures_and_rank():
    picture = of_kind(sample_card(ground(samples=LADDER)), Picture)[0].svg
    dry, wet, sealed = re.split(r">(?:dry|clean and wet|sealed)</text>", picture)[1:]
    assert "L 45 a 8 b 18, medium brown" in wet
    assert "measured here, target off by 1.0" in wet
    assert "guess, no target" in dry
    assert "L 45" not in dry + sealed
    assert 'fill="#' not in sealed
    spanish = of_kind(sample_card(ground(samples=LADDER, language="es")), Picture)[0].svg
    assert "medido aquí, carta desviada 1.0" in spanish


def test_the_standard_is_the_sample_that_was_signed():
    paper = sample_card(ground(samples=(*LADDER, Sample("Q", coat="first", verdict="right"))))
    pairs = dict(next(one for one in paper.blocks[::-1] if isinstance(one, Facts)).pairs)
    told = {name: value.text for name, value in pairs.items()}
    assert told == {"The standard is sample": "P2", "Signed by": "Ann Field, Apr 20, 2026"}


def test_of_many_samples_the_signed_and_the_right_keep_their_column():
    many = tuple(
        Sample(f"try-{n}", coat="first", verdict="right" if n == 3 else None,
               approved_by="Ann" if n == 4 else "")
        for n in range(5)
    )  # fmt: skip
    paper = sample_card(ground(samples=many))
    heads = [one.text for one in of_kind(paper, Rows)[0].heads[1:]]
    assert heads == ["try-0", "try-3", "try-4"]
    assert any("More on the ladder of samples: 2." in one for one in texts(paper))


def test_a_sample_of_no_coat_stands_by_what_lies_beneath_it():
    two = (Sample("A"), Sample("B", over="A"))
    first, second = of_kind(sample_card(ground(samples=two)), Rows)
    assert (first.heads[1].text, second.heads[1].text) == ("A", "B")


@pytest.mark.parametrize(("units", "language"), [("us", "en"), ("metric", "es")])
def test_a_full_card_is_a_page_for_each_coat(units, language):
    looks = tuple(
        Look(state, (45.0, 8.0, 18.0), error_de=1.0) for state in ("dry", "clean wet", "sealed")
    )
    full = tuple(
        replace(LADDER[0], id=f"{n} {LONG}", coat=coat, looks=looks, room="closet", slab_c=20,
                air_c=21, rh_percent=40, drop_s=9, sheen_loss_min=14, verdict="right")
        for coat in ("first", "second") for n in range(4)
    )  # fmt: skip
    whole = ground(samples=full, units=units, language=language)
    pdf = paper_pdf(sample_card(whole), whole)
    assert len(pages_of(pdf)) == 2
    assert LONG[-30:] in " ".join("".join(pages_of(pdf)).split())


def test_a_sample_of_another_stain_says_so_on_the_card_of_its_place():
    told = ground(samples=(Sample(id="s", stain="moss", cut="1:4"),))
    assert column(of_kind(sample_card(told), Rows)[0], 1)["stain : water, over"] == "moss 1:4"


def test_a_house_without_coats_has_a_blank_card():
    paper = sample_card(ground(coats=(), samples=()))
    assert len(of_kind(paper, Rows)) == 1
    assert "chart" in " ".join(texts(paper))
