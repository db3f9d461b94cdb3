"""The fumes on the page of acid and water: said in both languages, drawn on the tape, no script."""

import re
from dataclasses import replace

import pytest
from tests.job.acid_day.fumes.fumes_house import planned

from farwall.facts.washing import Washing
from farwall.job.acid_day.day import acid_day
from farwall.job.acid_day.fumes import fumes_of
from farwall.job.acid_day.ground import Ground
from farwall.phrasebook import LANGUAGE
from farwall.web.pages.acid.fumes import CAUTIONS, fumes_shown
from farwall.web.words import said, words


@pytest.fixture(scope="module")
def day():
    job, plan = planned()
    ground = Ground(job, plan)
    return ground, acid_day(ground)


def shown(day, language):
    token = LANGUAGE.set(language)
    try:
        return fumes_shown(*day)
    finally:
        LANGUAGE.reset(token)


def test_page_tells_the_fumes(own):
    own.put_planned()
    text = own.get("/houses/two/acid/fumes").text
    part = text[text.index('id="acid-fumes"') :]
    assert said("acid-fumes-others-out") in part.replace("&#39;", "'")
    assert part.count("<svg") >= 2
    assert "style=" not in part
    assert "mask" not in part


@pytest.mark.parametrize("language", ["en", "es"])
def test_every_room_coat_way_doubt_and_caution_is_said(day, language):
    ground, reckoned = day
    told = shown(day, language)
    assert len(told["rooms"]) == len(ground.job.floor.rooms)
    assert len(told["kept_out"]) == 2
    assert re.match(r"(After coat|Después de la mano) 1, ", told["kept_out"][0])
    assert len(told["ways"]) == 4
    assert len(told["rests"]) == len(reckoned.fumes.unknowns)
    assert len(told["cautions"]) == len(CAUTIONS)
    assert not re.search(r"\{\w+\}|e\+", str({**told, "pictures": ()}))


@pytest.mark.parametrize("language", ["en", "es"])
def test_chromate_and_ammonia_are_said_and_acid_that_is_not_there(day, language):
    ground, _ = day
    job = ground.job
    stain = replace(job.stains[0], chromate=True)
    told = _of(replace(job, stains=(stain,), washing=Washing(base="ammonia water")), day, language)
    assert "1926.1126" in told["chromate"]
    assert "NIOSH" in told["ammonia"]
    bare = replace(job.stains[0], hcl_percent_low=0.0, hcl_percent_high=0.0)
    assert set(_of(replace(job, stains=(bare,)), day, language)) == {"cautions", "none"}


def _of(job, day, language):
    ground = Ground(job, day[0].plan)
    return shown((ground, replace(day[1], fumes=fumes_of(ground))), language)


def test_spanish_is_whole():
    ours = {key for key in words("en") if key.startswith("acid-fumes-")}
    assert ours == {key for key in words("es") if key.startswith("acid-fumes-")}


def test_the_picture_names_every_limit_and_keeps_words_on_it(day):
    wide, narrow = shown(day, "en")["pictures"]
    for ppm in ("45 ppm", "5 ppm", "2 ppm", "0.77 ppm"):
        assert ppm in wide
        assert ppm in narrow
    assert "(NIOSH 2025" in wide
    assert "<script" not in wide + narrow


def test_a_coat_is_called_by_its_number_and_a_stain_has_one_word_in_spanish():
    from farwall.web.words.en.acid_fumes import WORDS as EN
    from farwall.web.words.es.acid_fumes import WORDS as ES

    for key in ("acid-fumes-kept-out", "acid-fumes-kept-out-once"):
        assert "coat {coat}" in EN[key]
        assert "la mano {coat}" in ES[key]
    assert not [one for one in ES.values() if " tinta" in one or "borde mojado" in one]
