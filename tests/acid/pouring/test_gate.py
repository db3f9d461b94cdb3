"""Laws of the gate: more never allows, order counts only where it must, unknown is refused."""

from dataclasses import replace
from typing import get_args

from hypothesis import given
from hypothesis import strategies as st
from tests.acid.pouring.mixtures import thing

from farwall.acid.pouring.gate import REFUSING, RULES, may_pour
from farwall.acid.pouring.nouns import VESSELS, WORDS, Trait
from farwall.facts.materials import MaterialKind

KINDS = get_args(MaterialKind)
TOLD = st.lists(st.sampled_from(["chromate", "oxidiser", "stain-unknown", "unread", "ammonium"]),
                max_size=2)  # fmt: skip
ANY = st.builds(
    lambda kind, told, left: thing(kind, told, left=left),
    st.sampled_from(KINDS), TOLD, st.booleans(),
)  # fmt: skip
TUBS = st.lists(ANY, min_size=1, max_size=4).filter(lambda tub: not all(one.left for one in tub))
"""Something is poured; a tub in which all was left from before is no question."""
VESSEL = st.sampled_from(VESSELS)


@given(TUBS, ANY, st.integers(0, 4), VESSEL)
def test_one_more_thing_never_makes_a_verdict_milder(tub, more, place, vessel):
    before = may_pour(tub, vessel).word
    after = may_pour([*tub[:place], more, *tub[place:]], vessel).word
    assert WORDS.index(after) >= WORDS.index(before)


@given(TUBS, VESSEL, st.data())
def test_order_counts_only_for_water_into_acid_and_stain_over_a_neutraliser(tub, vessel, data):
    turned = data.draw(st.permutations(tub))
    in_turn = {rule.id for rule in RULES if rule.in_turn}
    assert in_turn == {
        "water into acid",
        "water into lye",
        "water into a cut",
        "stain over neutraliser",
    }
    told = [
        {(f.rule, frozenset(m.name for m in f.met)) for f in may_pour(one, vessel).fired}
        for one in (tub, turned)
    ]
    assert {rule for rule, _ in told[0] ^ told[1]} <= in_turn


@given(TUBS, VESSEL)
def test_unknown_is_always_refused(tub, vessel):
    verdict = may_pour([*tub, thing("other")], vessel)
    assert verdict.word == "refused"
    assert any(one.rule == "unknown" for one in verdict.fired)


@given(TUBS, VESSEL)
def test_every_verdict_carries_its_proof(tub, vessel):
    verdict = may_pour(tub, vessel)
    assert verdict.word == max((one.word for one in verdict.fired), key=WORDS.index)
    has = {(one.name, trait) for one in tub for trait in one.traits}
    for fired in verdict.fired:
        assert fired.met
        assert all(not met.trait or (met.name, met.trait) in has for met in fired.met)
        assert all(met.because and met.rank for met in fired.met)


@given(TUBS, VESSEL, ANY, st.data())
def test_a_trait_told_besides_never_lifts_a_refusal_that_a_rule_names(tub, vessel, other, data):
    place = data.draw(st.integers(0, len(tub) - 1))
    more = replace(tub[place], has=(*tub[place].has, *other.has))
    before = may_pour(tub, vessel).fired
    after = may_pour([*tub[:place], more, *tub[place + 1 :]], vessel).fired
    named = {rule.id for rule in REFUSING}
    assert {one.rule for one in before} & named <= {one.rule for one in after}


def test_nothing_poured_is_not_allowed():
    assert may_pour([]).word == "refused"
    assert may_pour([thing("water", left=True)]).word == "refused"


def test_what_is_one_and_the_same_does_nothing_to_itself():
    tub = [thing("stain", ["chromate"]), thing("stain", ["chromate"])]
    assert may_pour(tub).word == "allowed"


def test_acid_goes_into_water_and_water_not_into_acid():
    water, acid = thing("water"), thing("muriatic acid")
    assert may_pour([water, acid]).word == "allowed"
    assert may_pour([acid, water]).word == "refused"
    assert may_pour([water, acid, thing("water")]).word == "refused"


def test_a_film_left_in_the_sprayer_may_be_flushed_with_water():
    assert may_pour([thing("stain", left=True), thing("water")], "sprayer").word == "allowed"
    assert may_pour([thing("stain"), thing("water")], "sprayer").word == "refused"


def test_a_sheet_that_forbids_wins_over_the_gate():
    water = replace(thing("water"), never_with=("bicarbonate",))
    verdict = may_pour([water, thing("bicarbonate")])
    assert verdict.word == "refused"
    assert verdict.fired[0].rule == "forbidden by its sheet"


def test_a_sheet_that_allows_by_name_covers_what_no_rule_names_but_no_danger():
    sealer = replace(thing("water sealer"), may_with=("water dye", "bleach"))
    assert may_pour([thing("water dye"), thing("water sealer")]).word == "refused"
    assert may_pour([thing("water dye"), sealer]).word == "allowed"
    assert may_pour([thing("bleach"), sealer]).word == "refused"


def test_a_sample_of_the_very_mix_lets_two_stains_meet_but_not_with_chromate():
    one, other = thing("stain:a", ["sampled"]), thing("stain:b")
    assert may_pour([one, other]).word == "allowed with warning"
    chromate = thing("stain:a", ["sampled", "chromate"])
    assert may_pour([chromate, other]).word == "refused"


def test_every_trait_is_asked_for_by_a_rule_and_held_by_a_thing():
    asked = {trait for rule in RULES for need in rule.meets for trait in need}
    held = {trait for kind in KINDS for told in ([], ["unread", "stain-unknown"], ["chromate"],
            ["ammonium"]) for trait in thing(kind, told).traits}  # fmt: skip
    assert asked == held == set(get_args(Trait))


def test_every_rule_that_refuses_fires_on_some_tub_of_at_most_three():
    kinds = [thing(kind) for kind in KINDS]
    kinds += [thing("stain", ["chromate"]), thing("stain", ["stain-unknown"]), thing("stain:b"),
              thing("stain", ["ammonium"]), thing("solvent stripper", ["unread"])]  # fmt: skip
    fired = {
        one.rule
        for vessel in VESSELS
        for a in kinds
        for b in kinds
        for one in may_pour([a, b], vessel).fired
    }
    three = may_pour([thing("peroxide"), thing("solvent"), thing("vinegar")])
    fired |= {one.rule for one in three.fired}
    assert {rule.id for rule in RULES} - fired <= {"sampled mix"}


def test_a_sample_is_told_of_only_where_one_was_entered():
    for told, found in (((), False), (("sampled",), True)):
        tub = [thing("stain:a", told), thing("stain:b", told)]
        fired = {one.rule for one in may_pour(tub, "open tub").fired}
        assert ("sampled mix" in fired) is found
