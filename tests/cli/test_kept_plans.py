"""Plans kept from one call to the next: the same question the same answer, anything else anew."""

from __future__ import annotations

import json
import os
import zipfile
from dataclasses import replace
from pathlib import Path

import pytest
from tests.shapes import TWO_ROOMS
from tests.spray.hand_floors import job
from tests.strategies.weather import epw_text

from farwall.cli import kept_plans
from farwall.cli.main import main
from farwall.facts.plain import plain

AS_BEFORE = "As planned before"


@pytest.fixture
def cache(tmp_path, monkeypatch):
    """Plans are kept below here, as for a user."""
    monkeypatch.delenv(kept_plans.FRESH)
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "cache"))
    return tmp_path / "cache" / "farwall" / "plans"


@pytest.fixture
def planned(tmp_path, capsys, cache):
    """Plan two rooms with some words and facts: exit code, stderr, the files by name."""

    def run(*words, out="plan", **facts):
        path = tmp_path / "job.json"
        path.write_text(json.dumps(plain(job(TWO_ROOMS, **facts))), encoding="utf-8")
        folder = tmp_path / out
        code = main(["plan", str(path), "--out", str(folder), *words])
        told = capsys.readouterr()
        return code, told.err, {one.name: one.read_bytes() for one in folder.iterdir()}

    return run


def key(**changed):
    told = {"read": {"weather": None, "van": None}, "order": (), "thorough": False, **changed}
    return kept_plans.key_of(told.pop("job", job(TWO_ROOMS)), **told)


def kept(cache):
    return sorted(cache.glob("*.zip"))


def test_the_same_job_is_shown_as_planned_before_and_says_so(planned, cache):
    code, first, files = planned(out="one")
    again, second, same = planned(out="two")
    assert (code, again) == (0, 0)
    assert AS_BEFORE not in first
    assert AS_BEFORE in second
    assert files == same
    assert len(kept(cache)) == 1


def test_another_fact_is_another_plan(planned, cache):
    planned()
    _, words, _ = planned("--thorough")
    assert AS_BEFORE not in words
    _, words, _ = planned(name="Another house")
    assert AS_BEFORE not in words
    assert len(kept(cache)) == 3


def test_fresh_plans_anew_and_gives_the_same(planned):
    _, _, before = planned()
    _, words, files = planned("--fresh")
    assert AS_BEFORE not in words
    assert files == before


def test_the_json_on_stdout_is_the_plan_alone_either_way(tmp_path, capsys, planned):
    planned()
    words = ["plan", str(tmp_path / "job.json"), "--out", str(tmp_path / "two"), "--json"]
    assert main(words) == 0
    told = capsys.readouterr()
    assert AS_BEFORE in told.err
    assert json.loads(told.out) == json.loads((tmp_path / "two" / "plan.json").read_text())


@pytest.mark.parametrize("damage", ["cut short", "turned bit", "no zip", "no plan", "no JSON"])
def test_what_is_damaged_is_planned_anew_and_mended(planned, cache, damage):
    _, _, files = planned()
    (path,) = kept(cache)
    whole = path.read_bytes()
    if damage == "cut short":
        path.write_bytes(whole[:-50])
    elif damage == "turned bit":
        place = whole.index(b"bands") + 1
        path.write_bytes(whole[:place] + bytes([whole[place] ^ 4]) + whole[place + 1 :])
    elif damage == "no zip":
        path.write_bytes(b"")
    else:
        with zipfile.ZipFile(path, "w") as entry:
            entry.writestr("plan.json", "[]" if damage == "no plan" else "{")
    _, words, anew = planned()
    assert AS_BEFORE not in words
    assert anew == files
    _, words, _ = planned()
    assert AS_BEFORE in words


def test_the_checker_replays_what_was_planned_before(planned, cache):
    """A plan that was changed in the cache, whole as a file, does not pass."""
    planned()
    (path,) = kept(cache)
    with zipfile.ZipFile(path) as entry:
        files = {name: entry.read(name) for name in entry.namelist()}
    plan = json.loads(files["plan.json"])
    plan["fields"][0]["bands"][0]["litres"] *= 3
    kept_plans.keep_files(path.stem, {**files, "plan.json": json.dumps(plan).encode()})
    code, words, _ = planned()
    assert AS_BEFORE in words
    assert code == 1


def test_all_that_a_plan_hangs_on_makes_another_key(cache, tmp_path):
    day = tmp_path / "day.epw"
    day.write_text(epw_text(), encoding="utf-8")
    with_day = key(read={"weather": day, "van": None})
    day.write_text(epw_text() + "\n", encoding="utf-8")
    keys = {
        key(),
        key(read={"weather": None, "van": day}),
        key(order=("a",)),
        key(thorough=True),
        key(job=replace(job(TWO_ROOMS), name="Another house")),
        with_day,
        key(read={"weather": day, "van": None}),
    }
    assert len(keys) == 7
    assert None not in keys
    assert key() == key()


def test_another_source_or_library_is_another_key(cache, tmp_path, monkeypatch):
    before = key()
    monkeypatch.setattr("importlib.metadata.version", lambda name: f"{name} of tomorrow")
    library = key()
    assert library != before
    (tmp_path / "farwall").mkdir()
    (tmp_path / "farwall" / "__init__.py").write_text("one = 1\n")
    monkeypatch.setattr(kept_plans.farwall, "__file__", str(tmp_path / "farwall" / "__init__.py"))
    one = key()
    (tmp_path / "farwall" / "__init__.py").write_text("one = 2\n")
    two = key()
    (tmp_path / "farwall" / "__pycache__").mkdir()
    (tmp_path / "farwall" / "__pycache__" / "one.pyc").write_bytes(b"bytecode")
    assert len({library, one, two}) == 3
    assert key() == two


def test_the_oldest_make_room(cache, monkeypatch):
    monkeypatch.setattr(kept_plans, "MOST_BYTES", 3000)
    for number in range(4):
        kept_plans.keep_files(f"{number}", {"plan.json": b"x" * 1000})
        if (cache / f"{number}.zip").exists():
            os.utime(cache / f"{number}.zip", (number, number))
    assert [path.stem for path in kept(cache)] == ["2", "3"]
    assert kept_plans.kept_files("2") == {"plan.json": b"x" * 1000}  # asked for, so young again
    kept_plans.keep_files("4", {"plan.json": b"x" * 1000})
    assert [path.stem for path in kept(cache)] == ["2", "4"]


def test_a_cache_that_cannot_be_written_stops_nothing(planned, cache):
    cache.parent.parent.mkdir()
    cache.parent.write_text("a file where the folder should be")
    code, words, _ = planned()
    again, second, _ = planned()
    assert (code, again) == (0, 0)
    assert AS_BEFORE not in words + second


def test_a_relative_cache_folder_is_passed_over(monkeypatch, tmp_path):
    monkeypatch.delenv(kept_plans.FRESH)
    monkeypatch.setenv("XDG_CACHE_HOME", "somewhere")
    monkeypatch.setenv("HOME", str(tmp_path))
    kept_plans.keep_files("one", {"plan.json": b"{}"})
    assert (tmp_path / ".cache" / "farwall" / "plans" / "one.zip").exists()


def test_where_the_environment_asks_for_fresh_plans_there_is_no_key(monkeypatch):
    monkeypatch.setenv(kept_plans.FRESH, "1")
    assert key() is None


def test_a_file_that_is_gone_has_no_key(cache):
    assert key(read={"weather": Path("gone.epw")}) is None
