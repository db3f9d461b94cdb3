"""Room names written out, told apart, made into ids."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.room_names import Ids, is_outdoors, is_room_word, slug, written_out


@pytest.mark.common_practice
@pytest.mark.parametrize(
    ("lettered", "name"),
    [
        ("UTIL.", "Utility"),
        ("TOIL.", "Toilet"),
        ("MSTR. BATH", "Master bath"),
        ("W.I.C.", "Walk-in closet"),
        ("CLO.", "Closet"),
        ("2 CAR GARAGE", "2 car garage"),
        ("BEDROOM 2", "Bedroom 2"),
        ("DINING ROOM", "Dining room"),
        ("Pantry", "Pantry"),
        ("LIV. RM.", "Living room"),
        ("WC", "WC"),
    ],
)
def test_names_are_written_out_no_source(lettered: str, name: str) -> None:
    """The abbreviations of US plans: common practice, from memory, no source."""
    assert written_out(lettered) == name


def test_outdoor_slabs_are_told_from_rooms() -> None:
    assert is_outdoors("Covered porch")
    assert is_outdoors("DECK")
    assert not is_outdoors("Great room")
    assert is_room_word("Mstr. bedroom")
    assert not is_room_word("Gas line, see note")


def test_ids_are_handed_out_once() -> None:
    ids = Ids()
    assert [ids.take("bath"), ids.take("bath"), ids.take("hall"), ids.take("bath")] == [
        "bath",
        "bath-2",
        "hall",
        "bath-3",
    ]


def test_slugs_by_hand() -> None:
    assert slug("Walk-in closet") == "walk-in-closet"
    assert slug("2 car garage") == "2-car-garage"
    assert slug("Küche / Büro") == "kuche-buro"
    assert slug("???") == ""


@given(st.lists(st.text(max_size=20), max_size=30))
def test_ids_never_meet_and_are_never_empty(names: list[str]) -> None:
    ids = Ids()
    taken = [ids.take(slug(name)) for name in names]
    assert len(set(taken)) == len(taken)
    assert all(re.fullmatch(r"[a-z0-9-]+", one) for one in taken)
