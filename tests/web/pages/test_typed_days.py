"""Days and spans as they are typed in a hurry; what could be two days is left to be asked."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.web.pages.typed_days import plain


@pytest.mark.parametrize(
    ("text", "day"),
    [
        ("2027-02-11", "2027-02-11"), ("2027/2/11", "2027-02-11"), ("2/28/2027", "2027-02-28"),
        ("28.2.2027", "2027-02-28"), ("28/02/2027", "2027-02-28"), ("11 Feb 2027", "2027-02-11"),
        ("Feb 11, 2027", "2027-02-11"), ("February 11th, 2027", "2027-02-11"),
        ("11 de febrero de 2027", "2027-02-11"), ("3 ene 2027", "2027-01-03"),
        ("2/2/2027", "2027-02-02"),
    ],
)  # fmt: skip
def test_a_day_is_read(text, day):
    assert plain(text) == day


@pytest.mark.parametrize(
    ("text", "months"),
    [
        ("3 months", "3"), ("3 mo", "3"), ("1,5 months", "1.5"), ("a year ago", "12"),
        ("2 years", "24"), ("hace 3 meses", "3"), ("un año", "12"), ("dos", "dos"),
        ("6 weeks", "1.38"), ("2 semanas", "0.4599"), ("4", "4"), ("4.5", "4.5"),
    ],
)  # fmt: skip
def test_a_span_is_read_as_months(text, months):
    assert plain(text) == months


@pytest.mark.parametrize("text", ["2/11/2027", "31/31/2027", "2/28/27", "soon", "", "30 Feb 2027"])
def test_what_is_no_one_day_stays(text):
    assert plain(text) == text


@given(st.text(max_size=30))
def test_nothing_that_is_typed_breaks_it(text):
    assert isinstance(plain(text), str)


@given(st.dates())
def test_the_year_first_is_always_that_day(day):
    assert plain(day.isoformat()) == day.isoformat()
