"""What the samples say: doses in their order, each sample held against the others."""

import pytest
from tests.job.colour.fennel import asked, first_coat, job, with_samples

from farwall.errors import Unanswerable
from farwall.job.colour.fit import SWATCH_PARTS, colour_fit
from farwall.job.colour.in_words import lab_words
from farwall.job.colour.say_fit import fit_document, fit_lines


@pytest.fixture(scope="module")
def fit():
    return colour_fit(asked(first_coat(("great-room", 44.7, {}))))


def test_weaker_cuts_look_lighter_and_all_darker_than_the_bare_floor(fit):
    own = [one for one in fit.swatches if one.stain == "umber" and not one.over]
    lightness = [one.lab[0] for one in own]
    assert len(own) == len(SWATCH_PARTS)
    assert lightness == sorted(lightness)
    assert lightness[-1] < fit.bare.lab[0]
    assert all(one.low_l < one.lab[0] < one.high_l for one in own)


def test_a_second_colour_is_shown_over_the_first_and_is_darker_there(fit):
    moss = [one for one in fit.swatches if one.stain == "moss"]
    alone, over = ([one for one in moss if bool(one.over) is laid] for laid in (False, True))
    assert len(alone) == len(over) == len(SWATCH_PARTS)
    pairs = zip(alone, over, strict=True)
    assert all(below.lab[0] > above.lab[0] for below, above in pairs)


def test_each_sample_is_told_by_the_others_and_a_stain_told_by_none_is_named(fit):
    by_name = {one.name: one for one in fit.told}
    assert len(by_name) == len(fit.found.patches)
    assert by_name["c-5"].alone
    assert not by_name["c-2"].alone
    assert max(one.away for one in fit.told if not one.alone) < 4


def test_weights_are_a_whole(fit):
    assert sum(one.weight for one in fit.forms) == pytest.approx(1)


def test_what_would_tell_more_is_asked(fit):
    assert "bare-look" in [one.code for one in fit.asks]
    alone = colour_fit(asked(of=with_samples(job().samples[0])))
    assert "ladder" in [one.code for one in alone.asks]
    assert alone.told == ()


def test_without_samples_it_refuses():
    with pytest.raises(Unanswerable, match="say nothing yet"):
        colour_fit(asked(of=with_samples()))


def test_in_words_and_as_json(fit):
    assert any("umber on the bare floor" in one for one in fit_lines(fit, {}))
    assert any("raw umber on the bare" in one for one in fit_lines(fit, {"umber": "raw umber"}))
    document = fit_document(fit)
    assert len(document["swatches"]) == 3 * len(SWATCH_PARTS)
    assert document["swatches"][0]["lightness"]["low"] < document["swatches"][0]["lab"][0]


def test_colours_have_words():
    assert lab_words((35.0, 10.0, 14.0)) == "dark, brown"
    assert lab_words((20.0, 0.0, 0.0)) == "very dark, grey"
