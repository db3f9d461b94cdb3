"""A sentence of the core on a page: Spanish where the book holds it, else English, marked."""

from dataclasses import replace

import pytest
from jinja2 import Environment
from markupsafe import Markup
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job

from farwall.phrasebook import speaking
from farwall.web.pages.paper import templates
from farwall.web.pages.papers import language_of_paper
from farwall.web.pages.told import ToldBetweenTags, reads_english, told_on_page


def test_in_english_all_stays_as_it_is():
    assert told_on_page("Nobody told <this>.") == "Nobody told <this>."


def test_in_spanish_what_the_book_holds_is_spanish():
    with speaking("es", ["Hall"]):
        assert (
            told_on_page("Hall: Bands of 2' 0\" (0.61 m).")
            == "Hall: Franjas de 2' 0\" (0.61\u00a0m)."
        )


@pytest.mark.parametrize(
    ("text", "bound"),
    [
        ("2.4 gal (9.1 L) by 8:05 am", "2.4\u00a0gal (9.1\u00a0L) by 8:05\u00a0am"),
        ("5 miles of 12 gallons", "5 miles of 12 gallons"),
        ("9 % of 214 ft²", "9\u00a0% of 214\u00a0ft²"),
    ],
)
def test_no_line_ends_between_a_number_and_its_unit(text, bound):
    assert told_on_page(text) == bound
    with speaking("es"):
        assert bound in told_on_page(f"Antes: {text}")


def test_markup_holds_attributes_and_stays_as_it_is():
    drawn = Markup('<a title="4 min">4 min</a>')
    assert told_on_page(drawn) is drawn


def test_what_the_book_lacks_is_marked_and_escaped():
    with speaking("es"):
        told = told_on_page("Nobody told of <this> and that.")
    assert isinstance(told, Markup)
    assert told == '<span lang="en">Nobody told of &lt;this&gt; and that.</span>'


def test_names_and_spanish_are_not_marked():
    with speaking("es"):
        assert told_on_page("Great room") == "Great room"
        assert told_on_page("Todo lo de hoy es de aquí.") == "Todo lo de hoy es de aquí."
    assert reads_english("the floor of the house")
    assert not reads_english("el piso de la casa")


def made(source):
    return ToldBetweenTags(Environment(autoescape=True)).preprocess(source, None)


def test_only_what_stands_between_tags_is_told():
    assert made('<p class="{{ a }}">{{ b }}</p>') == '<p class="{{ a }}">{{ (b)|t }}</p>'
    assert made("<a{% if x > 1 %} id={{ x }}{% endif %}>{{ y }}</a>").endswith(">{{ (y)|t }}</a>")


def test_titles_options_and_what_was_typed_stay():
    for one in ("<title>{{ a }}</title>", "<textarea>{{ a }}</textarea>",
                "<option value='1'>{{ a }}</option>",
                "{% block title %}{{ a }}{% endblock %}"):  # fmt: skip
        assert made(one) == one
    assert made("{% block title %}{{ a }}{% endblock %}<p>{{ b }}</p>").endswith("{{ (b)|t }}</p>")


def test_every_template_compiles_and_tells_something():
    found = templates()
    names = found.list_templates(extensions=["html"])
    told = [name for name in names if "|t }}" in made(found.loader.get_source(found, name)[0])]
    assert len(told) > 6
    assert all(found.get_template(name) for name in names)


def test_a_paper_is_spanish_where_the_job_or_the_page_is():
    facts = job(TWO_ROOMS)
    wished = replace(facts, wishes=replace(facts.wishes, language="es"))
    assert language_of_paper(facts) == "en"
    assert language_of_paper(wished) == "es"
    with speaking("es"):
        assert language_of_paper(facts) == "es"
