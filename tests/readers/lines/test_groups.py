"""Groups of things joined by pairs, against scipy's own."""

from hypothesis import given
from hypothesis import strategies as st
from scipy.sparse import coo_matrix
from scipy.sparse.csgraph import connected_components

from farwall.readers.lines.groups import numbered

pairs = st.integers(1, 12).flatmap(
    lambda n: st.tuples(
        st.just(n), st.lists(st.tuples(st.integers(0, n - 1), st.integers(0, n - 1)), max_size=20)
    )
)


@given(pairs)
def test_groups_are_those_of_the_library(told: tuple[int, list[tuple[int, int]]]) -> None:
    count, joined = told
    first, second = [a for a, _ in joined], [b for _, b in joined]
    graph = coo_matrix(([1] * len(joined), (first, second)), shape=(count, count))
    _, labels = connected_components(graph, directed=False)
    found = numbered(count, first, second)
    for a in range(count):
        for b in range(count):
            assert (found[a] == found[b]) == (labels[a] == labels[b])
    assert sorted(set(found.tolist())) == list(range(len(set(labels.tolist()))))
