import pytest

from farwall.air.limits import drop_verdict, insist, slab_verdict
from farwall.errors import Unanswerable
from farwall.phrasebook import in_spanish
from farwall.units import c_from_f


@pytest.mark.parametrize(
    ("slab_f", "word"),
    [(20, "no"), (49.9, "no"), (50, "care"), (54.9, "care"), (55, "yes"), (70, "yes"),
     (80, "yes"), (80.1, "care"), (85, "care"), (85.1, "no"), (120, "no")],
)  # fmt: skip
@pytest.mark.common_practice
def test_the_slab_says_yes_from_50_to_85_f_with_care_at_the_ends(slab_f, word):
    """Common practice, no source: 55-80 F go, 50-55 slow, below 50 or above 85 no."""
    verdict = slab_verdict(surface_c=c_from_f(slab_f))
    assert verdict.word == word
    assert bool(verdict.reason) == (word != "yes")
    assert bool(verdict.remedies) == (word == "no")


@pytest.mark.parametrize(("drop_s", "word"), [(3, "yes"), (20, "yes"), (21, "care"), (61, "no")])
@pytest.mark.common_practice
def test_a_drop_that_stands_a_minute_is_a_no(drop_s, word):
    """Common practice, no source, for 20 s; the minute is ASTM F3191's."""
    assert drop_verdict(drop_s=drop_s).word == word


def test_open_time_is_never_gained_by_shutting_out_air():
    """A safety promise: the remedies for a hot slab say so."""
    assert any("air" in one and "not" in one for one in slab_verdict(surface_c=40).remedies)


def test_insisting_raises_the_reason_and_the_remedies():
    insist(slab_verdict(surface_c=20))
    with pytest.raises(Unanswerable, match=r"below 10\.0 °C") as no:
        insist(slab_verdict(surface_c=5))
    assert no.value.remedies


@pytest.mark.parametrize("slab_f", [45, 82, 90])
def test_a_job_in_feet_reads_its_own_degrees_first_and_each_reason_has_its_spanish(slab_f):
    feet = slab_verdict(surface_c=c_from_f(slab_f), us=True).reason
    metres = slab_verdict(surface_c=c_from_f(slab_f)).reason
    assert feet.startswith(f"The slab is {slab_f} °F (")
    assert f" °C ({slab_f} °F)" in metres
    for one in (feet, metres):
        assert in_spanish(one).startswith("La losa está a ")
    sunny = "So it is where the sun comes in; in the shade 83 °F (28.5 °C)."
    assert in_spanish(f"{feet} {sunny}").endswith("a la sombra 83 °F (28.5 °C).")
