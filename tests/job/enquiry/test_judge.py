"""The first call: what turns it into a no, a visit or a range, and what would change that."""

import dataclasses

import pytest
from hypothesis import given as drawn
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.job.enquiry import Enquiry, answer
from farwall.job.enquiry.questions import ASKED, PARTS, QUESTIONS, WISHES, enquiry_of
from farwall.job.enquiry.rough import BY_WORK, rough_of

GOOD = Enquiry(
    slab="new", slab_age_days=60, covering="bare", film="nothing", acid_before="nowhere",
    overlay="none", heated=False, pours=1, trades="closed", needed_in_days=40, water=True,
    circuits=2, heat=True, waste="drums", household="nobody", plants=False, area_m2=100.0,
    work="one colour", colour_wanted="range",
)  # fmt: skip


def told(**more):
    return answer(dataclasses.replace(GOOD, **more))


def of(found, question, word):
    return [one for one in found.found if one.question == question and one.word == word]


def test_a_call_with_all_in_order_may_hear_a_rough_range():
    found = told()
    assert found.verdict == "range"
    assert {one.word for one in found.found} == {"fine"}
    assert {one.question for one in found.found} == set(range(13))


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("more", "question", "change"),
    [
        ({"film": "unknown"}, 3, "bottles"),
        ({"acid_before": "whole"}, 3, "overlay, a dye"),
        ({"colour_wanted": "uniform"}, 0, "another floor"),
        ({"colour_wanted": "chart"}, 0, "another floor"),
        ({"slab_age_days": 10.0, "needed_in_days": 12.0}, 1, "Wait 11 days"),
        ({"trades": "overhead"}, 7, "closed to others"),
        ({"needed_in_days": 3.0}, 8, "A later day"),
        ({"waste": "no way"}, 10, "Drums"),
        ({"household": "stays"}, 11, "They move out"),
        ({"slab": "not poured", "slab_age_days": None, "needed_in_days": 20.0}, 1, "A later day"),
    ],
)
def test_a_no_says_what_would_change_it_no_source(more, question, change):
    found = told(**more)
    assert found.verdict == "decline"
    (no,) = of(found, question, "decline")
    assert change in no.change
    assert no.rank == "common practice"
    assert found.rough is None  # nobody is told a price of what is declined


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("more", "question"),
    [
        ({"slab_age_days": 25.0}, 1),
        ({"slab": "not poured", "slab_age_days": None, "needed_in_days": 90.0}, 1),
        ({"slab_age_days": 10.0, "needed_in_days": 60.0}, 1),
        ({"covering": "carpet"}, 2),
        ({"covering": "vinyl tile"}, 2),
        ({"film": "sealer"}, 3),
        ({"acid_before": "part"}, 3),
        ({"overlay": "leveller"}, 4),
        ({"heated": True}, 5),
        ({"pours": 2}, 6),
        ({"trades": "zones"}, 7),
        ({"needed_in_days": 10.0}, 8),
        ({"water": False}, 9),
        ({"circuits": 1}, 9),
        ({"heat": False}, 9),
        ({"waste": "septic"}, 10),
        ({"waste": "sewer"}, 10),
        ({"household": "goes out"}, 11),
        ({"plants": True}, 12),
    ],
)
def test_what_must_be_looked_at_or_priced_is_a_visit_no_source(more, question):
    found = told(**more)
    assert found.verdict == "visit"
    assert of(found, question, "visit")
    assert found.rough is not None


def test_tile_and_mastic_wait_for_a_licensed_inspector():
    (why,) = of(told(covering="black mastic"), 2, "visit")
    assert "asbestos" in why.reason
    assert "licensed inspector" in why.change


def test_what_was_not_asked_is_asked_whole_or_in_its_part():
    nothing = answer(Enquiry())
    assert nothing.verdict == "visit"
    asked = [one.reason for one in nothing.found if one.word == "open"]
    assert asked == [words for words, _ in (*QUESTIONS, *WISHES)]
    part = answer(Enquiry(water=True, slab="new"))
    assert PARTS["circuits"] in [one.reason for one in of(part, 9, "open")]
    assert PARTS["slab_age_days"] in [one.reason for one in of(part, 1, "open")]
    assert not of(answer(Enquiry(slab="old")), 1, "open")


def test_the_range_by_hand():
    """1,180 ft² at 4 to 7 USD: 4,720 to 8,260, to 50 outwards 4,700 to 8,300; with stripping at
    1 to 2.50 more 5,900 to 11,210, to 50 outwards 11,250."""
    area = 1180 * 0.09290304
    plain = rough_of(dataclasses.replace(GOOD, area_m2=area))
    assert (plain.low, plain.high, plain.floor) == ("4700", "8300", "")
    stripped = rough_of(dataclasses.replace(GOOD, area_m2=area, film="sealer"))
    assert (stripped.low, stripped.high) == ("5900", "11250")


def test_a_small_floor_is_priced_as_400_square_feet_by_hand():
    """200 ft²: 400 × 4 to 400 × 7."""
    small = rough_of(dataclasses.replace(GOOD, area_m2=200 * 0.09290304))
    assert (small.low, small.high) == ("1600", "2800")
    assert "rarely pays" in small.floor
    assert (small.area_ft2, small.priced_ft2) == (200.0, 400.0)


def test_the_least_job_of_the_firm_lifts_both_ends():
    found = rough_of(dataclasses.replace(GOOD, area_m2=20.0, least="3500.00"))
    assert (found.low, found.high) == ("3500", "3500")
    assert "3,500 USD" in found.floor


def test_every_kind_of_work_has_a_price_with_its_source():
    for work, parts in BY_WORK.items():
        assert any(one.used for one in parts), work
        assert all(one.source == "price-pages" for one in parts)


def test_all_mistakes_of_a_call_come_at_once():
    with pytest.raises(Refused) as refused:
        enquiry_of({"fim": "x", "heated": "maybe", "area_ft2": "-3", "circuits": "two"})
    assert {one.where for one in refused.value.mistakes} == {
        "fim", "heated", "area_ft2", "circuits",
    }  # fmt: skip
    with pytest.raises(Refused, match="whole ones"):
        enquiry_of({"pours": "1.5"})


def test_areas_are_taken_in_feet_and_metres():
    assert enquiry_of({"area_ft2": "1000"}).area_m2 == pytest.approx(92.90304)
    assert enquiry_of({"area_m2": "92.9"}).area_m2 == pytest.approx(92.9)


_CALLS = st.fixed_dictionaries(
    {},
    optional={
        one.key: st.sampled_from(one.choices) if one.choices else st.integers(1, 20).map(str)
        for one in ASKED.arguments
    },
)


@drawn(_CALLS)
def test_every_call_is_answered_and_a_decline_never_has_a_price(raw):
    found = answer(enquiry_of(raw))
    words = {one.word for one in found.found}
    assert (found.verdict == "decline") == ("decline" in words)
    assert found.verdict != "decline" or found.rough is None
    assert found.verdict != "range" or words == {"fine"}
    assert found.rough is None or int(found.rough.low) <= int(found.rough.high)


@drawn(_CALLS, st.sampled_from(["unknown", "nothing"]))
def test_an_unknown_film_never_makes_a_better_answer(raw, film):
    order = {"decline": 0, "visit": 1, "range": 2}
    known = answer(enquiry_of(raw | {"film": "nothing"}))
    other = answer(enquiry_of(raw | {"film": film}))
    assert order[other.verdict] <= order[known.verdict]
