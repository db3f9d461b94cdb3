"""The short page of acid and water: a few lines of each part, each leading to its own page."""

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.web.pages.acid.page import PARTS

SPANISH = {"accept-language": "es"}


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms(), name="Two")
    yield found
    found.close()


def test_each_part_has_its_lines_and_a_page(office):
    office.get("/houses/two")  # the plan is made meanwhile
    text = office.get("/houses/two/acid").text
    assert faults_of_html(text) == []
    for part in PARTS:
        assert f'"/houses/two/acid/{part}"' in text
        answer = office.get(f"/houses/two/acid/{part}")
        assert answer.status_code == 200
        assert f'id="acid-{part}"' in answer.text
        assert f'aria-current="page">{part}' not in text


def test_the_short_page_is_whole_in_spanish(office):
    office.get("/houses/two")
    text = office.get("/houses/two/acid", headers=SPANISH).text
    assert 'lang="en"' not in text
    assert "peligro inmediato" in text


def test_what_is_no_part_is_no_page(office):
    office.get("/houses/two")
    assert office.get("/houses/two/acid/fmes").status_code == 404


def test_while_the_plan_is_made_the_page_waits_and_says_so(office, monkeypatch):
    async def later(self, job):
        """The plan is not there yet."""

    monkeypatch.setattr("farwall.web.live.Live.plan_soon", later)
    text = office.get("/houses/two/acid").text
    assert 'data-wait="/houses/two/state"' in text
    assert "No plan can be made" not in text
