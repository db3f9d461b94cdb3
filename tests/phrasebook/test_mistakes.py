"""What is wrong with the broken jobs, in Spanish: whole, or counted."""

from pathlib import Path

import pytest

from farwall.errors import Refused
from farwall.phrasebook import in_spanish
from farwall.readers.job_json import read_job

BROKEN = sorted((Path(__file__).parents[1] / "broken_jobs").glob("*.json"))


def mistakes():
    for path in BROKEN:
        try:
            read_job(path)
        except Refused as error:
            yield from error.mistakes


def test_every_mistake_of_the_broken_jobs_is_said_whole_in_spanish():
    told = list(mistakes())
    assert len(told) > 50
    assert [str(one) for one in told if in_spanish(str(one)) is None] == []


@pytest.mark.parametrize("mistake", list(mistakes()), ids=lambda one: one.where)
def test_its_place_and_what_was_written_stay(mistake):
    spanish = in_spanish(str(mistake))
    assert mistake.where.split(":")[0].split(",")[0].removeprefix("line") in spanish
