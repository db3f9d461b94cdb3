"""Notes of outcomes: a line each, whatever happened to the last one."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from farwall.cli.many import notes
from farwall.cli.many.nouns import Outcome

OUTCOMES = st.builds(
    Outcome,
    id=st.text(min_size=1, max_size=20),
    state=st.sampled_from(["planned", "no", "refused", "failed", "lost"]),
    made_from=st.text("0123456789abcdef", min_size=1, max_size=64),
    seconds=st.floats(0, 1e4),
    why=st.lists(st.text(max_size=40), max_size=3).map(tuple),
    fields=st.integers(0, 300),
    area_m2=st.floats(0, 1e4),
)


@given(kept=st.lists(OUTCOMES, max_size=8), torn=st.binary(max_size=30))
def test_the_newest_of_each_job_is_read_back_whatever_was_torn(tmp_path_factory, kept, torn):
    folder = tmp_path_factory.mktemp("notes")
    half = len(kept) // 2
    for one in kept[:half]:
        notes.add(folder, one)
    with (folder / notes.NAME).open("ab") as file:
        file.write(torn.replace(b"\n", b""))
    for one in kept[half:]:
        notes.add(folder, one)
    assert notes.read(folder) == {one.id: one for one in kept}


def test_what_was_lost_is_tried_again_and_what_stands_is_not(tmp_path):
    stands = Outcome("a", "planned", "made", fields=3)
    assert not notes.still_good(stands, "made", tmp_path)  # its plan is not there
    (tmp_path / "a").mkdir()
    (tmp_path / "a" / "plan.json").write_text("{}")
    assert notes.still_good(stands, "made", tmp_path)
    assert not notes.still_good(stands, "made of other facts", tmp_path)
    assert notes.still_good(Outcome("b", "refused", "made"), "made", tmp_path)
    assert not notes.still_good(Outcome("a", "lost", "made"), "made", tmp_path)
    assert not notes.still_good(None, "made", tmp_path)
