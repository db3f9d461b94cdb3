"""How passwords are kept: Argon2id by the second parameters that RFC 9106, 4 recommends."""

from argon2 import PasswordHasher, Type, extract_parameters
from tests.web.pages.office import LIGHT, PASSWORD, Office

from farwall.store.people import People
from farwall.web.people import passwords

TRUE = PasswordHasher(time_cost=3, memory_cost=65536, parallelism=4, hash_len=32, salt_len=16)


def test_the_parameters_are_those_of_the_standard(monkeypatch):
    monkeypatch.undo()
    told = extract_parameters(passwords.kept(PASSWORD))
    assert told.type is Type.ID
    assert (told.time_cost, told.memory_cost, told.parallelism) == (3, 64 * 1024, 4)
    assert (told.salt_len, told.hash_len) == (16, 32)


def test_a_hash_of_other_parameters_is_made_anew_at_the_next_sign_in(tmp_path, monkeypatch):
    office = Office(tmp_path)
    office.name()
    assert extract_parameters(People(office.book).named("Ann Field")[1]).memory_cost == 8
    monkeypatch.setattr(passwords, "HASHER", TRUE)
    assert office.sign_in().status_code == 303
    assert extract_parameters(People(office.book).named("Ann Field")[1]).memory_cost == 65536
    assert office.sign_in().status_code == 303
    office.close()


def test_two_hashes_of_one_password_differ():
    assert LIGHT.hash(PASSWORD) != LIGHT.hash(PASSWORD)
