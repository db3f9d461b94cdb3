"""`farwall read` of a photo: what is told by words, and every mistake in them at once."""

import argparse
import json

import pytest
from tests.photos import photo

from farwall.cli.main import main
from farwall.cli.read_photo import hints_told, photo_arguments
from farwall.errors import Refused
from farwall.readers.hints import Hints, KnownLength


def told(*words: str) -> Hints:
    parser = argparse.ArgumentParser()
    parser.add_argument("--scale", type=float)
    parser.add_argument("--floors")
    photo_arguments(parser)
    return hints_told(parser.parse_args(words))


def test_words_become_hints() -> None:
    corners = ((1.0, 2.0), (3.0, 4.0), (5.0, 6.0), (7.0, 8.0))
    found = told("--corners", "1,2,3,4,5,6,7,8", "--paper", "A3", "--drawn", "1:50")
    assert found == Hints(0.05, corners, (420.0, 297.0))
    length = told("--length", "1,2,30,4,4.2m").length
    assert length == KnownLength((1.0, 2.0), (30.0, 4.0), 4.2)


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--corners", "1,2,3"), "not 8 numbers"),
        (("--corners", "1,2,3,4,5,6,7,nan"), "not 8 numbers"),
        (("--drawn", "1:50"), "size of the sheet is not told"),
        (("--drawn", "1:50", "--paper", "A3", "--scale", "0.1"), "told twice"),
        (("--length", "1,2,3,4"), "not 4 numbers|no length"),
        (("--length", "1,2,3,4,long"), "no length"),
    ],
)
def test_wrong_words_are_refused(words: tuple[str, ...], said: str) -> None:
    with pytest.raises(Refused, match=said):
        told(*words)


def test_all_mistakes_are_told_at_once() -> None:
    with pytest.raises(Refused) as refusal:
        told("--corners", "x", "--paper", "A9", "--length", "1")
    assert len(refusal.value.mistakes) == 3


def test_a_photo_is_read_by_its_own_process(tmp_path, capsys) -> None:
    path = tmp_path / "plan.jpg"
    path.write_bytes(photo("square").data)
    assert main(["read", str(path), "--paper", "A3", "--drawn", "1:50", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert (found["format"], found["length_unit"], len(found["rooms"])) == ("JPEG", "mm", 4)
    assert {"corners", "names"} <= {one["code"] for one in found["asks"]}
