"""Go or no-go in words: the verdict first, each reason with what would change it."""

from __future__ import annotations

from tests.job.go.jobs import GOOD, surveyed

from farwall.facts.slab import MoistureTest
from farwall.job.go import go_or_no_go
from farwall.job.go.say import WINS, in_short, said


def test_a_reason_comes_with_its_rank_its_source_and_its_remedy():
    lines = said(go_or_no_go(surveyed(acid_before="whole")), name="Lot 9").splitlines()
    assert lines[:2] == ["Lot 9: No.", "What says no:"]
    assert "(common practice, stain sheets, trade press)" in lines[2]
    assert "overlay" in lines[3]
    assert lines[-1] == WINS


def test_texts_that_disagree_are_told_where_the_strictest_holds():
    told = said(go_or_no_go(surveyed(slab_age_days=30)))
    assert "Texts disagree: 14 days" in told
    assert "Texts disagree" not in said(go_or_no_go(GOOD))


def test_rooms_are_named_as_people_call_them():
    damp = surveyed(moisture=(MoistureTest("meter", room="back", meter="islands"),))
    labels = {room.id: room.label for room in GOOD.floor.rooms}
    assert "Back room" in said(go_or_no_go(damp), labels=labels)


def test_one_line_names_three_and_counts_the_rest():
    many = surveyed(film=None, covering=None, acid_before=None, trades=None)
    assert in_short(go_or_no_go(many)) == (
        "Go or no-go: not yet. Still to be asked: cure and sealer, other finishes, past acid and "
        "1 more."
    )
    no = go_or_no_go(surveyed(waste="septic"))
    assert in_short(no).startswith("No-go: waste route. `farwall go` says why")
    assert in_short(no, reasons=True).startswith("No-go: The house is on a septic tank")
