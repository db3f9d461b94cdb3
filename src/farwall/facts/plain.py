"""Facts and plans as plain JSON values, keys in the order in which the nouns name them."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import fields, is_dataclass

Plain = None | bool | int | float | str | list["Plain"] | dict[str, "Plain"]


def plain(value: object, *, omit_empty: bool = False) -> Plain:
    """The value as dicts, lists, text, numbers, true, false and null.

    `omit_empty` leaves out keys that hold None, empty text or an empty list:
    what a job does not say. A plan keeps them, for its keys are promised.
    Raises TypeError for anything that is not a fact.
    """
    if value is None or isinstance(value, bool | int | float | str):
        return value
    if isinstance(value, tuple | list):
        return [plain(item, omit_empty=omit_empty) for item in value]
    if isinstance(value, Mapping):
        pairs = [(str(key), item) for key, item in value.items()]
    elif is_dataclass(value) and not isinstance(value, type):
        pairs = [(entry.name, getattr(value, entry.name)) for entry in fields(value)]
        # GeoJSON is read more easily with its type in front.
        pairs.sort(key=lambda pair: pair[0] != "type")
    else:
        raise TypeError(f"{type(value).__name__} is not a plain fact")
    found = {
        key: plain(item, omit_empty=omit_empty)
        for key, item in pairs
        if not (omit_empty and _empty(item))
    }
    if not omit_empty:
        return found
    # A noun of which nothing is said is as empty as a list.
    return {key: item for key, item in found.items() if item != {}}


def _empty(value: object) -> bool:
    return value is None or (isinstance(value, str | tuple | list | dict) and not value)
