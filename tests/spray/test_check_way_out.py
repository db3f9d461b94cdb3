"""Shut in, by hand in a corridor a metre wide, its one end outside."""

from types import SimpleNamespace

from shapely import box

from farwall.spray.check.way_out import _people_shut_in

WORLD = SimpleNamespace(
    free=box(0, -3, 1, 10), ground=box(0, -3, 1, -0.1), place=lambda x, y: "in the corridor"
)


def band(name, coat, low_m, high_m, begins, ends):
    shape = box(0, low_m, 1, high_m)
    return SimpleNamespace(
        id=name, coat=coat, field=coat, shape=shape, begins=begins, ends=ends
    )  # fmt: skip


def told(*bands, dries_min, steps_in_min, out_min=1e9):
    """Faults of somebody who is at the far end from one minute to another, outside else."""
    coats = list(dict.fromkeys(one.coat for one in bands))
    fields = [
        SimpleNamespace(
            id=coat, coat=coat, walks=[], end_min=0.0, bands=[b for b in bands if b.coat == coat]
        )
        for coat in coats
    ]
    clock = SimpleNamespace(
        coat=coats[0], name="dry to recoat", low_min=0.0, likely_min=None, high_min=dries_min
    )
    plan = SimpleNamespace(bands=list(bands), fields=fields, clocks=[clock], so_far=None)

    def at(minute):
        return (0.5, 9.0) if steps_in_min <= minute < out_min else (0.5, -1.0)

    person = SimpleNamespace(who="sprayer", at=at)
    return [one.at_min for one in _people_shut_in(plan, WORLD, (person,))]


def test_a_coat_that_dries_opens_no_way_over_the_next_one():
    """The first coat, done at 5 min, is dry at 105; the second lies across since 100, and is asked
    after at 110. Whoever stepped in over dry floor before is shut in then."""
    first, second = band("one", "1", 1, 2, 0, 5), band("two", "2", 4, 6, 100, 110)
    assert told(first, second, dries_min=100.0, steps_in_min=50.0) == [110.0]
    assert told(first, second, dries_min=100.0, steps_in_min=1000.0) == []


def test_who_is_shut_in_is_told_once_until_out_again():
    first, second = band("one", "1", 1, 2, 0, 5), band("two", "1", 4, 6, 10, 20)
    assert told(first, second, dries_min=1000.0, steps_in_min=0.0) == [5.0]
    third = band("three", "1", 6, 7, 30, 40)
    assert told(first, second, third, dries_min=1000.0, steps_in_min=15.0, out_min=30.0) == [20.0]


def test_once_dry_the_way_is_open_again():
    first = band("one", "1", 1, 2, 0, 5)
    later = band("two", "2", 9.9, 10, 200, 210)
    assert told(first, later, dries_min=100.0, steps_in_min=50.0, out_min=300.0) == []
