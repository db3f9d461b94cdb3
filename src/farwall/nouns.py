"""Nouns: the standard library's dataclasses, each method made when it is first asked for.

For a frozen dataclass the standard library writes and compiles six functions as its module loads,
asked for or not. Three hundred nouns are loaded before a plan begins, and to make their functions
was more than half of that time (docs/decisions/0023). Here its `dataclass` still reads and judges
the fields, so that `fields`, `replace`, `asdict` and pydantic see what they always saw; `__init__`,
`__eq__` and `__hash__` are written when a noun is first made, compared or looked up. From then on
they are what the standard library would have written.

It knows `frozen` and `eq`, for no noun asks for more; `InitVar` and fields by keyword only are not
known. Nothing can be set or deleted on a frozen noun, on none of its children either.
"""

from __future__ import annotations

import dataclasses
import sys
from dataclasses import MISSING, FrozenInstanceError, fields
from reprlib import recursive_repr

TYPE_CHECKING = False  # mypy takes it as true; `farwall --help` needs nothing else of typing
if TYPE_CHECKING:
    from collections.abc import Callable
    from dataclasses import dataclass as dataclass  # noqa: PLC0414 - so that mypy takes it from here
    from typing import Any, NoReturn

    _Maker = Callable[[type], Callable[..., Any]]


def _dataclass(cls: type | None = None, /, *, frozen: bool = False, eq: bool = True) -> Any:
    """The class as a dataclass, whose methods come when they are first asked for."""
    if cls is None:
        return lambda named: _noun(named, frozen=frozen, eq=eq)
    return _noun(cls, frozen=frozen, eq=eq)


if not TYPE_CHECKING:
    dataclass = _dataclass


class _LeftOut:
    """Stands for what is made anew for each noun, as the standard library shows it."""

    def __repr__(self) -> str:
        return "<factory>"


_LEFT_OUT = _LeftOut()


class _Later:
    """A method that is made, and put in this one's place, when it is first looked up."""

    __slots__ = ("home", "make", "name")

    def __init__(self, home: type, name: str, make: _Maker) -> None:
        self.home, self.name, self.make = home, name, make

    def __get__(self, instance: object, owner: type | None = None) -> Any:
        made: Any = self.make(self.home)
        setattr(self.home, self.name, made)
        return made.__get__(instance, owner)


def _noun(cls: type, *, frozen: bool, eq: bool) -> type:
    own = vars(cls)
    hashed = own.get("__hash__", MISSING)
    named: type = dataclasses.dataclass(init=False, repr=False, eq=False)(cls)
    _add(named, "__repr__", _told)
    _later(named, "__init__", _frozen_init if frozen else _init)
    if eq:
        told_hash = hashed is not MISSING and not (hashed is None and "__eq__" in own)
        _later(named, "__eq__", _eq)
        if not told_hash:
            if frozen:
                setattr(named, "__hash__", _Later(named, "__hash__", _hash))  # noqa: B010
            else:
                setattr(named, "__hash__", None)  # noqa: B010 - mypy knows no class without one
    if frozen:
        _add(named, "__setattr__", _refuse_set)
        _add(named, "__delattr__", _refuse_delete)
    return named


def _add(cls: type, name: str, method: object) -> None:
    """Give the class a method that it did not write itself."""
    if name not in vars(cls):
        setattr(cls, name, method)


def _later(cls: type, name: str, make: _Maker) -> None:
    _add(cls, name, _Later(cls, name, make))


@recursive_repr()
def _told(self: Any) -> str:
    each = ", ".join(f"{one.name}={getattr(self, one.name)!r}" for one in fields(self) if one.repr)
    return f"{type(self).__qualname__}({each})"


def _refuse_set(self: object, name: str, value: object) -> NoReturn:  # noqa: ARG001 - as Python calls it
    raise FrozenInstanceError(f"cannot assign to field {name!r}")


def _refuse_delete(self: object, name: str) -> NoReturn:  # noqa: ARG001 - as Python calls it
    raise FrozenInstanceError(f"cannot delete field {name!r}")


def _frozen_init(cls: type) -> Callable[..., Any]:
    return _init_by(cls, "_set(self, {name!r}, {value})")


def _init(cls: type) -> Callable[..., Any]:
    return _init_by(cls, "self.{name} = {value}")


def _init_by(cls: type, setting: str) -> Callable[..., Any]:
    """`__init__`: its words in the order of the fields, what is left out by its default."""
    known: dict[str, Any] = {"_set": object.__setattr__, "_missing": _LEFT_OUT}
    words, lines = ["self"], []
    for one in fields(cls):
        name, default = one.name, f"_default_{one.name}"
        value = name
        if one.default_factory is not MISSING:
            known[default] = one.default_factory
            value = f"{default}() if {name} is _missing else {name}" if one.init else f"{default}()"
        elif one.default is not MISSING:
            known[default] = one.default
        elif not one.init:
            continue
        if one.init:
            left_out = "_missing" if one.default_factory is not MISSING else default
            words.append(f"{name}={left_out}" if default in known else name)
        elif one.default is not MISSING:
            continue  # the class holds it
        lines.append(setting.format(name=name, value=value))
    if hasattr(cls, "__post_init__"):
        lines.append("self.__post_init__()")
    made = _written(cls, "__init__", words, lines or ["pass"], known)
    told = {one.name: one.type for one in fields(cls) if one.init}
    made.__annotations__ = {**told, "return": None}
    return made


def _eq(cls: type) -> Callable[..., Any]:
    names = [one.name for one in fields(cls) if one.compare]
    lines = [
        "if other.__class__ is self.__class__:",
        f" return {_row('self', names)} == {_row('other', names)}",
        "return NotImplemented",
    ]
    return _written(cls, "__eq__", ["self", "other"], lines, {})


def _hash(cls: type) -> Callable[..., Any]:
    of = [one.name for one in fields(cls) if (one.compare if one.hash is None else one.hash)]
    return _written(cls, "__hash__", ["self"], [f"return hash({_row('self', of)})"], {})


def _row(whose: str, names: list[str]) -> str:
    return "(" + "".join(f"{whose}.{name}," for name in names) + ")"


def _written(
    cls: type, name: str, words: list[str], lines: list[str], known: dict[str, Any]
) -> Callable[..., Any]:
    """The function of these words and lines, in the names of the module of its class."""
    body = "".join(f"\n  {line}" for line in lines)
    text = f"def make({', '.join(known)}):\n def {name}({', '.join(words)}):{body}\n return {name}"
    made: dict[str, Any] = {}
    exec(text, vars(sys.modules[cls.__module__]), made)  # as the standard library does
    method: Callable[..., Any] = made["make"](**known)
    method.__qualname__ = f"{cls.__qualname__}.{name}"
    return method
