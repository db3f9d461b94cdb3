"""Values of a target out of a small file, or all mistakes of it at once."""

import pytest
from hypothesis import example, given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.readers.colour_photo.values import published, values_in

HEAD = "patch,L,a,b\n"


def test_csv_and_json_say_the_same():
    csv = values_in((HEAD + "B3, 66.1,6.2, 17\npaper,94.5,0.3,-2\n").encode())
    assert csv == {"B3": (66.1, 6.2, 17.0), "paper": (94.5, 0.3, -2.0)}
    assert values_in(b'{"B3": [66.1, 6.2, 17], "paper": [94.5, 0.3, -2]}') == csv


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("", 1), ("a,b\n1,2\n", 1), (HEAD, 1), (HEAD + "Z9,1,2,3\nB3,101,0,0\nB4,x,0,0\n", 3),
        ('{"B3": [1, 2]}', 1), ("{broken", 1), (HEAD + "B3,nan,0,0\n", 1),
    ],
)  # fmt: skip
def test_every_mistake_is_told(text, count):
    with pytest.raises(Refused) as refusal:
        values_in(text.encode())
    assert len(refusal.value.mistakes) == count


@given(st.binary(max_size=200))
@example(b"0\r0")
@example(b"patch,L,a,b\rA1,50,0,0\r")
def test_anything_is_read_or_refused(content):
    try:
        found = values_in(content)
    except Refused:
        return
    assert all(len(lab) == 3 for lab in found.values())


def test_published_sets_go_by_their_names():
    assert len(published("2005")) == 24
    assert published("somebody's") is None
