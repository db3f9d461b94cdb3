"""Where samples stand and what is to be done now, told through a whole day."""

from __future__ import annotations

import random

from tests.job.colour.sample_day.drawn import Told, drawn_day, quince

from farwall.job.colour.sample_day import course_of, day_of

COURSE = course_of(quince())


def first(told, at_min):
    task = day_of(COURSE, told.happened, at_min=at_min).tasks[0]
    return task.sample, task.step


def stand(told, at_min, sample):
    day = day_of(COURSE, told.happened, at_min=at_min)
    return next(one for one in day.stands if one.sample == sample)


def laid(told, at_min, sample):
    told("sample-laid", at_min, sample=sample, cut="1:1", before_kg=2.3)
    told("sample-laid", at_min + 0.5, sample=sample, cut="1:1", after_kg=2.15)


def test_a_day_is_led_from_the_first_cut_to_the_signature():
    told = Told(COURSE.starts_at)
    assert not day_of(COURSE, (), at_min=0).begun
    assert first(told, 0) == ("A1", "lay")
    told("sample-laid", 1, sample="A1", cut="1:3", before_kg=2.3)
    assert first(told, 1) == ("A1", "weigh")  # before the sprayer is rinsed for the next cut
    told("sample-laid", 2, sample="A1", cut="1:3", after_kg=2.15)
    assert first(told, 2) == ("B1", "lay")
    sheen = COURSE.wait("first", "sheen")
    assert first(told, 1 + sheen.low_min) == ("A1", "sheen")  # it may be gone already
    laid(told, 3, "B1")
    laid(told, 5, "C1")
    assert first(told, 6) == ("A1", "sheen")
    for n, one in enumerate(("A1", "B1", "C1")):
        told("sample-sheen-lost", 12 + n, sample=one, after_min=9)
    dry = COURSE.wait("first", "dry")
    assert stand(told, 20, "A1").from_min == 1 + dry.low_min
    assert stand(told, 20, "A2").waits_for == "A1"
    told("sample-dry", 100, sample="A1", after_min=99)
    assert first(told, 101) == ("A2", "lay")
    assert stand(told, 101, "A1").waits_for == "A2"  # not washed before its second coat is down
    laid(told, 105, "A2")
    told("sample-sheen-lost", 112, sample="A2", after_min=7)
    dwell = COURSE.wait("second", "dwell")
    assert stand(told, 113, "A1").step == "wash"
    assert stand(told, 113, "A1").from_min == 105 + dwell.likely_min  # by the coat on top
    told("sample-dry", 200, sample="A2", after_min=95)
    due = 106 + dwell.likely_min
    assert (stand(told, due, "A2").step, stand(told, due, "A2").from_min) == ("wash", due - 1)
    for one in ("A1", "A2"):
        told("sample-washed", due + 5, sample=one, scrubs=3, ph=7.5, rag="clean", held="holds")
    assert first(told, due + 6) in {("A1", "wet"), ("B1", "dry"), ("C1", "dry")}
    told("photo", due + 8, sample="A2", state="clean wet", file="0" * 64)
    down = COURSE.wait("second", "dry-down")
    assert stand(told, due + 9, "A2").from_min == due + 5 + down.low_min
    told("sample-sealed", due + 1500, sample="A2")
    told("sample-seen", due + 1600, sample="A2", state="sealed", light="day")
    assert stand(told, due + 1601, "A2").step == "lamp"
    told("photo", due + 1900, sample="A2", state="sealed", light="lamp", file="0" * 64)
    told("sample-judged", due + 1901, sample="A2", verdict="right")
    day = day_of(COURSE, told.happened, at_min=due + 1902)
    assert ("A2", "sign") in {(one.sample, one.step) for one in day.tasks}
    told("sample-approved", due + 1903, sample="A2", approved_by="Invented Owner")
    day = day_of(COURSE, told.happened, at_min=due + 1904)
    assert day.signed == "A2"
    assert "sign" not in {one.step for one in day.tasks}
    assert stand(told, due + 1904, "A2").missing == ("slab", "air", "humidity", "drop")


def test_a_step_that_was_missed_is_told_and_holds_nothing_up():
    told = Told(COURSE.starts_at)
    told("sample-laid", 1, sample="A1", cut="1:3")
    told("sample-dry", 120, sample="A1", after_min=119)
    here = stand(told, 121, "A1")
    assert here.step == "wash"
    assert "sheen" in here.missing
    assert "weighed" in here.missing


def test_a_second_coat_on_a_washed_square_is_out():
    told = Told(COURSE.starts_at)
    laid(told, 1, "A1")
    told("sample-washed", 400, sample="A1")
    assert stand(told, 401, "A2").step == "out"
    assert "A2" not in {one.sample for one in day_of(COURSE, told.happened, at_min=401).tasks}


def test_a_struck_tap_never_was_and_the_stopwatch_is_the_moment_that_was_entered():
    told = Told(COURSE.starts_at)
    slip = told("sample-laid", 1, sample="A1", cut="1:3")
    told("struck", 2, entry=slip.id)
    assert stand(told, 3, "A1").step == "lay"
    told("sample-laid", 4, sample="A1", cut="1:3")
    told("sample-laid", 300, sample="A1", cut="1:3", drop_s=12)  # a figure told later
    run = stand(told, 301, "A1").running[0]
    assert (run.name, run.from_min) == ("sheen", 4)


def test_who_was_judged_right_before_it_was_sealed_is_not_signed():
    told = Told(COURSE.starts_at)
    laid(told, 1, "A1")
    told("sample-judged", 500, sample="A1", verdict="right")
    assert "sign" not in {t.step for t in day_of(COURSE, told.happened, at_min=501).tasks}


def test_the_laws_of_any_day():
    dice = random.Random(8)
    for number in range(400):
        told = drawn_day(dice, COURSE, f"d{number}")
        at_min = dice.choice((0.0, 30.0, 500.0, 3000.0))
        day = day_of(COURSE, told.happened, at_min=at_min)
        stands = {one.sample: one for one in day.stands}
        assert len(stands) == len(day.stands)
        late = [one.from_min is not None and one.from_min > at_min for one in day.tasks]
        assert late == sorted(late)  # what can be done now stands before what waits
        for task in day.tasks:
            if task.step in {"weigh", "sign"}:
                continue
            assert stands[task.sample].step == task.step
            assert not stands[task.sample].waits_for
        for one in day.stands:
            assert (one.step == "done") <= ("verdict" not in one.missing)
            assert all(run.from_min <= told.happened[-1].at_min for run in one.running)
