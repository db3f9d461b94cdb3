"""The twenty houses: sizes, variety."""

from collections import Counter

from farwall.bench.houses import houses
from farwall.floor.faults import faults_of

HOUSES = houses()


def test_twenty_of_four_to_fourteen_rooms():
    sizes = [len(one.job.floor.rooms) for one in HOUSES]
    assert len(HOUSES) == 20
    assert sizes == sorted(sizes)
    assert (min(sizes), max(sizes)) == (4, 14)
    assert len({one.name for one in HOUSES}) == 20


def test_they_have_no_fault():
    assert [str(f) for one in HOUSES for f in faults_of(one.job.floor, one.job.exits)] == []


def test_every_kind_of_opening_cuts_fixtures_and_one_to_three_ways_out_are_there():
    floors = [one.job.floor for one in HOUSES]
    kinds = Counter(opening.kind for floor in floors for opening in floor.openings)
    fixtures = Counter(fixture.kind for floor in floors for fixture in floor.fixtures)
    assert min(kinds[kind] for kind in ("door", "cased", "wide", "outside")) >= 5
    assert set(fixtures) == {"tub", "cabinet", "island"}
    assert sum(bool(floor.saw_cuts) for floor in floors) >= 4
    assert {len(one.job.exits) for one in HOUSES} == {1, 2, 3}
    drawn_walls = [any(o.threshold for o in floor.openings) for floor in floors]
    assert 5 <= sum(drawn_walls) <= 15
    assert {one.job.crew.helper for one in HOUSES} == {True, False}
