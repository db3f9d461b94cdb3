"""A file of weather brought to the calendar: what it is, and what is wrong with it."""

from __future__ import annotations

from typing import Literal

from farwall.errors import Mistake, Refused, mistakes_of
from farwall.phrasebook import told
from farwall.web.words import said


def said_of(error: Refused) -> list[str]:
    """What is wrong with a file, in the language that is spoken."""
    return [told(one) for one in mistakes_of(error)]


def weather_kind(content: bytes, name: str) -> Literal["weather", "forecast"]:
    """Whether a file is a weather file of a year or a forecast, read to its end. Raises Refused."""
    from farwall.readers.any_weather import is_epw
    from farwall.readers.epw import parse_epw
    from farwall.readers.forecast import parse_forecast

    text = content.decode("utf-8-sig", "replace")
    if is_epw(content):
        parse_epw(text, name=name)
        return "weather"
    try:
        parse_forecast(text, name=name)
    except Refused as error:
        raise Refused(Mistake(name, said("days-weather-not")), *error.mistakes) from error
    return "forecast"
