"""Who may look at a page and not change it is told so before anything is typed there."""

import pytest
from tests.web.pages.office import Office

TOLD = "You may look at this page and not change it"
CHANGED = ("/", "/days", "/van", "/lessons", "/rooms", "/draw", "/houses/two/survey",
           "/houses/two/draw", "/houses/two/order")  # fmt: skip
TAPPED = ("/houses/two/log", "/houses/two/colour", "/houses/two/colour/marks")
READ = ("/houses/two", "/houses/two/papers", "/houses/two/acid", "/settings", "/me")


@pytest.fixture(scope="module")
def office(tmp_path_factory):
    found = Office(tmp_path_factory.mktemp("looks"))
    found.put_planned(name="Two rooms")
    yield found
    found.close()


@pytest.mark.parametrize(
    ("role", "told", "untold"),
    [
        ("owner", (*CHANGED, *TAPPED), READ),
        ("helper", CHANGED, (*TAPPED, *READ)),
        ("office", (), (*CHANGED, *TAPPED, *READ)),
    ],
)
def test_a_page_says_before_that_nothing_typed_there_is_kept(office, role, told, untold):
    office.enter_as(role)
    for path in told:
        assert office.get(path).text.count(TOLD) == 1, path
    for path in untold:
        assert TOLD not in office.get(path).text, path


def test_a_page_that_is_refused_says_so_once(office):
    office.enter_as("owner")
    answer = office.post("/rooms", data={})
    assert answer.status_code == 403
    assert TOLD not in answer.text
