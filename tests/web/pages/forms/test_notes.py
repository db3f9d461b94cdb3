"""What stands under a sentence: the default, its rank, what it would change, the rule's word."""

import re

from tests.web.pages.office import two_rooms

from farwall.job.go import go_or_no_go
from farwall.job.go.table import RULES
from farwall.readers.job_json import job_from
from farwall.web.pages.forms.asked import sentences_of
from farwall.web.pages.forms.crew import CREW, FIRM, FIRST
from farwall.web.pages.forms.notes import DEFAULTS, Notes
from farwall.web.pages.forms.nouns import Blank, Sentence
from farwall.web.pages.forms.samples import SAMPLES
from farwall.web.pages.forms.survey import SURVEY

DROP = Sentence("s-drop", (Blank("drop", "survey.drop_s"),), stands_in=("survey.drop_s",))


def notes(**more):
    job = job_from(two_rooms(**more), "two")
    return Notes(job, go_or_no_go(job))


def ends(text):
    return [float(one) for one in re.search(r"lives ([\d.]+) to ([\d.]+) min", text).groups()]


def test_what_nobody_told_says_its_default_its_rank_and_what_it_would_change():
    (note,) = notes().of(DROP)
    assert "Nobody has told how fast a drop goes in: 12 s stands in (common practice" in note.words
    low, high = ends(note.words)
    assert low < high  # a slab that drinks slowly keeps its edge longer


def test_what_was_told_says_so_and_what_else_would_stand_in():
    (note,) = notes(survey={"drop_s": 9}).of(DROP)
    assert note.words.startswith("Told here; else 12 s would stand in")


def test_a_default_that_was_written_down_is_no_surer():
    (note,) = notes(survey={"drop_s": 12}).of(DROP)
    assert "written down it is no surer" in note.words


def test_warmth_shortens_the_life_of_an_edge_and_damp_air_lengthens_it():
    warm, damp = (
        ends(notes().of(Sentence("x", (), stands_in=(name,)))[0].words)
        for name in ("survey.slab_c", "survey.rh_percent")
    )
    assert warm[0] > warm[1]
    assert damp[0] < damp[1]


def test_a_slab_without_a_clock_tells_no_minutes():
    (note,) = notes(survey={"slab_c": 5}).of(DROP)
    assert "an edge likely lives" not in note.words


def test_the_rule_says_its_word_under_the_sentence():
    age = Sentence("s-age", (), rule="slab age")
    assert [one.kind for one in notes().of(age)] == ["ask"]
    assert [one.kind for one in notes(survey={"slab_age_days": 5}).of(age)] == ["no"]
    assert [one.kind for one in notes(survey={"slab_age_days": 60}).of(age)] == ["go"]


def test_every_rule_and_default_that_a_form_names_is_there():
    rules = {rule.id for rule in RULES}
    for form in (SURVEY, SAMPLES, CREW, FIRST, FIRM):
        for one in sentences_of(form):
            assert not one.rule or one.rule in rules
            assert set(one.stands_in) <= set(DEFAULTS)
