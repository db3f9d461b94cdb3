"""A form as a template needs it; every word of every form is in the table, in both languages."""

import pytest
from tests.web.pages.office import two_rooms

from farwall.web.pages.forms.asked import asked_of, sentences_of
from farwall.web.pages.forms.crew import CREW, FIRM, FIRST
from farwall.web.pages.forms.notes import Notes
from farwall.web.pages.forms.samples import SAMPLES
from farwall.web.pages.forms.shown import form_shown
from farwall.web.pages.forms.survey import SURVEY
from farwall.web.pages.forms.told import Slip
from farwall.web.pages.forms.waste import WASTE
from farwall.web.words import LANGUAGES, words

FORMS = (SURVEY, SAMPLES, CREW, FIRST, FIRM, WASTE)


def shown(form, facts=None, **more):
    asked = asked_of(form, facts or two_rooms())
    return form_shown(asked, 1, notes=Notes(asked.job), **more)


def blanks(form):
    return [
        piece.blank
        for part in form.parts for row in part.rows for one in row.sentences
        for piece in one.pieces if piece.blank is not None
    ]  # fmt: skip


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.key)
@pytest.mark.parametrize("language", LANGUAGES)
def test_every_sentence_holds_each_of_its_blanks_once(form, language):
    for one in sentences_of(form):
        marks = {blank.name: f"<{blank.name}>" for blank in one.blanks}
        text = words(language)[one.key].format(**marks)
        assert all(text.count(mark) == 1 for mark in marks.values()), one.key


@pytest.mark.parametrize("form", FORMS, ids=lambda form: form.key)
def test_every_blank_help_and_choice_has_its_words(form):
    assert blanks(shown(form))
    english = words("en")
    for one in sentences_of(form):
        assert not one.help or f"help-{one.help}" in english
        assert not one.effect or one.effect in english
    for part in form.parts:
        assert part.key in english
        assert not part.told or f"{part.key}-told" in english


def test_spanish_is_whole_for_these_screens():
    english, spanish = words("en"), words("es")
    same = {"unit-"}
    for name in (
        "survey",
        "samples",
        "crew",
        "settings",
        "help",
        "forms",
        "houses",
        "trouble",
        "acid_waste",
    ):
        module = __import__(f"farwall.web.words.en.{name}", fromlist=["WORDS"])
        lacks = [k for k in module.WORDS if k not in spanish and not k.startswith(tuple(same))]
        assert lacks == []
    assert english.keys() >= spanish.keys()


def test_what_was_typed_stands_there_again_with_what_is_wrong():
    slips = (Slip("survey.slab_c", "Slab temperature", "“warm” is no number here."),)
    found = shown(SURVEY, told={"survey.slab_c": "warm"}, slips=slips)
    (blank,) = [one for one in blanks(found) if one.name == "survey.slab_c"]
    assert (blank.value, blank.wrong) == ("warm", "“warm” is no number here.")


def test_ids_of_blanks_are_all_different():
    for form in FORMS:
        ids = [one.id for one in blanks(shown(form))]
        assert len(ids) == len(set(ids))


def test_a_blank_says_its_unit_as_the_job_wishes():
    us = {one.name: one.unit for one in blanks(shown(CREW))}
    facts = two_rooms(wishes={"units": "metric"})
    metric = {one.name: one.unit for one in blanks(shown(CREW, facts))}
    assert (us["tools.tank_l"], metric["tools.tank_l"]) == ("gal", "L")
    assert (us["tools.band_m"], metric["tools.band_m"]) == ("in", "cm")


def test_a_comma_belongs_to_the_blank_before_it():
    found = shown(CREW)
    tails = [p.tail for part in found.parts for row in part.rows for s in row.sentences
             for p in s.pieces if p.blank and p.blank.name == "crew.sprayers"]  # fmt: skip
    assert tails == [","]


def test_only_a_note_has_more_than_one_line():
    found = {one.name: one.lines for one in blanks(shown(CREW))}
    assert found.pop("wishes.notes") > 1
    assert set(found.values()) == {1}
