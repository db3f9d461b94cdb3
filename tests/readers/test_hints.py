"""Hints go to another process and come back the same."""

import json

from farwall.readers.hints import Hints, KnownLength, hints_from, hints_json, with_scale


def test_hints_survive_json() -> None:
    for hints in (
        Hints(),
        Hints(0.05, ((1.5, 2.0), (3.0, 4.0)), (420.0, 297.0), page=3),
        Hints(length=KnownLength((1.0, 2.0), (3.0, 4.0), 4.2)),
    ):
        assert hints_from(json.loads(json.dumps(hints_json(hints)))) == hints


def test_a_scale_told_beside_them_wins() -> None:
    assert with_scale(None, 0.1) == Hints(0.1)
    assert with_scale(Hints(0.2), None) == Hints(0.2)
    assert with_scale(Hints(0.2, page=2), 0.1) == Hints(0.1, page=2)
