"""Odd and lawful mixtures of the trade, drawn up before the rules: none wrongly allowed."""

import pytest
from tests.acid.pouring.mixtures import rows, title, verdict_on

ODD, LAWFUL = rows("odd"), rows("lawful")


def test_there_are_200_odd_mixtures_and_100_lawful_ones_all_different():
    assert len({title(row) for row in ODD}) == len(ODD) >= 200
    assert len({title(row) for row in LAWFUL}) == len(LAWFUL) >= 100
    assert not {title(row) for row in ODD} & {title(row) for row in LAWFUL}


@pytest.mark.parametrize("row", ODD, ids=title)
def test_an_odd_mixture_is_refused_with_a_reason_and_what_to_do_instead(row):
    verdict = verdict_on(row)
    assert verdict.word == "refused"
    refusing = [one for one in verdict.fired if one.word == "refused"]
    assert refusing
    for one in refusing:
        assert one.what.endswith(".")
        assert one.instead.endswith(".")
        assert one.source
        assert one.met


@pytest.mark.common_practice
def test_of_the_lawful_mixtures_at_least_95_in_100_are_allowed_no_source():
    refused = [title(row) for row in LAWFUL if verdict_on(row).word == "refused"]
    assert len(refused) <= 0.05 * len(LAWFUL), refused


@pytest.mark.common_practice
@pytest.mark.parametrize("row", [row for row in LAWFUL if row["vessel"] == "spill"], ids=title)
def test_no_spill_waits_for_a_sheet_to_be_neutralised_no_source(row):
    assert verdict_on(row).word != "refused"
