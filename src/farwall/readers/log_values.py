"""What an entry of the log carries: read by kind, US twins turned to SI, ids held to the plan."""

from __future__ import annotations

import math
import re
from collections.abc import Iterator, Mapping

from farwall.errors import Mistake
from farwall.facts.log_words import Carried, Word
from farwall.facts.numbered import by_number, coats_of
from farwall.facts.plain import Plain
from farwall.facts.plan import Plan
from farwall.near_word import near_word
from farwall.nouns import dataclass
from farwall.readers.json_text import Place, place_text
from farwall.readers.log_units import BOUNDS, TWINS, Twin, amount_text
from farwall.readers.shape import did_you_mean
from farwall.readers.wording import shown

_HASH = re.compile(r"[0-9a-f]{64}")
_LONGEST = 2_000
_PLAIN = "Write a plain number."


@dataclass(frozen=True)
class Ids:
    """The ids of a plan by kind; None where there is no plan to hold to."""

    known: Mapping[str, tuple[str, ...]] | None
    coats: tuple[str, ...] = ()
    """Where a person typed them by numbers: the coats in their order, to answer by numbers too."""

    @classmethod
    def of(cls, plan: Plan | None, *, typed: bool = False) -> Ids:
        """Those of a plan, of what is left for another day too; `typed`: by a person."""
        if plan is None:
            return cls(None)
        every = (*plan.fields, *plan.left)
        return cls(
            {
                "field": tuple(dict.fromkeys(field.id for field in every)),
                "band": tuple(dict.fromkeys(b.id for field in every for b in field.bands)),
                "coat": tuple(coat.id for coat in plan.inputs.coats),
                "room": tuple(room.id for room in plan.inputs.floor.rooms),
            },
            coats_of(plan) if typed else (),
        )

    def fault(self, kind: str, name: str) -> tuple[str, str] | None:
        """What is wrong with a name and what to do, or None."""
        kind = "room" if kind == "rooms" else kind
        if self.known is None or kind not in self.known or name in self.known[kind]:
            return None
        known = self.known[kind]
        near = near_word(name, list(known))
        few = ", ".join(by_number(self.coats, one) for one in known[:12])
        remedy = f"Did you mean {by_number(self.coats, near)}?" if near else f"It has: {few}."
        return f"the plan has no {kind} {by_number(self.coats, name)[:40]}.", remedy


def typed(word: Word, told: Mapping[str, Plain]) -> dict[str, Plain]:
    """Texts of `key=value` as the kinds of `word` want them; what cannot be read stays text."""
    return {key: _typed(_carried(word, key), value) for key, value in told.items()}


def checked(
    word: Word, raw: Mapping[str, Plain], ids: Ids, place: Place
) -> tuple[dict[str, Plain], list[Mistake]]:
    """What an entry of `word` carries, in SI and in the table's order, and every mistake in it."""
    found: dict[str, Plain] = {}
    mistakes: list[Mistake] = []
    said: dict[str, str] = {}
    for key, value in raw.items():
        one = _carried(word, key)
        where = place_text((*place, key[:40]))
        if one is None:
            mistakes.append(_unknown(word, key, place))
        elif one.key in said:
            what = f"`{said[one.key]}` and `{key}` are both given."
            mistakes.append(Mistake(place_text(place), what, "Keep one of the two."))
        else:
            said[one.key] = key
            twin = _twin(one, key)
            wrong = list(_wrong(one, value, ids, where, twin))
            mistakes += wrong
            if not wrong:
                found[one.key] = _in_si(one, value, twin)
    for one in word.must:
        if one.key not in said:
            what = f"`{one.key}` is missing: {one.what}."
            mistakes.append(Mistake(place_text(place) or word.name, what, _add(one, ids)))
    ordered = {one.key: found[one.key] for one in word.carried if one.key in found}
    return ordered, mistakes


def _spellings(one: Carried) -> dict[str, Twin | None]:
    found: dict[str, Twin | None] = {one.key: None}
    for twin in TWINS.get(one.kind, ()):
        if one.key.endswith(twin.ending):
            found[one.key.removesuffix(twin.ending) + twin.other] = twin
    return found


def _carried(word: Word, key: str) -> Carried | None:
    return next((one for one in word.carried if key in _spellings(one)), None)


def _twin(one: Carried, key: str) -> Twin | None:
    return _spellings(one)[key]


def _unknown(word: Word, key: str, place: Place) -> Mistake:
    known = [spelt for one in word.carried for spelt in _spellings(one)]
    where = place_text(place) or word.name
    return Mistake(where, f"`{key[:40]}` is not known here.", did_you_mean(key, known))


def _add(one: Carried, ids: Ids) -> str:
    if one.choices:
        return f"Such as {one.key}={one.choices[0]}; known: {', '.join(one.choices)}."
    known = (ids.known or {}).get(one.kind, ())
    if known:
        return f"Such as {one.key}={known[0]}."
    return f"Add {one.key}=…"


def _typed(one: Carried | None, value: Plain) -> Plain:
    if one is None or not isinstance(value, str):
        return value
    if one.kind in BOUNDS:
        try:
            number = float(value)
        except ValueError:
            return value
        whole = one.kind == "count" and number.is_integer()
        return int(number) if whole else number
    if one.kind == "yes":
        return {"yes": True, "true": True, "no": False, "false": False}.get(value.lower(), value)
    if one.kind == "amount":
        return amount_text(value) or value
    if one.kind == "rooms":
        return [part.strip() for part in value.split(",")]
    if one.kind == "choice":
        return _chosen(one, value)
    return value


def _chosen(one: Carried, value: str) -> str:
    """The choice that is meant: dash, underscore and space are one."""

    def bare(text: str) -> str:
        return text.lower().replace("_", " ").replace("-", " ")

    return next((choice for choice in one.choices if bare(choice) == bare(value)), value)


def _wrong(
    one: Carried, value: Plain, ids: Ids, where: str, twin: Twin | None
) -> Iterator[Mistake]:
    if one.kind in BOUNDS:
        yield from _wrong_number(one, value, where, twin)
    elif one.kind == "yes":
        if not isinstance(value, bool):
            yield Mistake(where, f"yes or no is expected here, not {shown(value)}.")
    elif one.kind == "amount":
        if not isinstance(value, str) or not value or amount_text(value) != value:
            remedy = 'Such as "1290.50", in quotes in a file, two decimals at most.'
            yield Mistake(where, f"an amount is expected here, not {shown(value)}.", remedy)
    elif one.kind == "rooms":
        yield from _wrong_rooms(value, ids, where)
    else:
        yield from _wrong_text(one, value, ids, where)


def _wrong_text(one: Carried, value: Plain, ids: Ids, where: str) -> Iterator[Mistake]:
    if not isinstance(value, str) or not value.strip():
        yield Mistake(where, f"{_expected(one)} is expected here, not {shown(value)}.")
    elif len(value) > _LONGEST:
        yield Mistake(
            where, f"this text is too long: at most {_LONGEST} characters.", "Shorten it."
        )
    elif one.kind == "choice" and value not in one.choices:
        near = near_word(value, list(one.choices))
        did = f"Did you mean {near}? " if near else ""
        yield Mistake(where, f"{shown(value)} is not known here.", f"{did}{_known(one)}")
    elif one.kind == "hash" and not _HASH.fullmatch(value):
        yield Mistake(where, "this is no SHA-256 in hex.", "The book tells it when a file is kept.")
    elif (fault := ids.fault(one.kind, value)) is not None:
        yield Mistake(where, *fault)


def _wrong_number(one: Carried, value: Plain, where: str, twin: Twin | None) -> Iterator[Mistake]:
    if isinstance(value, bool) or not isinstance(value, int | float):
        yield Mistake(where, f"A number is expected here, not {shown(value)}.", _PLAIN)
        return
    if not math.isfinite(value):
        yield Mistake(where, f"{value} is no number.", _PLAIN)
        return
    if one.kind == "count" and not float(value).is_integer():
        yield Mistake(where, f"{value:g} is not whole.", "Write a whole number.")
        return
    least, most, unit = BOUNDS[one.kind]
    si = twin.to_key(float(value)) if twin else float(value)
    if not least <= si <= most:
        if twin:
            least, most, unit = twin.from_key(least), twin.from_key(most), twin.unit
        told = f"{_digits(value, 6)} {unit}".strip()
        bound = f"from {_digits(least, 4)} to {_digits(most, 4)} {unit}".strip()
        yield Mistake(where, f"{told} is out of range ({bound}).", "Check the figure and its unit.")


def _digits(value: float, figures: int) -> str:
    """A number rounded to some figures and written without an exponent: `20000`."""
    return f"{float(f'{value:.{figures}g}'):.15g}"


def _wrong_rooms(value: Plain, ids: Ids, where: str) -> Iterator[Mistake]:
    if not isinstance(value, list) or not value:
        yield Mistake(where, f"a list of rooms is expected here, not {shown(value)}.")
        return
    for room in value:
        if not isinstance(room, str) or not room:
            yield Mistake(where, f"{shown(room)} is no room.")
        elif (fault := ids.fault("room", room)) is not None:
            yield Mistake(where, *fault)


def _expected(one: Carried) -> str:
    ids = one.kind in {"field", "band", "coat", "room", "entry"}
    return f"the id of a {one.kind}" if ids and one.kind != "entry" else "text"


def _known(one: Carried) -> str:
    return f"Known: {', '.join(one.choices)}."


def _in_si(one: Carried, value: Plain, twin: Twin | None) -> Plain:
    if one.kind not in BOUNDS or isinstance(value, bool) or not isinstance(value, int | float):
        return value
    if one.kind == "count":
        return int(value)
    number = twin.to_key(float(value)) if twin else float(value)
    return float(f"{number:.9g}")  # the last digits of a conversion are noise
