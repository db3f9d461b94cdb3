"""What is gathered for the belief: one state only, every dose known, what is missing asked for."""

from dataclasses import replace

import pytest
from tests.job.colour.fennel import first_coat, job, plan, with_samples

from farwall.colour.dose import Laid
from farwall.facts.samples import Look, Sample
from farwall.job.colour.seen import UNCORRECTED, gathered, look_in
from farwall.job.story import story

WET = Look("clean wet", (45.0, 8.0, 13.0), error_de=0.5)
DRY = Look("dry", (60.0, 2.0, 6.0), error_de=0.5)
SEALED = Look("sealed", (42.0, 8.0, 14.0), error_de=0.5)
ONE = Sample("one", coat="first", cut="1:1", stain="umber", m2_per_l=5.0, looks=(WET,))


def of(*samples, kept=()):
    told = story(plan(), kept) if kept else None
    return gathered(with_samples(*samples), plan(), kept, told)


def test_a_sample_gives_its_dose_of_stain_and_its_wet_look():
    (patch,) = of(ONE).patches
    assert patch.seen.coats == (Laid(0, pytest.approx(0.1)),)
    assert patch.seen.lab == (45.0, 8.0, 13.0)
    assert not patch.of_floor


@pytest.mark.parametrize("look", [DRY, SEALED])
def test_a_dry_or_a_sealed_look_is_no_wet_look(look):
    found = of(replace(ONE, looks=(look,)))
    assert found.patches == ()
    assert [one.code for one in found.asks] == ["sample-look"]


def test_looks_of_other_states_change_nothing():
    assert of(replace(ONE, looks=(DRY, WET, SEALED))).seen == of(ONE).seen


def test_a_second_coat_has_the_dose_of_the_first_beneath_it():
    over = replace(ONE, id="two", over="one", cut="1:3", stain="moss", m2_per_l=10.0)
    patch = of(ONE, over).patches[1]
    assert patch.seen.coats == (Laid(0, pytest.approx(0.1)), Laid(1, pytest.approx(0.025)))


@pytest.mark.parametrize(
    ("change", "code"),
    [({"m2_per_l": None}, "sample-dose"), ({"over": "nobody"}, "sample-beneath")],
)
def test_what_is_not_known_is_asked_for_and_not_guessed(change, code):
    found = of(replace(ONE, **change))
    assert found.patches == ()
    assert [one.code for one in found.asks] == [code]


def test_a_corrected_look_stands_before_one_that_is_none():
    by_eye = Look("clean wet", (20.0, 0.0, 0.0))
    assert look_in((by_eye, WET), "clean wet").lab == WET.lab
    assert look_in((by_eye,), "clean wet").lab == by_eye.lab
    assert look_in((by_eye,), "sealed") is None


def test_a_look_without_a_target_counts_as_a_guess():
    found = of(replace(ONE, looks=(Look("clean wet", (45.0, 8.0, 13.0)),)))
    assert found.patches[0].seen.blur == UNCORRECTED
    assert not found.patches[0].with_target


def test_a_pair_needs_both_states_of_one_sample():
    both = replace(ONE, looks=(WET, SEALED))
    assert of(both, replace(ONE, id="other", looks=(SEALED,))).pairs == ((WET.lab, SEALED.lab),)


def test_a_look_at_the_floor_has_what_lay_there_then():
    kept = first_coat(("bath", 43.0, {}), ("", 44.0, {}))
    bath, floor = of(ONE, kept=kept).of_floor
    assert (bath.seen.place, floor.seen.place) == ("bath", "floor")
    assert [one.coat for one in bath.coats] == ["first"]
    assert floor.seen.spots == 6
    assert floor.seen.spread_l == 1.3


def test_a_dry_look_at_the_floor_is_never_used():
    assert of(ONE, kept=first_coat(("bath", 60.0, {"state": "dry"}))).of_floor == ()


def test_the_stains_of_the_job_are_numbered_in_its_order():
    assert gathered(job(), plan(), (), None).stains == ("umber", "moss")
