"""Whether a crew may spray a field as it stands."""

from dataclasses import replace

import pytest
from tests.papers.office.grounds import planned

from farwall.facts.fits_crew import fits_crew
from farwall.facts.job import Crew

FIELD = planned()[1].fields[0]
ALONE, HELPED, TWO = Crew(), Crew(helper=True), Crew(helper=True, sprayers=2)


@pytest.mark.parametrize(
    ("verdict", "crews"),
    [("fits", (ALONE, HELPED, TWO)), ("helper", (HELPED, TWO)), ("two", (TWO,)),
     ("stop-line", ()), ("cannot", ())],
)  # fmt: skip
def test_each_verdict_by_hand(verdict, crews):
    field = replace(FIELD, verdict=verdict, peak_age_min=FIELD.open_time_min.low - 1)
    assert tuple(one for one in (ALONE, HELPED, TWO) if fits_crew(field, one)) == crews


def test_two_do_not_help_where_an_edge_dies_all_the_same():
    field = replace(FIELD, verdict="two", peak_age_min=FIELD.open_time_min.low + 0.1)
    assert not fits_crew(field, TWO)
