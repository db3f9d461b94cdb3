"""An office for the tests of this folder."""

import pytest
from tests.web.pages.office import Office


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    yield found
    found.close()
