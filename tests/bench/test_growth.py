"""Growth: a house in a process of its own, and what is said when that goes wrong."""

import subprocess

from farwall.bench import growth
from farwall.bench.growth import SIZES, grow


def test_a_small_house_is_planned_and_its_figures_come_back():
    told = grow(5)
    assert (told.rooms, told.came_to) == (5, "")
    assert told.fields >= 1
    assert told.plan_s > 0
    assert told.check_s > 0
    assert 20 < told.peak_mb < 4000


def test_a_house_that_takes_too_long_is_given_up():
    told = grow(5, patience_s=0.01)
    assert told.plan_s is None
    assert told.came_to == "not done in 0.01 s"


def test_a_process_that_breaks_off_is_told(monkeypatch):
    def breaks(command, **_):
        return subprocess.CompletedProcess(command, 1, "", "Traceback\nMemoryError: no more")

    monkeypatch.setattr(growth.subprocess, "run", breaks)
    told = grow(5)
    assert told.plan_s is None
    assert told.faults == ("house of 5: the planner broke off: MemoryError: no more",)


def test_sizes_run_from_five_to_two_hundred_rooms():
    assert SIZES == (5, 10, 20, 50, 100, 200)
