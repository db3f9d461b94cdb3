"""The bench in words: one aligned line a field."""

from dataclasses import replace

from farwall.bench.growth import Growth
from farwall.bench.habits import ExtraGallon, LargestLast
from farwall.bench.score import FieldScore, Score
from farwall.bench.summary import summary
from farwall.bench.words import (
    field_line,
    growth_heading,
    growth_line,
    habit_lines,
    heading,
    score_lines,
    summary_lines,
)

FIELD = FieldScore("small square", "", ("room",), 9.0, 3, 1.1, 3.7, 3.0, 3.7 / 3, 1.45, 1.81,
                   1.25, 0, "fits", 0.12)  # fmt: skip


def test_a_field_stands_under_its_heading():
    line, head = field_line(FIELD), heading()
    for word, figure in (("E/bound", "1.23"), ("replay", "1.81"), ("bands", "3"), ("m²", "9.0")):
        end = head.index(word) + len(word)
        assert line[:end].endswith(figure)
    assert "fits" in line
    assert "\n" not in line
    assert len(head) <= 110


def test_the_best_front_stands_under_its_heading_when_it_was_sought():
    """By hand: 3.3 m over a bound of 3 m is 1.10."""
    line, head = field_line(replace(FIELD, best_m=3.3)), heading(search=True)
    assert len(line) == len(head)
    assert line.split()[-2:] == ["3.30", "1.10"]
    assert "best" not in heading()
    text = "\n".join(summary_lines(summary([Score("a", 1, (replace(FIELD, best_m=3.3),))])))
    assert "best over bound     median  1.10" in text
    assert "best over bound" not in "\n".join(summary_lines(summary([Score("a", 1, (FIELD,))])))


def test_a_long_name_does_not_push_the_figures_aside():
    long = FieldScore("n" * 80, *list(vars(FIELD).values())[1:])
    assert len(field_line(long)) == len(field_line(FIELD))
    assert field_line(long).startswith("…nn")


def test_what_has_no_figure_shows_a_dash():
    bare = FieldScore("closet", "", ("c",), 1.5, 1, 0.6, 2.4, 0.0, None, 0.5, 0.0, None, 0,
                      "fits", None)  # fmt: skip
    assert field_line(bare).split()[5] == "-"


def test_no_plan_and_wrong_are_said_plainly():
    assert score_lines(Score("attic", 1, unplanned="No way in.")) == [
        f"{'attic':<36} no plan: No way in."
    ]
    assert "  WRONG  attic: it broke" in score_lines(Score("attic", 1, broke="it broke"))


def test_the_summary_names_the_worst():
    text = "\n".join(summary_lines(summary([Score("small square", 0.12, (FIELD,))])))
    assert "1 case, 1 field" in text
    assert "median  1.23" in text
    assert "small square" in text
    assert "without a plan" not in text
    assert "no field to tell of" in "\n".join(summary_lines(summary([])))


def test_growth_stands_under_its_heading_or_says_why_not():
    line = growth_line(Growth(20, 14, 3.5, 0.25, 151.0))
    assert len(line) == len(growth_heading())
    assert line.split() == ["20", "14", "3.50", "0.25", "151"]
    assert growth_line(Growth(200, came_to="not done in 300 s")).endswith("not done in 300 s")


def test_habits_tell_what_came_of_them_and_their_rank():
    last = [LargestLast("house 1", "shuts in", 0.5), LargestLast("house 2", "same", 0.4, 0.4),
            LargestLast("house 3", "worse", 0.4, 1.2, dead_edges=1)]  # fmt: skip
    text = "\n".join(habit_lines(last, [ExtraGallon("house 1", 0.15, 0.11, 0.01)]))
    assert "common practice, no source" in text
    assert "house 1: shuts in somebody" in text
    assert "house 3: worse: worst edge at 120%" in text
    assert "1 field more with a dead edge" in text
    assert "house 2" not in text
    assert "on six 15.0 %" in text
    assert habit_lines([], []) == []
