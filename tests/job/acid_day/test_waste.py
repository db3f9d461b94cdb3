"""The waste water of a planned house: litres, metals, limits, words, tests, what is asked."""

import re
from dataclasses import replace

import pytest
from tests.job.acid_day.waste_house import JOB, STAIN, TEST, WORD, asked, ground

from farwall.acid.settling import holds_mg_l
from farwall.facts.contents import Content
from farwall.facts.discharge import Discharge, OfficialWord
from farwall.facts.job import Survey
from farwall.facts.plain import plain
from farwall.facts.washing import Drums, Washing
from farwall.job.acid_day.day import acid_day
from farwall.job.acid_day.in_short import in_short
from farwall.job.acid_day.waste import sentences, waste_of, waste_said
from farwall.job.acid_day.waste.figures import figure, range_of
from farwall.job.acid_day.waste.reckon import area_of, most_held_mg_l
from farwall.phrasebook import in_spanish

GROUND = ground()
PART = waste_of(GROUND)


def metal(part, name):
    return next(one for one in part.metals if one.metal == name)


def test_copper_by_hand():
    """By hand: litres of mix a square metre times the floor, half of it stain; at 1.25 kg/L and
    1 to 10 % the crystals hold 37.28 % of copper, the dry salt 47.27 %; 1 and 30 % of it in the
    most and the least water."""
    plan = GROUND.plan
    stain_l = area_of(plan) * plan.inputs.l_per_m2["c1"] / 2
    copper = metal(PART, "copper")
    assert copper.laid_low_g == pytest.approx(stain_l * 1250 * 0.01 * 0.3728, rel=1e-3)
    assert copper.laid_high_g == pytest.approx(stain_l * 1250 * 0.10 * 0.4727, rel=1e-3)
    assert copper.low_mg_l == pytest.approx(10 * copper.laid_low_g / PART.water_high_l)
    assert copper.high_mg_l == pytest.approx(300 * copper.laid_high_g / PART.water_low_l)


def test_raw_rinse_water_fails_the_local_limits_that_were_read():
    assert {one.metal: one.against for one in PART.metals} == {
        "copper": "may be above", "manganese": "may be above", "iron": "may be above",
    }  # fmt: skip
    strong = replace(STAIN, contents=(Content("manganese(II) chloride", 15, 20),))
    assert waste_of(ground(stains=(strong,))).metals[0].against == "above"
    assert metal(PART, "copper").low_mg_l > metal(PART, "copper").local_low_mg_l


def test_what_settles_is_told_by_metal_and_by_base():
    told = {one.metal: one.settles for one in PART.metals}
    assert told == {"copper": "falls out", "manganese": "much stays", "iron": "falls out"}
    with_ammonia = waste_of(ground(washing=Washing(base="ammonia water")))
    assert metal(with_ammonia, "copper").settles == "much stays"
    assert most_held_mg_l("copper", ammonia=True) >= holds_mg_l("copper", 8.5, ammonia_mol_l=0.1)


def test_chromate_changes_the_part_and_stays_in_the_water():
    stain = replace(STAIN, contents=(Content("sodium dichromate", 5),))
    part = waste_of(ground(stains=(stain,)))
    assert part.chromate == ("umber",)
    assert any("D007" in one for one in part.chromium)
    assert {one.settles for one in part.metals} == {"stays"}
    assert metal(part, "chromium(VI)").high_mg_l is None
    assert "Chromium(VI): " in "\n".join(waste_said(part))
    assert PART.chromium == ()


def test_drums_as_told():
    part = waste_of(ground(washing=Washing(drums=Drums(size_l=100, empty_kg=5, fill_percent=80))))
    assert part.drum_holds_l == pytest.approx(80)
    assert part.drum_full_kg == pytest.approx(85)


@pytest.mark.parametrize("way", ["septic", "storm drain", "no way"])
def test_no_way_is_refused_with_its_reason(way):
    part = waste_of(ground(survey=Survey(waste=way)))
    assert part.refusal.startswith("No: ")
    assert waste_said(part)[0] == part.refusal


def test_a_way_that_may_be_is_not_refused():
    assert PART.refusal == ""


def test_without_a_word_somebody_is_asked():
    assert PART.asks == (sentences.ASK_WORD, sentences.ASK_TESTS, sentences.ASK_SHARE)
    sewer = waste_of(ground(survey=Survey(waste="sewer in writing")))
    assert sentences.ASK_SEWER in sewer.asks


@pytest.mark.parametrize(
    ("word", "asked_for"),
    [
        (WORD, False),
        (replace(WORD, in_writing=False), True),
        (replace(WORD, until="2027-05-03"), True),
        (replace(WORD, who=""), True),
        (OfficialWord("hauled", "B", "Hauler", "2027-05-01"), True),
    ],
)
def test_a_sewer_needs_a_written_word_that_holds(word, asked_for):
    part = waste_of(
        ground(survey=Survey(waste="sewer in writing"), discharge=Discharge((word,), ()))
    )
    assert (sentences.ASK_SEWER in part.asks) is asked_for


@pytest.mark.parametrize("route", ["sewer in writing", "drums", None])
def test_who_said_no_is_named_and_another_way_asked_for(route):
    no = OfficialWord("not allowed", "", "Town works", "2027-04-02")
    part = waste_of(ground(survey=Survey(waste=route), discharge=Discharge((no,), ())))
    assert part.asks[0] == sentences.SAID_NO.format(office="Town works")
    assert sentences.ASK_SEWER not in part.asks
    taken = OfficialWord("hauled", "B", "Hauler", "2027-05-01")
    other = waste_of(ground(survey=Survey(waste=route), discharge=Discharge((no, taken), ())))
    assert not any("said no" in one for one in other.asks)


def test_a_test_is_held_to_the_words_limits():
    part = waste_of(asked())
    against = part.tests[0].against[0]
    assert (against.word, against.why) == ("above", ("Copper 12 against 1.",))
    assert "Drum 1, by the word of Sewer district, pretreatment: above. Copper 12 against 1." in (
        waste_said(part)
    )


def test_a_test_of_all_the_water_measures_the_share():
    """By hand: 12 mg/L in 60 L are 0.72 g of the copper laid."""
    share = waste_of(asked()).tests[0].shares[0]
    laid = metal(PART, "copper").laid_high_g
    assert share.metal == "copper"
    assert share.low_percent == pytest.approx(100 * 0.72 / laid)


def test_a_test_without_any_word_says_nothing():
    part = waste_of(ground(discharge=Discharge((), (TEST,))))
    assert "Drum 1: not allowed to say. No limit was named." in waste_said(part)


def test_a_measured_share_replaces_the_guess():
    part = waste_of(ground(stains=(replace(STAIN, washed_off_percent=4),)))
    assert (part.washed_off_low_percent, part.washed_off_high_percent) == (2, 8)
    assert part.washed_off_rank == "measured here"
    assert sentences.ASK_SHARE not in part.asks
    assert PART.washed_off_rank == "guess"


def test_a_sheet_that_nobody_entered_is_told():
    part = waste_of(ground(stains=(replace(STAIN, contents=()),)))
    assert part.metals == ()
    assert part.unread == ("umber",)
    assert any(one.startswith("The metals of umber are not known") for one in part.warnings)


def test_left_over_mix_is_hazardous_at_two_already():
    """40 CFR 261.22(a)(1): at pH 2 and below."""
    assert any("at pH 2 or below it is hazardous" in one for one in PART.steps)


def test_the_part_never_says_safe():
    for part in (PART, waste_of(asked())):
        assert "safe" not in " ".join(waste_said(part)).replace("safety", "")
        assert sentences.NEVER in waste_said(part)


def test_the_part_is_plain():
    assert plain(waste_of(asked()))["tests"][0]["drum"] == "1"
    assert JOB.discharge == Discharge()


@pytest.mark.parametrize(
    ("value", "told"),
    [(0, "0"), (0.0632, "0.063"), (0.5, "0.5"), (4, "4"), (17.3, "17"), (643, "640"),
     (1101.2, "1,100"), (1.2e6, "1,200,000")],
)  # fmt: skip
def test_figures_have_two_digits(value, told):
    assert figure(value) == told


def test_ranges_in_words():
    assert range_of(1, 30) == "1 to 30"
    assert range_of(4.0, 4.0) == "4"
    assert range_of(17, None) == "17 and more"


def test_every_sentence_of_the_part_is_said_in_spanish_whole():
    chromate = (replace(STAIN, id="teal", name="teal", contents=(), chromate=True),)
    ways = [ground(survey=Survey(waste=way)) for way in ("septic", "no way")]
    parts = [waste_of(one) for one in (asked(), ground(stains=chromate), *ways)]
    told = {
        one
        for part in parts
        for lines in (part.clear, part.steps, part.asks, part.warnings, part.chromium, part.dust)
        for one in (*lines, *filter(None, [part.refusal]))
    }
    assert len(told) > 20
    for one in told:
        spanish = in_spanish(one, frozenset({"teal", "umber"}))
        assert spanish is not None, one
        assert not re.search(r"\b(the|and|with|is|some|of)\b", spanish), spanish


def test_in_short_a_drum_that_is_above_comes_first():
    told = ground(discharge=Discharge((WORD,), (replace(TEST, found_ph=1.5),)))
    lines = next(found for key, _, found in in_short(acid_day(told), us=True) if key == "waste")
    assert [one.stop for one in lines] == [True, True, False]
    assert lines[0].text.startswith("Drum 1, by the word of Sewer district, pretreatment: above.")
    assert lines[1].text.endswith("D002.")
    for one in lines:
        assert " the " not in (in_spanish(one.text) or " the "), one.text
