"""A verdict for people: each reason once, what is merely not known last or not at all."""

from tests.acid.pouring.mixtures import thing

from farwall.acid.pouring.gate import VAGUE, may_pour
from farwall.acid.pouring.reasons import reasons_of, traits_by_name


def test_the_same_reason_is_told_once_with_all_that_it_is_about():
    verdict = may_pour([thing("stain"), thing("muriatic acid"), thing("bleach")])
    told = [one for one in reasons_of(verdict) if one.what.startswith("Chlorine gas")]
    assert len(told) == 1
    assert set(traits_by_name(told[0])) == {"stain a", "muriatic acid a", "bleach a"}


def test_what_is_merely_not_known_is_left_out_where_a_danger_refuses():
    verdict = may_pour([thing("stain", ["unread", "stain-unknown"]), thing("bleach", ["unread"])])
    assert {one.rule for one in verdict.fired} & VAGUE
    vague = {one.what for one in verdict.fired if one.rule in VAGUE}
    assert not vague & {one.what for one in reasons_of(verdict)}


def test_what_is_merely_not_known_is_told_where_nothing_else_refuses():
    verdict = may_pour([thing("epoxy part A"), thing("water")])
    assert reasons_of(verdict)[0].what.startswith("Nothing says")


def test_an_allowed_pour_tells_why_it_is_allowed():
    reasons = reasons_of(may_pour([thing("water"), thing("stain")]))
    assert {one.word for one in reasons} == {"allowed"}
    assert any("Water thins it" in one.what for one in reasons)
