"""Which passwords will do: long, of any letters, not made of what everybody takes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from tests.web.pages.office import PASSWORD

from farwall.web.people.passwords import LEAST, MOST, fits, kept, wrong_with


@pytest.mark.parametrize(
    "password",
    [
        PASSWORD,
        "cuatro llanas azules aquí",
        "\u0436\u0451\u043b\u0442\u0430\u044f \u0434\u0432\u0435\u0440\u044c: \u0434\u0430",
        "x7!k_Q2.v9-Lm4@z",
        " " * 3 + "grey trowels lean",
    ],
)
def test_any_letters_will_do_when_there_are_enough(password):
    assert wrong_with(password, ["Ann Field", "Farwall"]) == ""


@pytest.mark.parametrize(
    ("password", "why"),
    [
        ("", "password-short"),
        ("fourteen chars", "password-short"),
        ("a" * (MOST + 1), "password-long"),
        ("passwordpassword", "password-common"),
        ("Password123456789!", "password-common"),
        ("qwertyuiopasdfghjkl", "password-common"),
        ("aaaaaaaaaaaaaaaaaaaa", "password-common"),
        ("abababababababababab", "password-common"),
        ("annfieldannfield2026", "password-common"),
        ("Ann Field Ann Field", "password-common"),
        ("farwall farwall 123", "password-common"),
        ("correct horse battery staple", "password-common"),
    ],
)
def test_what_everybody_would_guess_first_is_refused(password, why):
    assert wrong_with(password, ["Ann Field"]) == why


def test_fifteen_are_enough_and_fourteen_are_not():
    assert LEAST == 15
    assert wrong_with("ripe tin gables") == ""
    assert wrong_with("ripe tin gable") == "password-short"


@given(st.text(alphabet=st.characters(exclude_categories=["Cs"]), max_size=80))
def test_every_password_is_judged_without_fail(password):
    assert wrong_with(password, [password, ""]) in {"", "password-short", "password-common"}


def test_a_letter_typed_in_two_ways_is_one():
    assert fits("llanas azules aqui\u0301 x", kept("llanas azules aqu\u00ed x"))


@pytest.mark.parametrize("other", [PASSWORD + " ", PASSWORD[:-1], PASSWORD.upper(), "", "\ud800"])
def test_another_password_does_not_fit(other):
    assert not fits(other, kept(PASSWORD))


@pytest.mark.parametrize("hashed", ["", "no hash", "$argon2id$"])
def test_no_password_fits_no_hash(hashed):
    assert not fits(PASSWORD, hashed)
    assert not fits("nobody's password, to take as long as anybody's", hashed)


def test_nothing_is_cut_off_a_long_password():
    long = "".join(chr(0x61 + k % 23) for k in range(MOST))
    assert fits(long, kept(long))
    assert not fits(long[:-1] + "?", kept(long))
