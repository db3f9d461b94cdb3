"""Lines whose parts stand under one another."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.job.office.columns import columns

WORDS = st.text(alphabet="abc 12", max_size=8)


def test_figures_stand_to_the_right_and_the_last_column_is_as_long_as_it_is_by_hand():
    rows = [("what", "price", "why"), ("a tape", "7", "a long reason"), ("b", "1,200", "")]
    assert columns(rows, right=(1,)) == (
        "what    price  why",
        "a tape      7  a long reason",
        "b       1,200",
    )
    assert columns([]) == ()


@given(st.lists(st.tuples(WORDS, WORDS, WORDS), min_size=1, max_size=6))
def test_every_cell_begins_or_ends_at_its_column(rows):
    left, right = (max(len(row[k]) for row in rows) for k in (0, 1))
    for row, line in zip(rows, columns(rows, right=(1,)), strict=True):
        whole = line.ljust(left + right + len(row[2]) + 4)
        assert whole[:left] == row[0].ljust(left)
        assert whole[left + 2 : left + 2 + right] == row[1].rjust(right)
        assert whole[left + right + 4 :].rstrip() == row[2].rstrip()
