"""Passwords of all offices that tests make in their own process: hashes that take no time."""

import pytest
from tests.web.pages.office import LIGHT

from farwall.web.people import passwords


@pytest.fixture(autouse=True)
def light(monkeypatch):
    """Hashed as quickly as can be; `security/test_v11_passwords_kept.py` takes the true ones."""
    passwords._nobodys.cache_clear()
    monkeypatch.setattr(passwords, "HASHER", LIGHT)
    yield
    passwords._nobodys.cache_clear()
