"""What a phone saved: entries and photos in one file, each photo proved by its hash."""

import base64
import hashlib
import json

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.cli.log_saved import read_saved, saved_in
from farwall.errors import Refused


def line(content, sha=None):
    told = {"photo": sha or hashlib.sha256(content).hexdigest(),
            "content": base64.b64encode(content).decode()}  # fmt: skip
    return json.dumps(told).encode() + b"\n"


@given(st.lists(st.binary(min_size=1, max_size=50), max_size=4))
def test_photos_come_out_as_they_went_in_and_the_entries_as_text(contents):
    saved = saved_in(b"".join(map(line, contents)) + b'{"id": "a"}\n')
    assert saved.photos == tuple(contents)
    assert saved.entries.strip() == '{"id": "a"}'


@pytest.mark.parametrize(
    "torn",
    [
        line(b"one", "0" * 64), line(b"one")[:-9] + b"\n", b'{"photo"\n', b'{"photo": 3}\n',
        b'{"photo": "x", "content": "****"}\n', line(b""),
    ],
)  # fmt: skip
def test_a_photo_that_came_through_torn_is_told_with_its_line(torn):
    with pytest.raises(Refused) as refusal:
        saved_in(line(b"whole") + torn + b"\xff")
    photo, text = refusal.value.mistakes
    assert photo.where == "line 2"
    assert text.where.startswith("byte")


def test_a_file_that_is_not_there_is_told_calmly(tmp_path):
    with pytest.raises(Refused, match="cannot be read"):
        read_saved(tmp_path / "nowhere.jsonl")
