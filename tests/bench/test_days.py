"""The bench of the calendar: frozen shops, honest lines."""

from farwall.bench.day_houses import day_question
from farwall.bench.days import days_heading, days_line, score_days
from farwall.cli.main import main


def test_a_seed_gives_the_same_shop_recorded():
    question = day_question(20, 3)
    assert question == day_question(20, 3)
    assert question.houses != day_question(20, 3, seed=12).houses
    first = question.houses[0]
    assert (first.area_m2, first.coats, first.free_from_day, first.due_day) == (122.0, 2, 46, 70)


def test_a_small_shop_is_scored_and_found_sound():
    found = score_days(5, 1)
    assert found.faults == ()
    assert found.gap_percent <= 2
    assert str(found.columns) in days_line(found)
    assert "gap %" in days_heading()


def test_the_bench_prints_a_line_for_each_set(capsys):
    assert main(["bench", "days", "--houses", "5"]) == 0
    assert len(capsys.readouterr().out.splitlines()) == 2


def test_a_bench_without_sets_is_refused(capsys):
    assert main(["bench", "days", "--houses", "1"]) == 2
    assert "5 houses" in capsys.readouterr().err
