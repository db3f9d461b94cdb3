"""Two people in one plain form: nobody's figures are emptied by a page that never showed them."""

from hypothesis import given
from hypothesis import strategies as st

from farwall.web.pages.forms.flat import flat_merged, lines_told

WORDS = st.sampled_from(["", "1", "2", "3"])
FORMS = st.fixed_dictionaries({"a": WORDS, "b": WORDS})


def test_each_keeps_what_they_changed_and_both_is_told():
    was = {"tank": "3", "tip": "brown", "uses": "1"}
    now = {"tank": "3.5", "tip": "green", "uses": "1"}
    found = flat_merged(was, now, {"tank": "3", "tip": "red", "uses": "2"})
    assert found.told == {"tank": "3.5", "tip": "red", "uses": "2"}
    assert found.both == {"tip": "green"}
    first, both = lines_told(found, {"tip": "Tip"}, "Look.")
    assert first == "Look."
    assert both.startswith("Tip: ")
    assert "green" in both


@given(FORMS, FORMS, FORMS)
def test_every_blank_is_what_was_typed_or_what_stands(was, now, typed):
    found = flat_merged(was, now, typed)
    for key in was:
        changed = typed[key] != was[key]
        assert found.told[key] == (typed[key] if changed else now[key])
        three = len({was[key], now[key], typed[key]}) == 3
        assert (key in found.both) is three


@given(FORMS, FORMS)
def test_into_the_newest_all_counts_and_nothing_is_told(now, typed):
    found = flat_merged(now, now, typed)
    assert found.told == typed
    assert found.both == {}
