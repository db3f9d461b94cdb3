"""What a log lacks before its house is closed: nothing of a coat that was not laid."""

from tests.job.live.test_now import PLAN
from tests.job.story.entries import Log

from farwall.job.story import story
from farwall.web.pages.closing import lacks

FIRST, SECOND = (coat.id for coat in PLAN.inputs.coats)


def test_a_house_stopped_after_one_coat_lacks_nothing_of_the_other():
    log = Log(PLAN)
    log("coat-done", 80.0, coat=FIRST)
    log("coat-judged", 200.0, coat=FIRST, look="right")
    assert "Coat 2 is not sprayed whole by the log." in list(lacks(PLAN, story(PLAN, log.kept)))
    log("neutralised", 330.0)
    told = list(lacks(PLAN, story(PLAN, log.kept)))
    assert not [one for one in told if "oat 2" in one]
    assert [one for one in told if "oat 1" in one]


def test_a_coat_half_told_and_a_log_of_washing_alone_lack_their_coats():
    log = Log(PLAN)
    log("neutralised", 330.0)
    told = list(lacks(PLAN, story(PLAN, log.kept)))
    assert [one for one in told if one.startswith(("Coat 1 is not", "Coat 2 is not"))] == told[:2]
