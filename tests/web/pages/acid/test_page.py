"""The short page of acid and water: a few lines of each part, each leading to its own page."""

import pytest
from tests.web.pages.office import Office, faults_of_html, two_rooms

from farwall.job.acid_day.day import acid_day
from farwall.web.pages.acid.page import PARTS

SPANISH = {"accept-language": "es"}


FACTS = {
    "stains": [{"id": "sand", "name": "wet sand", "hcl_percent_low": 5, "hcl_percent_high": 10}],
    "coats": [{"id": "one", "stain": "sand", "cut": "1:1"}],
}


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put(two_rooms(**FACTS), name="Two")
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
    assert "Mano 1, wet sand, 1:1: de" in text
    assert "wet sand derramado" in text


def test_every_figure_of_the_short_page_shows_its_rank(office):
    office.get("/houses/two")
    text = office.get("/houses/two/acid").text
    units = ("cfm", "gal of", "% acid")
    lines = [one for one in text.split("<p>")[1:] if any(unit in one for unit in units)]
    ranks = (
        "guess",
        "by its sheet",
        "from memory",
        "common practice",
        "published",
        "measured here",
    )
    assert len(lines) == 3
    assert all(any(rank in one for rank in ranks) for one in lines)


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


def test_the_day_is_reckoned_once_until_facts_or_log_change(office, monkeypatch):
    reckoned = []

    def counted(ground):
        reckoned.append(ground)
        return acid_day(ground)

    monkeypatch.setattr("farwall.web.pages.acid.page.acid_day", counted)
    office.get("/houses/two")
    for part in ("", "/fumes", "/washing"):
        office.get(f"/houses/two/acid{part}")
        office.get(f"/houses/two/acid{part}", headers=SPANISH)
    assert len(reckoned) == 1
    office.post("/houses/two/log", data={"word": "strip-read", "of": "tap", "ph": "8"})
    assert office.get("/houses/two/acid/washing").status_code == 200
    assert len(reckoned) == 2
    office.put(two_rooms(**FACTS, washing={"tap_ph": 7}), name="Two")
    office.get("/houses/two")
    office.get("/houses/two/acid")
    assert len(reckoned) == 3
