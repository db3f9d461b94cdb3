"""Loose lettering joined to labels."""

from math import cos, radians, sin

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.lines.labels import find_labels, names_among
from farwall.readers.lines.sheet import Words


def words(text: str, x: float, y: float, height: float = 0.18, turned: float = 0.0) -> Words:
    return Words(text, (x, y), height, turned, "A-NOTE")


def test_a_name_and_its_size_two_texts_a_few_units_apart() -> None:
    (label,) = find_labels([words("BEDROOM 2", 0, 0.26), words("13'6 x 11'", 0.05, 0, 0.14)])
    assert label.name == "Bedroom 2"
    assert label.size is not None
    assert label.size.text == "13'6 x 11'"


def test_a_name_on_two_lines() -> None:
    (label,) = find_labels(
        [words("BEDROOM", 0, 0.26), words("13'8 x 14'", 0, 0, 0.14), words("MASTER", 0, 0.56)]
    )
    assert label.name == "Master bedroom"


def test_name_and_size_in_one_text() -> None:
    (label,) = find_labels([words("KITCHEN 10'11 x 12'", 0, 0)])
    assert label.name == "Kitchen"
    assert label.size is not None


def test_a_size_over_its_name() -> None:
    (label,) = find_labels([words("8' x 2'", 0, 0.25, 0.14), words("CLOSET", 0, 0)])
    assert (label.name, label.size is not None) == ("Closet", True)


def test_neighbouring_labels_keep_their_own_sizes() -> None:
    found = find_labels(
        [
            words("BATH", 0, 0.3),
            words("5' x 8'", 0, 0),
            words("HALL", 2.0, 0.3),
            words("16' x 3'", 2.0, 0),
        ]
    )
    assert {(label.name, label.size.text) for label in found if label.size} == {
        ("Bath", "5' x 8'"),
        ("Hall", "16' x 3'"),
    }


def test_codes_and_notes_are_no_names() -> None:
    found = find_labels([words("2668", 0, 0), words("5050 XO", 1, 1), words("3", 2, 2)])
    assert found == []


def test_names_with_sizes_and_room_words_win_over_other_lettering() -> None:
    labels = find_labels(
        [words("BATH", 0, 0.3), words("5' x 8'", 0, 0), words("TEMP.", 3, 3), words("HALL", 5, 5)]
    )
    assert [label.name for label in names_among(labels)] == ["Bath", "Hall"]
    rest = [label for label in labels if not label.size]
    assert [label.name for label in names_among(rest)] == ["Hall"]


def test_without_a_room_word_the_tallest_lettering_is_the_name() -> None:
    labels = find_labels([words("SEE NOTE", 0, 0, 0.1), words("ATELIER", 3, 3, 0.3)])
    assert [label.name for label in names_among(labels)] == ["Atelier"]


@given(st.floats(0, 360), st.floats(-100, 100), st.floats(-100, 100))
def test_labels_are_joined_however_the_sheet_is_turned(turn: float, x: float, y: float) -> None:
    c, s = cos(radians(turn)), sin(radians(turn))

    def at(text: str, dx: float, dy: float) -> Words:
        return words(text, x + dx * c - dy * s, y + dx * s + dy * c, turned=turn)

    (label,) = find_labels([at("GREAT", 0, 0.6), at("ROOM", 0.1, 0.3), at("17' x 17'8", 0, 0)])
    assert label.name == "Great room"
    assert label.size is not None
    assert label.size.sides_m == pytest.approx((5.1816, 5.3848))


def test_names_without_a_size_in_an_open_room_count_beside_those_with_one() -> None:
    labels = find_labels(
        [
            words("KITCHEN", 0, 0.3),
            words("10' x 12'", 0, 0),
            words("NOOK", 5, 5),
            words("SEE WALL TO GARAGE NOTE", 8, 8),
        ]
    )
    assert [label.name for label in names_among(labels)] == ["Kitchen", "Nook"]
