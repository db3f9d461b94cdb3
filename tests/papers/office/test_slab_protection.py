"""The sheet before the pour: what stands on it, and that it tells no contradiction as a fact."""

from dataclasses import replace

import pytest
from tests.papers.office.grounds import ground, own_texts, texts

from farwall.facts.slab import Choices
from farwall.papers.office.blocks import Sign
from farwall.papers.office.slab_protection import slab_protection


def said(one):
    return " ".join(texts(slab_protection(one)))


@pytest.mark.common_practice
@pytest.mark.parametrize(
    "word",
    [
        "5 sacks of cement", "No calcium chloride", "No curing compound", "no sealer",
        "No red chalk", "No tape", "No wood, pallets", "No paint", "drywall mud", "No oil",
        "No plastic sheet", "No acid wash", "what breathes", "Running water",
        "Two 20 A circuits", "60 to 90 °F", "All other trades, owner and pets out",
        "What shows for ever", "Every crack, darker",
    ],
)  # fmt: skip
def test_what_must_be_on_it_no_source(word):
    assert word in said(ground("bare"))


def test_where_texts_disagree_it_asks_for_a_choice():
    words = said(ground("bare"))
    assert "texts: none, under 10 %, up to 15 %" in words
    assert "texts say 14 to 42 days" in words
    assert "marble-slick, not too slick" in words
    assert "texts disagree on which wash out" in words


def test_what_the_finisher_chose_stands_in_place_of_the_question():
    chosen = Choices(most_fly_ash_percent=8, least_slab_age_days=35)
    words = said(ground("bare", choices=chosen))
    assert "Fly ash: 8 % at most" in words
    assert "The slab is 35 days old or more" in words
    assert "14 to 42" not in words


def test_names_stand_where_told_and_lines_where_not():
    told, bare = slab_protection(ground()), slab_protection(ground("bare"))
    assert "Larkspur Building Company" in list(own_texts(told))
    assert "Thursday, May 14, 2026" in list(own_texts(told))
    lines = [one for one in own_texts(bare) if set(one) == {"_"}]
    assert len(lines) >= 4
    assert isinstance(bare.blocks[-1], Sign)


def test_the_day_is_told_in_the_papers_language():
    assert "jueves 14 de mayo de 2026" in list(own_texts(slab_protection(ground(language="es"))))
    assert "Thursday, 14 May 2026" in list(own_texts(slab_protection(ground(units="metric"))))


def test_a_house_without_a_start_has_a_line_for_its_day():
    bare = replace(ground("bare").job, starts_at=None)
    assert bare.starts_at is None
    assert not any("2026" in one for one in own_texts(slab_protection(ground("bare"))))
