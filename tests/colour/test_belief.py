"""What is believed after the samples: priors, rooms about the floor, what a library keeps."""

import math

import numpy as np
import pytest

from farwall.colour.belief import Prior, Seen, Strength, believe, learned
from farwall.colour.dose import Laid
from farwall.colour.foresight import darkest, foreseen
from farwall.colour.next_coat import Way, next_coat

HALF = (Laid(0, 0.1),)
SEEN = (
    Seen((), (56.0, 0.5, 1.5), "samples", "a"),
    Seen((Laid(0, 0.05),), (50.5, 3.0, 6.5), "samples", "a"),
    Seen(HALF, (46.0, 5.0, 10.0), "samples", "a"),
    Seen((Laid(0, 0.1), Laid(0, 0.1)), (40.0, 7.0, 13.0), "samples", "a"),
    Seen((), (56.5, 0.4, 1.4), "floor", "b", 6, 1.2),
)
HALL = Seen(HALF, (42.5, 5.6, 11.2), "hall", "c", 6, 1.0)
STUDY = Seen(HALF, (48.5, 4.4, 8.8), "study", "c", 6, 1.0)


def lightness(belief, place):
    return float(foreseen(belief, [HALF], place=place)[:, 0, 0].mean())


def test_the_usual_prior_is_what_is_believed_without_one():
    one, other = believe(SEEN, stains=1), believe(SEEN, stains=1, prior=Prior())
    assert one.weights == other.weights
    assert (foreseen(one, [HALF]) == foreseen(other, [HALF])).all()


def test_without_samples_of_a_stain_its_prior_speaks():
    weak, strong = (
        believe(
            SEEN[:1], stains=1, prior=Prior(strengths=(Strength((k,) * 3, (k,) * 3, 0.1, 0.1),))
        )
        for k in (3.0, 12.0)
    )
    assert lightness(strong, "samples") < lightness(weak, "samples") - 3


def test_samples_overrule_a_wrong_library():
    wrong = Prior(strengths=(Strength((40.0,) * 3, (40.0,) * 3),))
    found = foreseen(believe(SEEN, stains=1, prior=wrong), [HALF], place="samples")
    assert found[:, 0, 0].mean() == pytest.approx(46.0, abs=1.5)


def test_a_sure_prior_leaves_less_unknown():
    sure = Prior(strengths=(Strength(spread=0.1, channel_spread=0.1),), lime_spread=0.1)
    wide, narrow = (
        foreseen(believe(SEEN[:1], stains=1, prior=one), [HALF])[:, 0, 0].std()
        for one in (Prior(), sure)
    )
    assert narrow < wide / 2


def test_what_a_job_learned_of_a_stain_foresees_the_next():
    told = learned(believe(SEEN, stains=1), 0)
    assert told.spread < Strength().spread
    next_job = believe(SEEN[:1], stains=1, prior=Prior(strengths=(told,)))
    assert lightness(next_job, "samples") == pytest.approx(46.0, abs=3.0)
    assert all(math.isfinite(one) and one > 0 for one in (*told.scattering, *told.absorbing))


def test_rooms_lie_about_the_floor_each_on_its_side():
    belief = believe((*SEEN, HALL, STUDY), stains=1)
    hall, floor, study = (lightness(belief, one) for one in ("hall", "floor", "study"))
    assert belief.rooms == ("hall", "study")
    assert hall < floor < study


def test_what_one_room_told_is_lent_to_the_others_by_the_floor():
    both = believe((*SEEN, HALL), stains=1, rooms=("study",))
    without = believe(SEEN, stains=1, rooms=("study",))
    assert lightness(both, "study") < lightness(without, "study")
    spread = {
        one: foreseen(both, [HALF], place=one)[:, 0, 0].std() for one in ("hall", "study", "floor")
    }
    assert spread["hall"] < spread["study"]
    assert spread["floor"] < spread["study"]


def test_a_room_that_nobody_named_is_refused():
    with pytest.raises(ValueError, match="attic"):
        foreseen(believe(SEEN, stains=1), [HALF], place="attic")


def test_rooms_that_were_not_seen_change_nothing_of_the_floor():
    plain, named = believe(SEEN, stains=1), believe(SEEN, stains=1, rooms=("hall",))
    assert named.fits[0].middle[:11] == pytest.approx(plain.fits[0].middle, abs=1e-3)


def test_the_thirstier_room_is_never_the_safer_one():
    belief = believe((*SEEN, HALL, STUDY), stains=1)
    ways = [Way(0, water, 0.14) for water in (1.0, 2.0, 4.0, 8.0)]
    asked = {"sample_lab": (42.0, 6.3, 12.2), "dark_range": 3.0}

    def chances(*places):
        return [one.too_dark for one in next_coat(belief, HALF, ways, places=places, **asked).ways]

    hall, study, both = chances("hall"), chances("study"), chances("hall", "study")
    assert all(np.array(hall) >= np.array(study))
    assert all(np.array(both) >= np.array(hall))


def test_a_poor_photo_tells_less():
    sharp, poor = (
        believe((*SEEN[:4], Seen(HALF, (40.0, 6.5, 13.0), "floor", "d", 6, 1.0, blur)), stains=1)
        for blur in (1.0, 8.0)
    )
    assert lightness(sharp, "floor") < lightness(poor, "floor")
    assert (darkest(poor, [HALF], share=0.05)).std() > darkest(sharp, [HALF], share=0.05).std()
