import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.readers.walk.said import tape_text
from farwall.readers.walk.spoken import spoken_count, spoken_length_m
from farwall.units import M_PER_IN

IN_INCHES = {
    "12' 6 1/2\"": 150.5,
    "12'6½\"": 150.5,
    "58'-0\"": 696,
    '150"': 150,
    "12 foot 6": 150,
    "12 6": 150,
    "10 ft": 120,
    "12.5": 150,
    "twelve foot six and a half": 150.5,
    "Twelve feet, six and three eighths inches": 150.375,
    "twelve and a half feet": 150,
    "twenty two foot eleven inches": 275,
    "one hundred and two inches": 102,
    "half an inch": 0.5,
    "six and a half inches": 6.5,
    "nine foot and an eighth of an inch": 108.125,
    "doce pies seis y media": 150.5,
    "doce pies seis pulgadas y media": 150.5,
    "treinta y dos pies": 384,
    "dieciséis pies tres cuartos": 192.75,
    "sixteen foot three quarters": 192.75,
}
IN_METRES = {
    "3.81": 3.81,
    "3,81 m": 3.81,
    "381 cm": 3.81,
    "3 m 810": 3.81,
    "3 m 5 mm": 3.005,
    "three point eight one": 3.81,
    "three metres eighty one": 3.81,
    "tres metros ochenta y uno": 3.81,
    "tres coma ochenta y uno metros": 3.81,
    "cuatro metros y medio": 4.5,
    "un metro veinticinco": 1.25,
    "doscientos cinco centímetros": 2.05,
    "ocho punto cero cinco": 8.05,
}


@pytest.mark.parametrize(("said", "inches"), IN_INCHES.items())
def test_feet_and_inches_as_said_and_typed(said, inches):
    assert spoken_length_m(said) == pytest.approx(inches * M_PER_IN)


@pytest.mark.parametrize(("said", "metres"), IN_METRES.items())
def test_metres_as_said_and_typed(said, metres):
    assert spoken_length_m(said, us=False) == pytest.approx(metres)


@pytest.mark.parametrize(
    "said",
    [
        "",
        "left",
        "twelve foot six seven",
        "6 inches 3 feet",
        "1/0 in",
        "three hundred hundred",
        "-",
    ],
)
def test_what_is_no_length_is_none(said):
    assert spoken_length_m(said) is None


def test_what_may_be_two_things_is_not_guessed():
    assert spoken_length_m("three metres five", us=False) is None
    assert spoken_length_m("twelve foot and a half") is None


@given(st.integers(1, 8 * 12 * 60))
def test_a_tape_text_is_read_back_to_the_eighth(eighths):
    length_m = eighths * M_PER_IN / 8
    assert spoken_length_m(tape_text(length_m, us=True)) == pytest.approx(length_m)


@given(st.integers(1, 60_000))
def test_metres_are_read_back_to_the_millimetre(millimetres):
    told = tape_text(millimetres / 1000, us=False)
    assert spoken_length_m(told, us=False) == pytest.approx(millimetres / 1000)


@given(st.text(max_size=60))
def test_any_words_give_a_length_above_nothing_or_none(said):
    found = spoken_length_m(said)
    assert found is None or found > 0


def test_counts():
    assert [spoken_count(one) for one in ("3", "three", "tres", "twenty one")] == [3, 3, 3, 21]
    assert [spoken_count(one) for one in ("", "0", "1.5", "wall")] == [None] * 4
