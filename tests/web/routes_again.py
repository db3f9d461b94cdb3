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
from typing import Any

from fastapi import routing
from fastapi.dependencies import utils
from fastapi.dependencies.models import Dependant

READ = utils.get_dependant
"""FastAPI's own reading."""
_FOUND: dict[Hashable, Dependant] = {}


def read_once(*, path: str, call: Callable[..., Any], **more: Any) -> Dependant:
    """As FastAPI's `get_dependant`; a function of the same code at the same path is read once."""
    key = _key(path, call, more)
    if key is None:
        return READ(path=path, call=call, **more)
    if key not in _FOUND:
        found = READ(path=path, call=call, **more)
        if found.dependencies:  # they are called as well, and may be another app's
            return found
        _FOUND[key] = _copy(found, None)  # holds nothing of the app that was first
    return _copy(_FOUND[key], call)


def _copy(one: Dependant, call: Callable[..., Any] | None) -> Dependant:
    told = {field.name: getattr(one, field.name) for field in fields(one)}
    own = {name: list(value) for name, value in told.items() if isinstance(value, list)}
    return Dependant(**{**told, **own, "call": call})


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
