"""One generated house: what is printed."""

import json
import subprocess
import sys

from farwall.bench.grow_one import main, peak_mb


def test_one_json_object_is_printed(capsys):
    main(4, 3)
    told = json.loads(capsys.readouterr().out)
    assert set(told) == {"fields", "plan_s", "check_s", "peak_mb", "faults", "came_to"}
    assert told["came_to"] == ""
    assert told["plan_s"] > 0


def test_a_planner_that_breaks_off_has_no_figures_and_says_why(capsys, monkeypatch):
    def no_more(_):
        raise MemoryError("all is taken")

    monkeypatch.setattr("farwall.bench.grow_one.plan_job", no_more)
    main(4, 3)
    told = json.loads(capsys.readouterr().out)
    assert told["plan_s"] is None
    assert "MemoryError: all is taken" in told["faults"][0]


def test_memory_is_seen_to_grow():
    before = peak_mb()
    held = bytearray(int((before + 50) * 1024 * 1024))
    assert peak_mb() > before + 25
    assert held[0] == 0


def test_a_process_gets_no_more_memory_than_it_was_given():
    code = (
        "from farwall.bench.grow_one import limit_memory\n"
        "limit_memory(800)\n"
        "try:\n    bytearray(900 * 1024 * 1024)\nexcept MemoryError:\n    print('stopped')"
    )
    run = subprocess.run([sys.executable, "-c", code], check=True, capture_output=True, text=True)
    assert run.stdout == "stopped\n"
