"""A reading of a route that is used again is the reading FastAPI would make itself."""

from __future__ import annotations

from dataclasses import fields
from functools import wraps

import pytest
from fastapi import routing
from fastapi.dependencies import models, utils
from tests.web.pages.office import Office
from tests.web.routes_again import KINDS, READ, kind_once, read_once, returns_once


def plainly(reading):
    """All that a reading says but for what is called, which is each app's own."""
    told = {field.name: getattr(reading, field.name) for field in fields(reading)}
    del told["call"]
    inner = [plainly(one) for one in told.pop("dependencies")]
    return [*((name, repr(value)) for name, value in told.items()), inner]


def test_every_route_of_the_app_is_read_as_fastapi_reads_it(tmp_path, monkeypatch):
    seen = []

    def both(**asked):
        found = read_once(**asked)
        assert found.call is asked["call"]
        assert plainly(found) == plainly(READ(**asked))
        seen.append(asked["path"])
        return found

    monkeypatch.setattr(routing, "get_dependant", both)
    monkeypatch.setattr(utils, "get_dependant", both)
    Office(tmp_path / "one").close()
    once = len(seen)
    Office(tmp_path / "two").close()
    assert once > 100
    assert len(seen) == 2 * once


def test_each_app_calls_its_own_function_and_another_default_is_another_reading():
    def made(number, least):
        def told(many: int = least) -> int:
            return number * many

        return told

    one, two, three = (read_once(path="/", call=made(*of)) for of in [(1, 5), (2, 5), (3, 6)])
    assert [each.call(1) for each in (one, two, three)] == [1, 2, 3]
    assert [each.query_params[0].default for each in (one, two, three)] == [5, 5, 6]


def test_what_one_route_adds_to_its_reading_is_not_seen_by_another():
    def told(many: int = 1) -> int:
        return many

    first = read_once(path="/", call=told)
    first.query_params.clear()
    assert len(read_once(path="/", call=told).query_params) == 1


def plain() -> int: ...


async def waits() -> str: ...


def each():
    yield 1


async def each_waits():
    yield 1


@wraps(waits)
def wrapped(): ...


class Called:
    async def __call__(self) -> bytes: ...


@pytest.mark.parametrize("one", [plain, waits, each, each_waits, wrapped, Called, Called()])
def test_kind_and_answer_of_a_function_are_told_as_fastapi_tells_them(one):
    for name in KINDS:
        tell = getattr(models, name)
        again = kind_once(tell)
        assert [again(one), again(one), again(one.__call__)] == [tell(one)] * 2 + [
            tell(one.__call__)
        ]
    told = returns_once()
    assert told(one) == told(one) == utils.get_typed_return_annotation(one)


def test_the_tests_of_this_folder_use_it():
    assert routing.get_dependant is read_once
