"""My order: moved by buttons and numbers, weighed against the best, planned with or let go."""

import time

import pytest
from tests.web.pages.office import faults_of_html
from tests.web.pages.shown_house import house

from farwall.web.pages.my_order import in_places, moved, placed


@pytest.fixture(scope="module")
def shown():
    return house()


def weigh(own, **places):
    own.post("/houses/two/order", data={"version": "1", "do": "weigh"} | places)
    for _ in range(2400):
        if own.get("/houses/two/order/state").json()["fresh"]:
            break
        time.sleep(0.05)
    return own.get("/houses/two/order").text


def test_at_first_it_is_the_plans_own_order(shown):
    first = shown.plan.fields[0].coat
    fields = sorted((f for f in shown.plan.fields if f.coat == first), key=lambda f: f.order)
    assert [one.rooms for one in placed(shown.plan, ())] == [field.rooms for field in fields]


def test_a_button_moves_one_field_one_place_and_none_beyond_the_ends(shown):
    fields = placed(shown.plan, ())
    numbers = [one.number for one in fields]
    assert [one.number for one in moved(list(fields), "down-1")] == [2, 1, *numbers[2:]]
    assert [one.number for one in moved(list(fields), "up-1")] == numbers
    assert [one.number for one in moved(list(fields), f"down-{numbers[-1]}")] == numbers
    assert [one.number for one in moved(list(fields), "sideways-1")] == numbers


def test_numbers_say_the_order_and_what_is_none_stays_in_its_place(shown):
    fields = placed(shown.plan, ())
    turned = {f"place-{one.number}": str(9 - one.number) for one in fields}
    rooms = [room for one in reversed(fields) for room in one.rooms]
    assert in_places(shown.plan, turned) == list(dict.fromkeys(rooms))
    kept = [room for one in fields for room in one.rooms]
    assert in_places(shown.plan, {"place-1": "first"}) == list(dict.fromkeys(kept))


def test_the_best_order_weighed_stands_and_costs_nothing(own):
    text = weigh(own)
    assert faults_of_html(text) == []
    assert "as much to spare" in text
    assert "The best found" in text


def test_an_order_that_shuts_somebody_in_says_no(own):
    text = weigh(own, **{"place-1": "2", "place-2": "1"})
    assert "NO: " in text
    assert "no way out" in text


def test_an_order_is_planned_with_and_let_go_again(own):
    own.post("/houses/two/order", data={"version": "1", "do": "plan"})
    assert own.book.facts("two")["wishes"]["order"]
    assert "Let the planner choose again" in own.get("/houses/two/order").text
    own.post("/houses/two/order", data={"version": "2", "do": "free"})
    assert not own.book.facts("two").get("wishes", {}).get("order")


def test_a_button_without_script_shows_the_order_moved(own):
    text = own.post("/houses/two/order", data={"version": "1", "do": "down-1"}).text
    assert faults_of_html(text) == []
    names = [one.split("<")[0] for one in text.split('class="names">')[1:]]
    first = placed(house().plan, ())
    assert names[:2] == [first[1].names, first[0].names]
