"""Coming in by name and password: one answer for every mistake, and few tries."""

from datetime import timedelta

import pytest
from argon2 import extract_parameters
from tests.web.pages.office import KEY, PASSWORD, START, faults_of_html

from farwall.store.comings import Comings
from farwall.web.people import passwords
from farwall.web.people.tries import TooManyTries
from farwall.web.session import Sessions, WrongPassword


def test_who_signs_in_is_in_under_their_name(office):
    office.name()
    assert office.sign_in().status_code == 303
    page = office.get("/")
    assert page.status_code == 200
    assert "Ann Field" in page.text
    assert faults_of_html(page.text) == []


@pytest.mark.parametrize(
    ("name", "password"),
    [("Ann Field", "wrong but long enough"), ("Nobody", "wrong but long enough"), ("", ""),
     ("Ann Field", ""), ("\ud800".encode("utf-8", "replace").decode(), "x" * 300)],
)  # fmt: skip
def test_every_mistake_gets_the_same_answer(office, name, password):
    office.name()
    answer = office.sign_in(name, password)
    assert answer.status_code == 403
    assert "The name or the password is not right." in answer.text
    assert "set-cookie" not in answer.headers


def test_a_name_unknown_takes_the_same_hash_as_one_that_is_known(office, monkeypatch):
    """Counted and not timed: both are judged by one hash of the same parameters."""
    looked = []
    true = passwords.HASHER.verify
    monkeypatch.setattr(
        passwords.HASHER.__class__, "verify",
        lambda self, hashed, text: looked.append(extract_parameters(hashed)) or true(hashed, text),
    )  # fmt: skip
    office.name()
    for name in ("Ann Field", "Nobody"):
        office.sign_in(name, "wrong but long enough")
    assert len(looked) == 2
    assert looked[0] == looked[1]


def wrong(office, name="Ann Field", address="10.0.0.1", known=""):
    with pytest.raises(WrongPassword):
        Sessions(office.door).sign_in(name, "wrong but long", address=address, known=known)


def waits(office, name="Ann Field", address="10.0.0.1", known=""):
    with pytest.raises(TooManyTries):
        Sessions(office.door).sign_in(name, PASSWORD, address=address, known=known)


@pytest.mark.parametrize("name", ["Ann Field", "Nobody at all"])
def test_after_ten_wrong_the_account_waits_from_anywhere_known_or_not(office, name):
    office.name()
    for k in range(10):
        wrong(office, name, address=f"10.0.0.{k}")
    waits(office, name, address="10.0.0.99")
    office.name("Bo", "office")
    assert Sessions(office.door).sign_in("Bo", PASSWORD, address="10.0.0.99").name == "Bo"


def test_after_five_wrong_the_address_waits_and_a_restart_forgives_nothing(office):
    office.name()
    for k in range(5):
        wrong(office, f"Somebody {k}")
    waits(office)
    assert Sessions(office.door).sign_in("Ann Field", PASSWORD, address="10.0.0.2")
    office.clock = START + timedelta(seconds=12)
    assert Sessions(office.door).sign_in("Ann Field", PASSWORD, address="10.0.0.1")


def test_strangers_who_keep_guessing_do_not_shut_the_lead_out(office):
    office.name()
    office.sign_in()
    known = office.cookies["farwall-known"]
    for k in range(10):
        wrong(office, address=f"10.0.0.{k}")
    waits(office, address="10.0.0.99")
    came = Sessions(office.door).sign_in("Ann Field", PASSWORD, address="10.0.0.99", known=known)
    assert came.name == "Ann Field"


def test_a_known_browser_is_known_for_its_own_person_alone_and_tries_no_more_often(office):
    office.name()
    office.name("Bo", "office")
    office.sign_in()
    known = office.cookies["farwall-known"]
    for k in range(10):
        wrong(office, "Bo", address=f"10.0.0.{k}", known=known)
    waits(office, "Bo", address="10.0.0.99", known=known)
    for _ in range(10):
        wrong(office, known=known)
    waits(office, known=known)


def test_signing_in_well_empties_the_account(office):
    office.name()
    for k in range(9):
        wrong(office, address=f"10.0.0.{k}")
    Sessions(office.door).sign_in("Ann Field", PASSWORD, address="10.0.0.99")
    for k in range(10):
        wrong(office, address=f"10.0.1.{k}")
    waits(office, address="10.0.0.99")


def test_who_waits_is_told_so_with_a_time(office):
    office.name()
    codes = [office.sign_in("Ann Field", "wrong but long").status_code for _ in range(6)]
    assert codes == [403] * 5 + [429]
    assert office.sign_in().headers["retry-after"] == "60"


def test_with_people_in_the_book_the_key_opens_no_page(office):
    office.enter()
    assert office.get("/").status_code == 200
    office.name()
    answer = office.enter()
    assert answer.status_code == 403
    assert "sign in by name" in answer.text
    bearer = {"authorization": f"Bearer {KEY}"}
    assert office.get("/api/jobs", headers=bearer).status_code == 200


def test_the_api_too_waits_after_many_keys_that_are_none_and_then_goes_on(office):
    good, bad = ({"authorization": f"Bearer {one}"} for one in (KEY, "guessed"))
    codes = {office.get("/api/jobs", headers=bad).status_code for _ in range(60)}
    assert codes == {401}
    answer = office.get("/api/jobs", headers=good)
    assert (answer.status_code, answer.headers["retry-after"]) == (429, "60")
    office.clock = START + timedelta(seconds=2)
    assert office.get("/api/jobs", headers=good).status_code == 200


def test_what_was_typed_as_a_name_is_kept_only_where_it_is_one(office):
    office.name()
    office.sign_in(PASSWORD, "")
    office.sign_in("ann field", "wrong but long")
    told = Comings(office.book).done()
    assert [(one.who, one.word) for one in told] == [("Ann Field", "refused")]
    assert PASSWORD not in str(told)
