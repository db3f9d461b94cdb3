"""The page of acid names its papers, and each can be had there."""

import re

import pytest
from tests.web.pages.office import Office, faults_of_html

from farwall.papers.acid_files import PAPERS


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    found.enter()
    found.put_planned("Two rooms")
    yield found
    found.close()


@pytest.mark.parametrize(("language", "cards"), [("en", "Cards to hang up"), ("es", "Tarjetas")])
def test_the_papers_stand_at_the_head_of_the_page(office, language, cards):
    answer = office.get("/houses/two/acid", headers={"accept-language": language})
    assert faults_of_html(answer.text) == []
    assert cards in answer.text
    links = re.findall(r'href="(/houses/two/papers/[^"]+)"', answer.text)
    assert {one.rpartition("/")[2] for one in links} >= set(PAPERS)
    for name in ("cards.pdf", "labels.pdf"):
        paper = office.get(f"/houses/two/papers/{name}")
        assert paper.headers["content-type"] == "application/pdf"
        assert paper.content.startswith(b"%PDF")
