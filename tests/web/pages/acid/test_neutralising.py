"""Neutralising on the page: its figures, in the units and the language that are spoken."""

import re

import pytest
from tests.web.pages.office import Office, faults_of_html

from farwall.web.pages.acid.neutralising import _mass


@pytest.fixture(scope="module")
def office(tmp_path_factory):
    made = Office(tmp_path_factory.mktemp("book"))
    made.put_planned()
    made.enter()
    yield made
    made.close()


def part(office, **headers):
    text = office.get("/houses/two/acid/neutralising", headers=headers).text
    assert faults_of_html(text) == []
    begun = text.index('id="acid-neutralising"')
    return text[begun : text.index("</section>", begun)]


def test_doses_steps_picture_and_cautions_stand_there(office):
    text = part(office)
    for words in ("Bicarbonate for each gallon", "The largest of the day", "fresh fizz", "vinegar"):
        assert words in text
    assert text.count('class="acid-neutralising-picture"') == 1
    assert text.count("stroke-dasharray") >= 2


def test_it_leads_to_where_its_facts_are_told(office):
    text = part(office)
    for way in re.findall(r'href="(/houses/two/[a-z]+)"', text):
        assert office.get(way).status_code == 200, way
    assert 'href="/houses/two/washing"' in text


def test_no_style_and_no_script_stands_in_it(office):
    assert not re.search(r"style=|<script|onclick", part(office))


def test_it_is_whole_in_spanish(office):
    """Nothing of the part is marked as English that stayed behind."""
    text = part(office, **{"accept-language": "es"})
    assert "Bicarbonato por galón" in text
    assert "espuma fresca" in text
    assert 'lang="en"' not in text


@pytest.mark.parametrize(
    ("kg", "us", "told"),
    [(0.45359237, True, "1.0 lb"), (0.2268, True, "8 oz"), (0.01, True, "0.4 oz"),
     (12.0, True, "26 lb"), (0.25, False, "250 g"), (3.21, False, "3.2 kg")],
)  # fmt: skip
def test_masses_as_a_scale_reads_them(kg, us, told):
    assert _mass(kg, us=us) == told
