"""`farwall bench spray`: lines, document, exit codes."""

from __future__ import annotations

import json

import pytest

from farwall.bench.growth import Growth
from farwall.bench.score import FieldScore, Score
from farwall.cli.main import main
from farwall.readers.job_json import read_job


@pytest.fixture
def bench(capsys):
    """Call the command with some words: exit code, stdout, stderr."""

    def run(*words):
        code = main(["bench", "spray", *words])
        shown = capsys.readouterr()
        return code, shown.out, shown.err

    return run


def field(case, ratio):
    return FieldScore(case, "", ("room",), 9.0, 3, 1.1, 3 * ratio, 3.0, ratio, 1.4, 1.8, 1.3, 0,
                      "fits", 0.1)  # fmt: skip


@pytest.fixture
def pretend(monkeypatch):
    """Scores by case name in place of a planner; all other cases are sound."""

    def as_told(**told):
        def score(case, *, search=False):
            sound = Score(case.name, 0.1, (field(case.name, 1.2),))
            return told.get(case.name.replace(" ", "_"), sound)

        monkeypatch.setattr("farwall.bench.score.score", score)

    return as_told


def test_one_shape_gives_one_line_and_0(bench):
    code, out, err = bench("--only", "small square")
    assert (code, err) == (0, "")
    assert sum(line.startswith("small square ") for line in out.splitlines()) == 1
    assert "E over bound" in out


def test_the_document_holds_the_same_field(bench):
    code, out, _ = bench("--only", "small square", "--json")
    told = json.loads(out)
    (one,) = told["shapes"]["fields"]
    assert code == 0
    assert one["case"] == "small square"
    assert one["front_m"] / one["bound_m"] == pytest.approx(one["ratio"])
    assert told["wrong"] == 0


def test_a_front_below_its_bound_stops_the_bench_with_1_and_names_the_field(bench, pretend):
    pretend(square_of_6_m=Score("square of 6 m", 0.1, (field("square of 6 m", 0.99),)))
    code, out, _ = bench()
    assert code == 1
    assert "WRONG  square of 6 m" in out
    assert "square, corner door" not in out
    assert "Stopped" in out


def test_keep_going_tells_all_and_still_ends_with_1(bench, pretend):
    pretend(square_of_6_m=Score("square of 6 m", 0.1, (field("square of 6 m", 0.99),)))
    code, out, _ = bench("--keep-going")
    assert code == 1
    assert "WRONG  square of 6 m" in out
    assert "room turned, island" in out
    assert "1 WRONG" in out


def test_a_fault_of_the_checker_does_not_stop_it_but_ends_with_1(bench, pretend):
    pretend(small_square=Score("small square", 0.1, (field("small square", 1.2),), ("trodden: x",)))
    code, out, _ = bench()
    assert code == 1
    assert "the checker finds trodden: x" in out
    assert "room turned, island" in out


def test_no_plan_is_told_and_is_no_mistake_of_the_bench(bench, pretend):
    pretend(comb=Score("comb", 0.1), small_square=Score("small square", 0.1, unplanned="No."))
    code, out, _ = bench()
    assert code == 0
    assert "no plan: No." in out


def test_a_name_that_is_not_there_is_2_with_a_hint(bench):
    code, out, err = bench("--only", "smal square")
    assert (code, out) == (2, "")
    assert "small square" in err


def test_a_house_may_be_named(bench, pretend):
    pretend()
    code, out, _ = bench("--set", "all", "--only", "house 03")
    assert code == 0
    assert "Set: houses" in out
    assert "Set: shapes" not in out
    assert "Set: growth" not in out


def test_growth_prints_a_line_a_size_and_stops_where_patience_ends(bench):
    code, out, _ = bench("--set", "growth", "--most", "10", "--patience", "0.01")
    assert code == 0
    assert "not done in 0.01 s" in out
    assert "Larger houses were not tried." in out


def test_a_house_of_growth_on_which_the_planner_breaks_off_ends_with_1(bench, monkeypatch):
    def grow(rooms, *, patience_s):
        return Growth(rooms, faults=("house of 5: the planner broke off: MemoryError",))

    monkeypatch.setattr("farwall.bench.growth.grow", grow)
    code, out, _ = bench("--set", "growth")
    assert code == 1
    assert "WRONG  house of 5: the planner broke off" in out


def test_real_plans_that_cannot_be_read_are_listed(bench, pretend, tmp_path):
    pretend()
    (tmp_path / "attic.ifc").write_bytes(b"ISO-10303-21;")
    code, out, _ = bench("--set", "real", "--plans", str(tmp_path))
    assert code == 0
    assert "attic.ifc" in out
    assert "not read yet" in out


@pytest.mark.parametrize(
    "words", [("--plans", "somewhere"), ("--most", "3"), ("--set", "real", "--plans", "nowhere")]
)
def test_words_that_make_no_sense_are_2(bench, words):
    code, out, err = bench(*words)
    assert (code, out) == (2, "")
    assert err


def test_jobs_are_written_as_files_that_can_be_read_back(bench, tmp_path):
    folder = tmp_path / "jobs"
    code, out, _ = bench("--set", "houses", "--jobs", str(folder))
    files = sorted(folder.iterdir())
    assert code == 0
    assert len(files) == 20
    assert "20 jobs" in out
    assert read_job(files[0]).id == "house 01"


def test_houses_of_growth_are_written_as_well(bench, tmp_path):
    code, out, _ = bench("--set", "growth", "--most", "20", "--jobs", str(tmp_path))
    assert (code, out) == (0, f"3 jobs are in {tmp_path}\n")
    assert sorted(len(read_job(one).floor.rooms) for one in tmp_path.iterdir()) == [5, 10, 20]


def test_help_explains_the_figures(capsys):
    with pytest.raises(SystemExit) as end:
        main(["bench", "--help"])
    assert end.value.code == 0
    text = " ".join(capsys.readouterr().out.split())
    for word in ("equivalent front", "exit 1", "--keep-going", "growth", "docs/bench-spray.md"):
        assert word in text


def test_thorough_seeks_the_shortest_front_of_each_field(bench):
    code, out, _ = bench("--only", "narrow closet", "--thorough", "--json")
    (one,) = json.loads(out)["shapes"]["fields"]
    assert code == 0
    assert one["bound_m"] * (1 - 1e-6) <= one["best_m"] <= one["front_m"]
    code, out, _ = bench("--only", "narrow closet", "--json")
    assert json.loads(out)["shapes"]["fields"][0]["best_m"] is None
