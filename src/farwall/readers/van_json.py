"""A van file to a `Van`, and what a job used up; every mistake at once."""

from __future__ import annotations

import json
from collections import Counter
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

from farwall.errors import Mistake, Refused
from farwall.facts.plain import plain
from farwall.facts.van import VAN_VERSION, UsedUp, Van
from farwall.readers import json_text
from farwall.readers.small_file import of_object

if TYPE_CHECKING:
    from pydantic import TypeAdapter


@cache
def adapter() -> TypeAdapter[Van]:
    """Pydantic's checker of a van, made once and only when one is read."""
    from pydantic import TypeAdapter

    return TypeAdapter(Van)


def read_van(path: Path) -> Van:
    """The van in a file. Raises Refused with every mistake in it."""
    parsed = json_text.parse(json_text.read_text(path), about=f"{path.name} is not a van yet.")
    if parsed.mistakes:
        raise Refused(*parsed.mistakes, about=f"{path.name} is not a van yet:")
    return van_from(parsed.data, path.name)


def van_from(data: Any, name: str = "The van") -> Van:
    """The van in plain JSON values. Raises Refused with every mistake in them."""
    return of_object(
        data,
        Van,
        adapter(),
        newest=VAN_VERSION,
        about=f"{name} is not a van yet:",
        sense=_sense,
    )


def van_to_text(van: Van) -> str:
    """The van as the text of a file; what it does not say is left out."""
    return json.dumps(plain(van, omit_empty=True), indent=1, ensure_ascii=False) + "\n"


def _sense(van: Van) -> list[Mistake]:
    mistakes = [
        Mistake(name, f"{count} things have this id.", "Give each its own.")
        for name, count in Counter(
            [*(one.id for one in van.sprayers), *(one.id for one in van.stock)]
        ).items()
        if count > 1
    ]
    for one in van.sprayers:
        if one.seals_at > one.uses:
            what = f"its seals were renewed at use {one.seals_at} and it has {one.uses} uses."
            mistakes.append(Mistake(one.id, what, "Correct one of the two."))
    mistakes += [
        Mistake(one.id, f"stain is counted in litres, not {one.unit}.", "Say unit l.")
        for one in van.stock
        if one.kind in {"stain", "sealer"} and one.unit != "l"
    ]
    mistakes += [Mistake(one.id, "which stain is it?", "Say `of`, as the job names it.")
                 for one in van.stock if one.kind == "stain" and not one.of]  # fmt: skip
    return mistakes


def used_from(words: list[str], on: str) -> UsedUp:
    """What a job used up, from words.

    `sprayer=blue` (`sprayer=blue:0.68` with its flow, L/min), `stain=walnut:9.5:7` (litres, lot
    where noted), `tape-1=40` (a thing on the shelf). Raises Refused with every mistake.
    """
    mistakes: list[Mistake] = []
    sprayers, flows, stains, things = [], [], [], []
    for word in words:
        key, equals, text = word.partition("=")
        parts = text.split(":")
        try:
            if not equals or not parts[0]:
                raise ValueError("this is no key=value")
            if key == "sprayer":
                sprayers.append(parts[0])
                if len(parts) > 1:
                    flows.append((parts[0], _amount(parts[1])))
            elif key == "stain":
                if len(parts) < 2:
                    raise ValueError("say how many litres, as stain=walnut:9.5")
                stains.append((parts[0], parts[2] if len(parts) > 2 else "", _amount(parts[1])))
            else:
                things.append((key, _amount(parts[0])))
        except ValueError as error:
            remedy = "Such as sprayer=blue stain=walnut:9.5:7 tape-1=40."
            mistakes.append(Mistake(word[:40], f"{error}.", remedy))
    if mistakes:
        raise Refused(*mistakes, about="What was used cannot be read:")
    return UsedUp(on, tuple(sprayers), tuple(flows), tuple(stains), tuple(things))


def _amount(text: str) -> float:
    try:
        value = float(text)
    except ValueError:
        raise ValueError(f"{text[:20] or 'nothing'} is not a number") from None
    if not 0 <= value < 1e6:
        raise ValueError(f"{text[:20]} is out of range")
    return value
