"""`farwall people`: who there is, and a link by which one comes in again."""

from tests.store.entries import AT

from farwall.cli.main import main
from farwall.store.book import Book
from farwall.store.comings import Comings, seal_of
from farwall.store.people import People


def told(capsys, tmp_path, *words):
    code = main(["people", "--book", str(tmp_path / "book"), *words])
    found = capsys.readouterr()
    return code, found.out, found.err


def test_the_people_are_listed_without_any_secret(tmp_path, capsys):
    with Book.open(tmp_path / "book") as book:
        People(book).name_first("Ann Field", "hash", AT)
    assert told(capsys, tmp_path) == (0, "Ann Field: lead\n", "")


def test_a_link_lets_one_choose_a_new_password_and_is_noted(tmp_path, capsys):
    with Book.open(tmp_path / "book") as book:
        ann = People(book).name_first("Ann Field", "hash", AT)
    code, out, _ = told(capsys, tmp_path, "reset", "ann field", "--at", "http://10.0.0.5:8750/")
    assert code == 0
    assert out.startswith("http://10.0.0.5:8750/join/")
    token = out.strip().rpartition("/")[2]
    with Book.open(tmp_path / "book") as book:
        assert People(book).invited(seal_of(token), now_s=0.0).person.id == ann.id
        assert [one.word for one in Comings(book).done()] == ["link-made"]
        assert token not in str(Comings(book).done())


def test_a_name_unknown_and_a_book_that_is_not_there_are_told(tmp_path, capsys):
    code, _, err = told(capsys, tmp_path, "reset", "Bo")
    assert code == 2
    assert "holds no book" in err
    Book.open(tmp_path / "book").close()
    code, _, err = told(capsys, tmp_path, "reset", "Bo")
    assert code == 2
    assert "'Bo'" in err
