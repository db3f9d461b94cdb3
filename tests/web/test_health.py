"""Whether the server lives and is ready, told to anybody and telling nothing else."""

import pytest
from tests.web.pages.office import Office

from farwall.store import moving


@pytest.fixture
def office(tmp_path):
    found = Office(tmp_path)
    yield found
    found.close()


def test_it_lives_and_is_ready(office):
    assert office.get("/healthz").json() == {"lives": True}
    answer = office.get("/readyz")
    assert (answer.status_code, answer.json()) == (200, {"ready": True, "wants": []})


def test_tables_of_another_version_are_told(office):
    moving.move(office.book.engine, office.book.where, "r2")
    answer = office.get("/readyz")
    assert (answer.status_code, answer.json()["wants"]) == (503, ["tables"])


def test_a_book_that_is_gone_and_a_disk_that_takes_nothing_are_told(office, tmp_path, monkeypatch):
    import tempfile

    def no(*_told, **_more):
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(tempfile, "TemporaryFile", no)
    assert office.get("/readyz").json()["wants"] == ["disk"]
    office.book.engine.dispose()
    for one in office.book.where.folder.glob("book.sqlite*"):
        one.unlink()
    (office.book.where.folder / "book.sqlite").write_bytes(b"no book" * 1000)
    answer = office.get("/readyz")
    assert answer.json()["wants"] == ["book", "tables", "disk"]
    assert str(tmp_path) not in answer.text
    assert office.get("/healthz").status_code == 200
