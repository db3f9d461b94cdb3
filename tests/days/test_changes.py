"""What moves when it rains or when a trade has the house."""

from dataclasses import replace

from tests.days.shop import shop, typical

from farwall.days.calendar import calendar
from farwall.days.changes import changes, held_to
from farwall.days.hours import with_rain
from farwall.days.nouns import Away


def asked(question, *, rain=(), away=()):
    first = calendar(question)
    ahead = with_rain(question.ahead, rain)
    then = calendar(replace(held_to(question, first), ahead=ahead, away=tuple(away)))
    return changes(first, then)


def test_nothing_moves_when_nothing_is_asked():
    assert all(one.stays for one in asked(shop(3)))


def test_rain_on_the_day_of_sealing_moves_the_sealer_and_no_coat():
    """Thursday, day 3, was the day of the first sealer."""
    change = asked(typical(), rain=[3])[0]
    days = {one.step.id: one.days for one in change.moved}
    assert days.get("seal-1", 0) > 0
    assert days.get("coat-1", 0) == days.get("clean", 0) == 0
    assert change.hand_over_days > 0


def test_a_trade_in_one_house_leaves_the_other_crew_alone():
    question = shop(2, crews=2)
    plumber = Away("house-1", "plumber", 1)
    by_house = {one.house.house.id: one for one in asked(question, away=[plumber])}
    assert not by_house["house-1"].stays
    assert by_house["house-2"].stays


def test_houses_do_not_change_places_for_a_day_of_rain():
    """Without the wish to keep days, swapping whole houses may cost nothing."""
    for day in (1, 3, 8):
        for change in asked(shop(2), rain=[day]):
            assert change.hand_over_days <= 7
            assert min((one.days for one in change.moved), default=0) >= -2
