"""Every word of a page comes from the one table, every key that is asked for is there."""

import re
from importlib.resources import files

import pytest

from farwall.phrasebook import LANGUAGE
from farwall.web.words import LANGUAGES, said, words

ENGLISH = words("en")
TEMPLATES = sorted(
    one.name for one in files("farwall.web").joinpath("templates").iterdir()
    if one.name.endswith(".html")
)  # fmt: skip


def text_of(name):
    return files("farwall.web").joinpath("templates", name).read_text(encoding="utf-8")


@pytest.mark.parametrize("name", TEMPLATES)
def test_a_template_holds_no_words_of_its_own(name):
    bare = re.sub(r"\{\{.*?\}\}|\{%.*?%\}", "", text_of(name), flags=re.DOTALL)
    bare = re.sub(r"<[^>]*>", " ", bare)
    assert re.findall(r"[^\W\d_]{2,}", bare) == []


@pytest.mark.parametrize("name", TEMPLATES)
def test_what_a_reader_of_the_screen_hears_comes_from_the_table_too(name):
    told = re.findall(r'(?:aria-label|placeholder|alt|title)="([^"]*)"', text_of(name))
    assert all(one.startswith("{{") for one in told)


@pytest.mark.parametrize("name", TEMPLATES)
def test_every_key_of_a_template_is_in_the_table(name):
    keys = re.findall(r"w\('([^']+)'[,)]", text_of(name))
    assert [key for key in keys if key not in ENGLISH] == []


def test_every_key_of_the_code_is_in_the_table():
    folder = files("farwall.web").joinpath("pages")
    text = "".join(one.read_text() for one in folder.iterdir() if one.name.endswith(".py"))
    keys = re.findall(r'said\(\s*"([^"]+)"', text)
    assert len(keys) > 50
    assert [key for key in keys if key not in ENGLISH] == []


@pytest.mark.parametrize("language", [one for one in LANGUAGES if one != "en"])
def test_another_language_has_no_key_and_no_place_that_english_lacks(language):
    places = r"\{(\w+)[^}]*\}"
    for key, told in words(language).items():
        assert key in ENGLISH, key
        assert set(re.findall(places, told)) == set(re.findall(places, ENGLISH[key])), key


def test_a_key_that_is_not_there_is_an_error():
    with pytest.raises(KeyError):
        said("no such words")


def test_every_screen_is_whole_in_spanish_but_for_symbols_of_units():
    lacking = words("en").keys() - words("es").keys()
    assert sorted(key for key in lacking if not key.startswith("unit-")) == []


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_choice_is_longer_than_a_phone_shows_of_it(language):
    """A list that is shut shows one line: 350 px at 390, some 33 letters at 16 px and bold."""
    stems = ("pick-", "opened-", "enquiry-waste-", "enquiry-work-")
    told = {key: one for key, one in words(language).items() if key.startswith(stems)}
    assert {key: one for key, one in told.items() if len(one) > 34} == {}


def test_a_sentence_that_ends_with_a_half_of_the_day_has_one_point():
    token = LANGUAGE.set("es")
    try:
        assert said("days-made", at="vie 27 nov, 4:43 p. m.").endswith(" 4:43 p. m.")
        assert said("days-made", at="vie 27 nov, 16:43").endswith(" 16:43.")
    finally:
        LANGUAGE.reset(token)


def test_in_spanish_a_name_with_its_article_runs_into_the_word_before_it():
    before = LANGUAGE.set("es")
    try:
        told = said("note-usual", value="7.6 L", what="el tanque", rank="práctica común")
        assert told.startswith("7.6 L es la cifra usual del tanque (")
        other = said("note-usual", value="7.6 L", what="la franja", rank="práctica común")
        assert "usual de la franja" in other
    finally:
        LANGUAGE.reset(before)
