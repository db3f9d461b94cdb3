"""One generated house: what is printed."""

import json

from farwall.bench.grow_one import main, peak_mb


def test_one_json_object_is_printed(capsys):
    main(4, 3)
    told = json.loads(capsys.readouterr().out)
    assert set(told) == {"fields", "plan_s", "check_s", "peak_mb", "faults", "came_to", "broke"}
    assert told["came_to"] == ""
    assert not told["broke"]


def test_memory_is_seen_to_grow():
    before = peak_mb()
    held = bytearray(int((before + 50) * 1024 * 1024))
    assert peak_mb() > before + 25
    assert held[0] == 0
