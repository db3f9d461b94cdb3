"""The job looked back on: all of it on one page."""

from dataclasses import replace

import pytest
from tests.job.office.billing.test_owed import ACCEPTED, CHANGE
from tests.job.office.billing.test_writing import PAID
from tests.job.office.billing.worked import PRICED
from tests.job.office.billing.worked import ground as worked
from tests.papers.acid.ground import pages_of
from tests.papers.office.grounds import ground

from farwall.papers.office.blocks import Beside, Facts
from farwall.papers.office.bundles import BY_FILE
from farwall.papers.office.ground import PaperGround
from farwall.papers.office.post_mortem import post_mortem


@pytest.mark.parametrize("language", ["en", "es"])
@pytest.mark.parametrize("units", ["us", "metric"])
def test_no_line_of_it_stands_alone_on_a_second_page(language: str, units: str):
    """One sentence, or four boxes for the pen, stood alone on a page of their own."""
    pages = pages_of(BY_FILE["post-mortem.pdf"].make(ground(language=language, units=units)))
    assert len(pages) == 1
    assert "farwall learn" in pages[0]


def money_of(paper):
    (beside,) = [one for one in paper.blocks if isinstance(one, Beside)]
    (facts,) = [one for one in beside.right if isinstance(one, Facts)]
    return {name: value.text for name, value in facts.pairs}


def test_what_was_agreed_and_paid_is_written_where_the_log_has_it(monkeypatch):
    """6,100.00 and a change of 385.15; 3,301.63 came in. Before, a line stood there for the pen."""
    monkeypatch.setattr("farwall.job.office.day.priced_of", lambda *_: PRICED)
    told = money_of(post_mortem(PaperGround(worked(ACCEPTED, CHANGE, PAID))))
    assert told["price agreed, no tax"] == "6,100.00 USD"
    assert told["with all changes"] == "6,485.15 USD"
    assert told["paid so far, with tax"] == "3,301.63 USD"
    assert "price asked" not in told
    none = worked()
    bare = money_of(post_mortem(PaperGround(replace(none, story=None, kept=()))))
    assert "price asked" in bare
    assert bare["price paid"] == "________"
