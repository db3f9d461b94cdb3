"""What a coat is called on the pages of a run sheet."""

from __future__ import annotations

from dataclasses import replace

from tests.papers.invented_plan import small_house

from farwall.papers.run_sheet.names import coat_name, coat_words
from farwall.papers.words import names_in

PLAN = small_house()
FIRST = PLAN.inputs.coats[0]
NAMED = replace(PLAN, stain_names={FIRST.stain: "warm sand"})


def test_a_coat_is_called_by_the_name_of_its_stain():
    assert coat_name(NAMED, FIRST.id) == "coat 1, warm sand"
    assert coat_words(NAMED, FIRST.id) == f"coat 1, warm sand {FIRST.cut}"


def test_a_stain_without_a_name_is_called_by_its_id():
    assert coat_name(PLAN, FIRST.id) == f"coat 1, {FIRST.stain}"


def test_names_that_farwall_gave_are_translated():
    given = replace(PLAN, stain_names={"light": "light colour", "dark": "warm sand"})
    assert {"light colour", "warm sand"} & names_in(given) == {"warm sand"}


def test_no_language_changes_the_name_of_a_stain():
    assert "warm sand" in names_in(NAMED)
    assert "warm sand" not in names_in(PLAN)
