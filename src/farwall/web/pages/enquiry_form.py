"""The questions of the first call as sentences with blanks; what was typed stands in them."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from farwall.job.enquiry.questions import ASKED, QUESTIONS, WISHES
from farwall.nouns import dataclass
from farwall.papers.wall_clock import Units
from farwall.web.pages.forms.measures import NoNumber, plain_number
from farwall.web.pages.forms.shown import BlankShown, Piece, SentenceShown
from farwall.web.pages.typed_units import without
from farwall.web.words import said

_ARGUMENTS = {one.key: one for one in ASKED.arguments}
AREA = "area"
"""Name of the blank of the area; its unit is that of the firm."""


@dataclass(frozen=True)
class Asking:
    """A question as it stands on the page: its number, empty for a wish, and its sentence."""

    number: str
    words: str
    sentence: SentenceShown


def asking(typed: Mapping[str, str], wrong: Mapping[str, str], units: Units) -> list[Asking]:
    """The twelve questions and the wishes. wrong: what is wrong with a blank, by its key."""
    numbered = [(str(n), one) for n, one in enumerate(QUESTIONS, 1)]
    return [
        _asking(number, words, keys, typed, wrong, units)
        for number, (words, keys) in (*numbered, *(("", one) for one in WISHES))
    ]


def answers(typed: Mapping[str, Any], units: Units) -> dict[str, object]:
    """What was typed, by the keys of the call; empty blanks left out."""
    found: dict[str, object] = {}
    for key in _ARGUMENTS:
        name = _name(key)
        value = typed.get(name)
        if isinstance(value, str) and value.strip():
            found[f"area_{'m2' if units == 'metric' else 'ft2'}" if name == AREA else key] = (
                _plainly(value.strip()[:80], key, units)
            )
    return found


def _plainly(text: str, key: str, units: Units) -> str:
    """A number in plain digits, without the unit that stands behind the blank; else as typed."""
    if _ARGUMENTS[key].choices:
        return text
    try:
        return f"{plain_number(without(text, [_unit(key, units)]), units):.12g}"
    except NoNumber:
        return text


def _unit(key: str, units: Units) -> str:
    """The unit behind a blank; empty for a count."""
    if key == "area_m2":
        return "m²" if units == "metric" else "ft²"
    return said("enquiry-days") if key.endswith("_days") else ""


def place_of(where: str) -> str:
    """The id of the blank that a mistake is about."""
    key = next((one.key for one in ASKED.arguments if where in one.keys), where)
    return f"e-{_name(key)}"


def _name(key: str) -> str:
    return AREA if key == "area_m2" else key


def _asking(  # noqa: PLR0917
    number: str, words: str, keys: tuple[str, ...], typed: Mapping[str, str],
    wrong: Mapping[str, str], units: Units,
) -> Asking:  # fmt: skip
    pieces = tuple(_piece(key, typed, wrong, units) for key in keys)
    wrongs = tuple((place_of(key), wrong[place_of(key)]) for key in keys if place_of(key) in wrong)
    return Asking(number, words, SentenceShown(pieces, "", (), wrongs))


def _piece(key: str, typed: Mapping[str, str], wrong: Mapping[str, str], units: Units) -> Piece:
    argument, name, place = _ARGUMENTS[key], _name(key), place_of(key)
    label = said(f"enquiry-{name}")
    options = tuple(
        (one, said(f"enquiry-{name}-{one.replace(' ', '-')}")) for one in argument.choices
    )
    unit = _unit(key, units)
    blank = BlankShown(
        place, name, label + (f", {unit}" if unit else ""), typed.get(name, ""), unit, 6,
        not options, (("", said("enquiry-not-asked")), *options) if options else (),
        wrong.get(place, ""),
    )  # fmt: skip
    return Piece(label, place, blank)
