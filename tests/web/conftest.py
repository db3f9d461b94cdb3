"""Offices that tests make in their own process: light passwords, routes that are read once."""

import pytest
from tests.web.pages.office import LIGHT
from tests.web.routes_again import read_routes_once

from farwall.web.people import passwords

read_routes_once()


@pytest.fixture(autouse=True)
def light(monkeypatch):
    """Hashed as quickly as can be; `security/test_v11_passwords_kept.py` takes the true ones."""
    passwords._nobodys.cache_clear()
    monkeypatch.setattr(passwords, "HASHER", LIGHT)
    yield
    passwords._nobodys.cache_clear()
