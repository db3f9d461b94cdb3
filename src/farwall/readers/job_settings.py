"""Settings such as `tools.tank_gal=2` put into a job's plain values, before they are judged.

A setting's key is the way to its value with dots between: names of keys, and
for lists the number of the entry (from 0, as in the places that mistakes
name) or its id. `none` takes a value away.
"""

from __future__ import annotations

import json
import math
from collections.abc import Sequence
from dataclasses import is_dataclass
from typing import Any, get_args, get_origin

from farwall.errors import Mistake, Refused
from farwall.facts.job import Job
from farwall.readers.shape import bare, did_you_mean, keys_of
from farwall.readers.twins import TWINS

Json = dict[str, Any]


def with_settings(raw: Json, settings: Sequence[str]) -> Json:
    """The plain job with each `key=value` put in. `raw` itself is changed.

    Values are not judged here; `job_from` does that. Raises Refused with
    every setting that has no `=`, an unknown key, or sets a thing twice.
    """
    mistakes: list[Mistake] = []
    done: dict[str, str] = {}
    for setting in settings:
        key, equals, text = setting.partition("=")
        if not equals or not key:
            what = "This is no setting."
            mistakes.append(
                Mistake(setting[:60], what, "Write key=value, such as tools.tank_gal=2.")
            )
            continue
        try:
            target = _put(raw, key, text)
        except Refused as refusal:
            mistakes += refusal.mistakes
            continue
        if target in done:
            what = f"It was already set by `{done[target]}`."
            mistakes.append(Mistake(key, what, "Keep one of the two."))
        done[target] = key
    if mistakes:
        raise Refused(*mistakes, about="Some settings cannot be used.")
    return raw


def _put(raw: Json, key: str, text: str) -> str:
    """Put one value in its place; returns the place in the noun's own keys."""
    steps = key.split(".")
    node: Any = raw
    hint: Any = Job
    way: list[str] = []
    while True:
        step = steps.pop(0)
        node, name, hint = _step(node, hint, step, key)
        way.append(str(name))
        if not steps:
            break
        node = _entered(node, name, hint, key)
    _assign(node, name, None if text == "none" else _value(text, hint))
    return ".".join([*way[:-1], _own_key(way[-1])])


def _own_key(name: str) -> str:
    """The noun's own key for a twin, so that two spellings of one value are noticed."""
    for twins in TWINS.values():
        for twin in twins:
            if twin.other == name:
                return twin.key
    return name


def _step(node: Any, hint: Any, step: str, key: str) -> tuple[Any, str | int, Any]:
    """Where a step leads from `node`: the holder, the name or number in it, the type there."""
    hint = bare(hint)
    if is_dataclass(hint) and isinstance(hint, type) and isinstance(node, dict):
        known = keys_of(hint)
        twins = {twin.other: twin.key for twin in TWINS.get(hint, ())}
        if step in twins:
            node.pop(twins[step], None)
            return node, step, float
        if step in known:
            for other, own in twins.items():
                if own == step:
                    node.pop(other, None)
            return node, step, known[step]
        what = f"`{step}` is not a key here."
        raise Refused(Mistake(key, what, did_you_mean(step, [*known, *twins])))
    if get_origin(hint) is dict and isinstance(node, dict):
        return node, step, get_args(hint)[1]
    if get_origin(hint) is tuple and get_args(hint)[-1] is ... and isinstance(node, list):
        return node, _number(node, step, key), get_args(hint)[0]
    raise Refused(Mistake(key, f"`{step}` leads nowhere.", "Leave it out."))


def _number(rows: list[Any], step: str, key: str) -> int:
    ids = [row.get("id") for row in rows if isinstance(row, dict)]
    if step in ids:
        return ids.index(step)
    if step.isdecimal() and len(step) < 6 and int(step) <= len(rows):
        return int(step)
    known = [str(name) for name in ids if name]
    what = f"There is no entry `{step}` in this list of {len(rows)}."
    raise Refused(
        Mistake(key, what, f"Count from 0, or use an id: {', '.join(known) or 'none yet'}.")
    )


def _entered(node: Any, name: str | int, hint: Any, key: str) -> Any:
    """The inner object or list at `name`, made when it is not there yet."""
    inner = bare(hint)
    holds = get_origin(inner) is dict or is_dataclass(inner)
    if not holds and get_origin(inner) is not tuple:
        raise Refused(Mistake(key, f"`{name}` has nothing inside it.", "Leave the rest out."))
    empty: Any = {} if holds else []
    if isinstance(node, list):
        if name == len(node):
            node.append(empty)
        return node[int(name)]
    if node.get(name) is None:
        node[name] = empty
    return node[name]


def _assign(node: Any, name: str | int, value: Any) -> None:
    if isinstance(node, list) and name == len(node):
        node.append(value)
    elif value is None and isinstance(node, dict):
        node.pop(name, None)
    else:
        node[name] = value


def _value(text: str, hint: Any) -> Any:
    """The text as the JSON value that its place asks for; left as text when it does not fit."""
    inner = bare(hint)
    if inner is bool:
        return {"true": True, "yes": True, "false": False, "no": False}.get(text.lower(), text)
    if inner in {int, float} or (get_origin(inner) is not tuple and _is_version(inner)):
        return _as_number(text)
    if get_origin(inner) is tuple and bare(get_args(inner)[0]) is str:
        return [word.strip() for word in text.split(",") if word.strip()]
    return _points(text) if text.startswith("[[") else text


def _points(text: str) -> Any:
    """The points of a line, such as `[[0, 1.2], [0, 2.7]]`; left as text when they are none."""
    try:
        return json.loads(text)
    except ValueError:
        return text


def _is_version(inner: Any) -> bool:
    return bool(get_args(inner)) and all(isinstance(word, int) for word in get_args(inner))


def _as_number(text: str) -> Any:
    try:
        number = float(text)
    except ValueError:
        return text
    if not math.isfinite(number):
        return text
    return int(number) if number.is_integer() and abs(number) < 1e15 else number
