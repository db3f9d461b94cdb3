"""Why a house moved: every reason that is told is held against the hours themselves."""

from dataclasses import replace

import numpy as np
from tests.days.shop import MONDAY, shop, typical

from farwall.days.calendar import calendar
from farwall.days.changes import changes, held_to
from farwall.days.hours import mild, with_rain
from farwall.days.moved_why import Against, why_moved
from farwall.days.nouns import Away

UNTIL = 28


def moved(question, *, rain=(), away=(), freely=False):
    """The reasons for each house that moved, by its id; freely: no day of before is wished for."""
    first = calendar(question)
    ahead = with_rain(question.ahead, rain)
    asked = question if freely else held_to(question, first)
    then = calendar(replace(asked, ahead=ahead, away=tuple(away)))
    told = [one for one in changes(first, then) if not one.stays]
    return {one.house.house.id: (one, why_moved(first, then, one)) for one in told}


def no_sealer(*days):
    """Mild days, on some of which the slab takes no sealer."""
    ahead = mild(MONDAY, 60)
    hours = [
        replace(hour, seal=False) if n // 24 in days else hour for n, hour in enumerate(ahead.hours)
    ]
    return replace(ahead, hours=tuple(hours))


def test_a_trade_inside_the_lock_is_named_and_each_day_is_too_near_it():
    plumber = Away("house", "plumber", 2)
    change, why = moved(typical(), away=[plumber])["house"]
    assert why.trades == (plumber,)
    assert why.rain == ()
    begins = int(change.house.steps[0].start_min // 1440)
    assert why.days == np.busday_count(
        "2001-01-01", np.datetime64("2001-01-01") + np.timedelta64(begins, "D")
    )
    assert why.against == ((Against("trade"), why.days),)


def test_rain_on_a_day_of_the_chain_is_named_and_rain_elsewhere_is_not():
    _, why = moved(typical(), rain=[3, 50])["house"]
    assert why.rain == (3,)
    assert why.trades == ()


def test_a_house_that_moves_by_weeks_is_told_which_step_lacks_hours():
    """Hours for sealer only in the first week and after the fourth: a trade costs four weeks."""
    question = typical(no_sealer(*range(6, UNTIL)))
    change, why = moved(question, away=[Away("house", "plumber", 2)])["house"]
    assert change.hand_over_days > 20
    (late,) = why.late
    assert (late.kind, late.step.id) == ("hours", "seal-1")
    assert late.ready < 10
    assert late.start == UNTIL


def test_first_days_before_weeks_without_stain_are_told_to_wait_for_it():
    """Stain only on the first two days and from day 28 on; a lock of weeks costs, so it waits."""
    ahead = mild(MONDAY, 60)
    cold = [
        replace(hour, coat=False) if 2 <= n // 24 < UNTIL else hour
        for n, hour in enumerate(ahead.hours)
    ]
    question = typical(replace(ahead, hours=tuple(cold)))
    change, why = moved(question, away=[Away("house", "plumber", 2)], freely=True)["house"]
    assert change.moved[0].days > 7
    told = {(one.kind, one.step.id if one.step else ""): n for one, n in why.against}
    assert told.pop(("trade", "")) == 3
    assert told.pop(("waits", "coat-1")) == 6
    assert sum(n for _, n in why.against) == why.days
    (late,) = why.late
    assert (late.kind, late.step.id, late.start) == ("hours", "coat-1", UNTIL)


def test_a_house_that_gives_way_to_another_is_told_of_the_crew():
    """One crew: what a trade does to one house may move the other, which no trade is in."""
    found = moved(shop(2), away=[Away("house-1", "plumber", 2)])
    others = [why for name, (_, why) in found.items() if name != "house-1"]
    assert found["house-1"][1].trades
    assert all(why.trades == why.rain == () for why in others)
    crews = [one for _, why in found.values() for one, _ in why.against if one.kind == "crew"]
    assert crews
