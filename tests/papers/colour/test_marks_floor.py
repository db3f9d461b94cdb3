"""Letters of a room's points stand apart, each beside its own point."""

from __future__ import annotations

import json
import re
from math import hypot
from pathlib import Path

import pytest

from farwall.papers.colour.marks_floor import points_svg
from farwall.readers.job_json import job_from
from farwall.web.pages.colour.marks_points import landmarks

EXAMPLES = Path(__file__).parents[3] / "examples"
ROOMS = [
    (house, room["id"])
    for house in ("quince-street", "fennel-court", "thistle-end")
    for room in json.loads((EXAMPLES / house / "job.json").read_text())["floor"]["rooms"]
]


@pytest.mark.parametrize(("house", "room"), ROOMS)
def test_no_letter_lies_on_another_and_each_is_near_its_point(house, room):
    floor = job_from(json.loads((EXAMPLES / house / "job.json").read_text()), house).floor
    known = landmarks(floor, room)
    svg = points_svg(floor, room, [(one.letter, one.at) for one in known], "points")
    dots = re.findall(r'data-letter="\w"><circle cx="([\d.]+)" cy="([\d.]+)"', svg)
    words = re.findall(r'<text x="([-\d.]+)" y="([-\d.]+)" font-size="14"', svg)
    assert len(dots) == len(words) == len(known)
    at = [(float(x), float(y) - 5) for x, y in words]
    for n, (x, y) in enumerate(at):
        assert hypot(x - float(dots[n][0]), y - float(dots[n][1])) < 26
        for a, b in at[:n]:
            assert abs(a - x) >= 12 or abs(b - y) >= 12
