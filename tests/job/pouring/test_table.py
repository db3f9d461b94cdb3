"""The standing table: every two materials of a job once, where and in the order that fare best."""

from dataclasses import replace
from itertools import combinations

from hypothesis import given
from hypothesis import strategies as st
from tests.acid.pouring.pairs_by_hand import never_pairs
from tests.job.pouring.test_listed import SAND

from farwall.facts.job import Stain
from farwall.facts.materials import Material
from farwall.job.pouring.listed import materials_of
from farwall.job.pouring.table import brought_of, groups_of, lines_of

READ = replace(SAND, stains=(Stain("sand", "sand", chromate=False, oxidiser=False,
                                   sheet_read="2027-01-04"),))  # fmt: skip


def pairs_told(groups):
    return [frozenset((p.first, p.second)) for group in groups for p in group.pairs]


def test_every_two_materials_are_told_exactly_once():
    names = [one.name for one in materials_of(READ)]
    told = pairs_told(groups_of(READ))
    assert sorted(map(sorted, told)) == sorted(sorted((a, b)) for a, b in combinations(names, 2))


def test_the_refused_come_first_and_tell_why_and_what_instead():
    groups = groups_of(replace(READ, materials=(Material("b", "bleach", "bleach"),)))
    assert groups[0].word == "refused"
    assert all(one.what and one.source for one in groups)
    chlorine = next(one for one in groups if one.rule == "bleach and acid")
    assert {"sand", "bleach"} in [{p.first, p.second} for p in chlorine.pairs]


def test_stain_goes_into_water_and_the_table_says_the_order():
    pairs = [p for group in groups_of(READ) for p in group.pairs]
    pair = next(p for p in pairs if {p.first, p.second} == {"water", "sand"})
    assert (pair.first, pair.second, pair.order_matters) == ("water", "sand", True)


def test_what_may_be_brought_is_refused_with_every_stain():
    groups = brought_of(READ)
    assert {group.word for group in groups} == {"refused"}
    told = {name for pair in pairs_told(groups) for name in pair}
    assert {"bleach", "ammonia water", "something unknown", "sand"} <= told


def test_lines_lose_no_pair_and_add_none():
    for group in (*groups_of(READ), *brought_of(READ)):
        lines = lines_of(group)
        told = [frozenset((line.one, other)) for line in lines for other in line.others]
        assert sorted(map(sorted, told)) == sorted(map(sorted, pairs_told([group])))


@given(st.sampled_from(never_pairs()))
def test_the_table_refuses_every_pair_of_the_table_by_hand(pair):
    kinds = [kind for kind in pair if "stain" not in kind]
    job = replace(READ, materials=tuple(Material(k, k, f"my {k}", sheet_read=True) for k in kinds))
    names = {one.material.kind: one.name for one in materials_of(job)}
    wanted = {names[kind] for kind in pair}
    refused = [set(p) for p in pairs_told(g for g in groups_of(job) if g.word == "refused")]
    assert wanted in refused
