"""An office for the tests of this folder, and hashes that take no time."""

import pytest
from tests.web.pages.office import LIGHT, Office

from farwall.web.people import passwords


@pytest.fixture(autouse=True)
def light(monkeypatch):
    """Passwords hashed as quickly as can be; `test_v11_passwords_kept.py` takes the true ones."""
    passwords._nobodys.cache_clear()
    monkeypatch.setattr(passwords, "HASHER", LIGHT)
    yield
    passwords._nobodys.cache_clear()


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    yield found
    found.close()
