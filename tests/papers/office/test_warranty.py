"""The warranty: a draft first, its months, what it leaves out."""

from tests.papers.office.grounds import ground, texts

from farwall.facts.job import Prices
from farwall.facts.prices import Terms
from farwall.papers.office.warranty import warranty


def said(one):
    return " ".join(texts(warranty(one)))


def test_it_says_first_that_a_lawyer_of_the_place_checks_it():
    first = warranty(ground()).blocks[0]
    assert first.tone == "danger"
    assert "lawyer of the place" in first.text


def test_a_year_stands_in_with_its_rank_until_the_firm_tells_its_own():
    assert "within 12 months" in said(ground())
    assert "common practice with no source" in said(ground())
    own = ground(prices=Prices(terms=Terms(warranty_months=24)))
    assert "within 24 months" in said(own)
    assert "common practice" not in said(own)


def test_what_it_leaves_out():
    words = said(ground("bare"))
    for one in ("Cracks", "Moisture", "flooding", "Scratches", "lack of upkeep", "by others"):
        assert one in words


def test_no_day_of_the_stain_stands_at_its_head():
    """Whoever reads a day at the head of a warranty, or a care sheet, takes it for its own."""
    from farwall.papers.office.care import care
    from farwall.papers.office.setting import paper_data

    for make in (warranty, care):
        assert paper_data(make(ground()), ground())["day"] == ""


def test_it_goes_to_the_customer():
    assert warranty(ground()).to[0].startswith("Wilhelmina")
    assert warranty(ground("bare")).to == ()
