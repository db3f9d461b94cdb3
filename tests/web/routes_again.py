"""What a route asks for is worked out once for each function, not once more for each app.

An app is made for nearly every test, with hundreds of routes; FastAPI reads the signature of each
and builds a validator for each parameter, a tenth of a second in all, always the same. That reading
hangs on the function's code, its defaults and the route's path; only what is called is the app's
own. `test_routes_again.py` holds that an app comes out the same.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Hashable
from dataclasses import fields
from functools import cache
from typing import Any

from fastapi import routing
from fastapi.dependencies import models, utils
from fastapi.dependencies.models import Dependant

READ = utils.get_dependant
"""FastAPI's own reading."""
KINDS = ("_is_gen_callable", "_is_async_gen_callable", "_is_coroutine_callable")
"""FastAPI's questions about a function whose answers hang on its code alone."""
_RETURNS, _PATH = routing.get_typed_return_annotation, routing.compile_path
_KIND = {name: getattr(routing, name) for name in KINDS}
_NAMES = tuple(field.name for field in fields(Dependant))


def read_once(*, path: str, call: Callable[..., Any], **more: Any) -> Dependant:
    """As FastAPI's `get_dependant`; a function of the same code at the same path is read once."""
    key = _key(path, call, more)
    if key is None:
        return READ(path=path, call=call, **more)
    if key not in _FOUND:
        found = READ(path=path, call=call, **more)
        if found.dependencies:  # they are called as well, and may be another app's
            return found
        _FOUND[key] = _Kept(found)
    return _FOUND[key].copy(call)


def kind_once(tell: Callable[..., bool]) -> Callable[..., bool]:
    """What kind of function this is: asked once for each code."""
    kept: dict[Hashable, bool] = {}

    def told(call: Any) -> bool:
        code = _code(call)
        if code is None:
            return tell(call)
        if code not in kept:
            kept[code] = tell(call)
        return kept[code]

    return told


def returns_once() -> Callable[..., Any]:
    """What a function says it gives back: read once for each code and its annotations."""
    kept: dict[Hashable, Any] = {}

    def told(call: Any) -> Any:
        key = _key("", call, {})
        if key is None:
            return _RETURNS(call)
        if key not in kept:
            kept[key] = _RETURNS(call)
        return kept[key]

    return told


def _code(call: Any) -> Hashable | None:
    """The code of a function and of those it wraps; None for whatever else can be called."""
    code: list[Hashable] = []
    while inspect.isfunction(call) and call.__dict__.keys() <= {"__wrapped__"}:
        code.append(call.__code__)
        if not call.__dict__:
            return tuple(code)
        call = call.__wrapped__
    return None


class _Kept:
    """A reading that holds nothing of the app that was first."""

    def __init__(self, found: Dependant) -> None:
        self.told = {name: getattr(found, name) for name in _NAMES if name != "call"}
        self.lists = {n: tuple(v) for n, v in self.told.items() if isinstance(v, list)}

    def copy(self, call: Callable[..., Any]) -> Dependant:
        own = {name: list(value) for name, value in self.lists.items()}
        return Dependant(**{**self.told, **own}, call=call)


_FOUND: dict[Hashable, _Kept] = {}


def _key(path: str, call: Any, more: dict[str, Any]) -> Hashable | None:
    """All that the reading hangs on; None where that cannot be told."""
    code: list[Hashable] = []
    while call is not None:
        function = call.__func__ if inspect.ismethod(call) else call
        if not inspect.isfunction(function) or hasattr(function, "__signature__"):
            return None
        code.append((inspect.ismethod(call), function.__code__, function.__defaults__))
        told = (function.__kwdefaults__ or {}, function.__annotations__)
        code.extend(tuple(one.items()) for one in told)
        call = getattr(function, "__wrapped__", None)
    asked = [(name, tuple(v) if isinstance(v, list) else v) for name, v in sorted(more.items())]
    key = (path, tuple(code), tuple(asked))
    try:
        hash(key)
    except TypeError:
        return None
    return key


def read_routes_once() -> None:
    """From here on, in this process."""
    routing.get_dependant = utils.get_dependant = read_once
    routing.get_typed_return_annotation = returns_once()
    routing.compile_path = cache(_PATH)
    for name, tell in _KIND.items():
        setattr(routing, name, kind_once(tell))


def let_apps_go() -> None:
    """Clear what FastAPI keeps of the last four thousand functions, two dozen apps with all of
    theirs: 150 MB that the collector would walk over again and again."""
    for kept in vars(models).values():
        if hasattr(kept, "cache_clear"):
            kept.cache_clear()
