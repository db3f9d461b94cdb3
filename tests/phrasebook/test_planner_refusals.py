"""Why a house cannot be planned is said in Spanish, whole: the book shows it to who plans."""

from dataclasses import replace

import pytest
from tests.spray.hand_floors import BLOCKED_DOOR, HALL_OF_THREE, job, row, without_opening

from farwall.errors import Unanswerable
from farwall.job.plan_job import plan_job
from farwall.phrasebook import in_spanish

OUT = replace(HALL_OF_THREE, exits=())
REFUSED = {
    "no door": (without_opening(HALL_OF_THREE, "middle-door"), ()),
    "blocked door": (BLOCKED_DOOR, ()),
    "an order that shuts somebody in": (row(3, 3), ("a", "b")),
    "no way out": (OUT, ()),
}


@pytest.mark.parametrize("why", REFUSED)
def test_the_planner_says_no_and_what_to_do_in_spanish(why: str):
    place, order = REFUSED[why]
    with pytest.raises(Unanswerable) as no:
        plan_job(job(place), order=order)
    assert no.value.remedies
    names = frozenset(room.label for room in place.floor.rooms)
    for one in (no.value.reason, *no.value.remedies):
        assert in_spanish(one, names), one


SELDOM = {
    "One band takes 2.1 gal (8.0 L) and a tank gives 1.9 gal (7.2 L) before its reserve.": (
        "Una franja toma 2.1 gal (8.0 L) y un tanque da 1.9 gal (7.2 L) antes de su reserva."
    ),
    "Hall, Bath: a body does not get everywhere.": (
        "Hall, Bath: una persona no llega a todas partes."
    ),
    "Nobody gets past trench t1 and pour p2: left dry from wall to wall, it shuts off floor of "
    "Hall.": (
        "Nadie pasa por zanja t1 y colado p2: seco de pared a pared, deja sin paso piso de Hall."
    ),
}


@pytest.mark.parametrize("english", SELDOM)
def test_what_is_seldom_refused_as_well(english: str):
    assert in_spanish(english) == SELDOM[english]
