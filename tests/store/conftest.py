"""A book in each of the two stores; PostgreSQL is skipped aloud when it cannot be had."""

import itertools
from collections.abc import Callable, Iterator

import pytest

from farwall.bench.book_postgres import NoServer, Server, throwaway_server
from farwall.store.book import Book

_NUMBERS = itertools.count(1)


@pytest.fixture(scope="session")
def server() -> Iterator[Server]:
    try:
        context = throwaway_server()
        found = context.__enter__()
    except NoServer as why:
        pytest.skip(f"no PostgreSQL here: {why}")
    yield found
    context.__exit__(None, None, None)


@pytest.fixture(params=["sqlite", "postgres"])
def new_address(request, tmp_path) -> Callable[[], dict]:
    """Makes the words of `Book.open` for a new, empty book, each time it is called."""

    def fresh() -> dict:
        number = next(_NUMBERS)
        if request.param == "sqlite":
            return {"told": str(tmp_path / f"book-{number}")}
        server = request.getfixturevalue("server")
        address = server.new_database(f"book_{number}")
        return {"told": address, "files": tmp_path / f"files-{number}"}

    if request.param == "postgres":
        request.getfixturevalue("server")
    return fresh


@pytest.fixture
def place(new_address) -> dict:
    return new_address()


@pytest.fixture
def book(place) -> Iterator[Book]:
    with Book.open(**place) as found:
        yield found
