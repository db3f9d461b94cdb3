"""A book in each of the two stores; PostgreSQL is skipped aloud when it cannot be had."""

import itertools
from collections.abc import Callable, Iterator

import pytest
from tests.store.entries import AT, FACTS, LATER, entry

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


@pytest.fixture
def full(book):
    """A book with something of everything in it."""
    book.put_facts("quince", FACTS, who="Ann", at=AT, name="Quince Street")
    book.put_facts("quince", {**FACTS, "version": 2}, who="Ann", at=LATER)
    book.put_facts("sorrel", FACTS, who="Ann", at=AT)
    sha = book.put_file(b"a photo")
    photo = entry("p", word="photo", about={"file": sha}, device="red")
    said = [entry("a"), photo, entry("c", job="sorrel"), entry("h", word="handed-over")]
    book.keep(said, received_at=AT, clock_off_s={("red", 0): 2.5, ("blue", 1): 0.0})
    book.put_document("van", "red", {"tank_l": 15})
    return book
