"""The answer on the slab in the language that is asked for."""

import asyncio
from datetime import timedelta

from tests.web.test_live import day, lived  # noqa: F401 - the fixture

from farwall.phrasebook import LANGUAGE


def said(day, language):  # noqa: F811 - the fixture
    async def script(_):
        headers = {
            "accept-language": language,
            "Authorization": "Bearer a key of our own, invented",
        }
        return (await day.ask("GET", "/api/jobs/two/now", headers=headers)).json()

    return lived(day, script)["said"]


def test_what_to_do_now_is_said_in_spanish_or_in_english(day):  # noqa: F811
    english, spanish = said(day, "en-US"), said(day, "es-MX,es;q=0.9,en;q=0.5")
    assert len(english) == len(spanish) > 3
    assert english[0].startswith("NOW 8:00 am:")
    assert spanish[0].startswith("AHORA 8:00 a. m.:")
    assert not set(english) & set(spanish)
    assert asyncio.run(_spoken()) == "en"


async def _spoken():
    return LANGUAGE.get()


def test_a_house_that_is_handed_over_begins_nothing(day):  # noqa: F811
    """A closed job still said *NOW: begin field 2.1*."""
    lived(day, lambda _: day.tap("handed-over"))
    english, spanish = said(day, "en"), said(day, "es")
    assert english[0].startswith("NOW: nothing more by this plan. The house is handed over")
    assert spanish[0].startswith("AHORA: nada más según este plan. La casa está entregada")
    assert not any("begin" in one for one in english)


def test_a_plan_whose_day_is_long_past_begins_nothing(day):  # noqa: F811
    """A coat that looked dry in June once said *NOW: begin* in November."""
    day.clock += timedelta(days=150)
    english, spanish = said(day, "en"), said(day, "es")
    assert english[0].startswith("NOW: begin nothing by this plan. Its day is past with ")
    assert spanish[0].startswith("AHORA: no empiece nada según este plan. Su día ya pasó")
    assert not any("only if" in one for one in english)
