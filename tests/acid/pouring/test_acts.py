"""Opening, sanding, sweeping, hosing: silica, chromate, pressure."""

import pytest
from tests.acid.pouring.mixtures import thing

from farwall.acid.pouring.acts import ACTS, BY_ACT, may_do


@pytest.mark.parametrize(
    ("act", "things", "told", "word"),
    [
        ("open under pressure", ["mixed stain"], [], "refused"),
        ("open released", ["mixed stain"], [], "allowed with warning"),
        ("sand dry", ["dried stain"], [], "refused"),
        ("grind with shroud and vacuum", ["dried stain"], [], "allowed with warning"),
        ("grind with shroud and vacuum", ["dried stain"], ["chromate"], "refused"),
        ("grind with shroud and vacuum", ["dried stain"], ["stain-unknown"], "refused"),
        ("grind with shroud and vacuum", ["dried stain:b", "dried stain"], ["chromate"],
         "refused"),
        ("sweep dry", ["dried stain"], [], "refused"),
        ("blow dry", ["dried stain"], [], "refused"),
        ("vacuum dry", ["dried stain"], [], "allowed with warning"),
        ("vacuum dry", ["bleach"], [], "refused"),
        ("hose a spill", ["stain"], [], "refused"),
        ("close a vented lid", ["rinse water"], [], "refused"),
    ],
)  # fmt: skip
def test_an_act_on_things(act, things, told, word):
    assert may_do(act, [thing(one, told) for one in things]).word == word


@pytest.mark.parametrize("act", ACTS)
def test_an_act_on_nothing_is_refused(act):
    assert may_do(act, []).word == "refused"


def test_silica_controls_are_named_where_concrete_is_ground():
    told = " ".join(
        one.instead for one in may_do("grind with shroud and vacuum", [thing("dried stain")]).fired
    )
    assert all(word in told for word in ("shroud", "99 %", "HEPA", "respirator"))


def test_every_act_has_rules():
    assert set(BY_ACT) == set(ACTS)
