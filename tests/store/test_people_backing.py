"""Backups know the people; sessions and links never come back, and no hash goes out."""

import pytest
from tests.store.entries import AT
from tests.store.test_backing import tree

from farwall.errors import Refused
from farwall.store.book import Book, restore
from farwall.store.comings import Comings, seal_of
from farwall.store.people import People

HASH = "$argon2id$an-invented-hash"


@pytest.fixture
def peopled(full):
    people, comings = People(full), Comings(full)
    ann = people.name_first("Ann", HASH, AT)
    people.invite(seal_of("link"), kind="join", role="helper", person=None, ends_s=9.0)
    comings.begin("token", ann.id, kind="browser", now_s=1.0, ends_s=9.0)
    comings.note(AT, "Ann", "signed-in", {})
    comings.note(AT, "Ann", "invited", {"role": "helper"})
    return full


def test_the_open_format_holds_people_and_deeds_and_no_secret(peopled, new_address, tmp_path):
    peopled.out(tmp_path / "out")
    told = b"".join(tree(tmp_path / "out").values())
    assert b"Ann" in told
    for secret in (HASH, seal_of("token"), seal_of("link")):
        assert secret.encode() not in told
    with Book.open(**new_address()) as other:
        other.take_in(tmp_path / "out")
        assert [one.word for one in Comings(other).done()] == ["invited", "signed-in"]
        assert other.check() == []
        assert not People(other).has_lead()
        again = People(other).name_first("ann", "another hash", AT)
        assert again.id == People(peopled).all()[0].id
        assert People(other).has_lead()


def test_an_open_format_from_before_there_were_people_is_read(peopled, tmp_path):
    peopled.out(tmp_path / "out")
    for name in ("people.jsonl", "done.jsonl", "manifest.json"):
        (tmp_path / "out" / name).unlink()
    with Book.open(tmp_path / "new") as other:
        other.take_in(tmp_path / "out")
        assert People(other).all() == []


@pytest.mark.parametrize("name", ["people.jsonl", "done.jsonl"])
def test_people_lost_or_changed_outside_are_noticed(peopled, tmp_path, name):
    peopled.out(tmp_path / "out")
    path = tmp_path / "out" / name
    path.write_bytes(path.read_bytes().replace(b"Ann", b"Bob"))
    with Book.open(tmp_path / "new") as other:
        with pytest.raises(Refused, match="not as it was written"):
            other.take_in(tmp_path / "out")
        path.unlink()
        with pytest.raises(Refused, match="not as it was written"):
            other.take_in(tmp_path / "out")


def test_a_restored_book_knows_its_people_and_nobody_is_still_in(peopled, tmp_path):
    peopled.backup(tmp_path / "backup")
    restore(tmp_path / "backup", str(tmp_path / "restored"))
    with Book.open(tmp_path / "restored") as other:
        found = People(other).all()
        assert [one.name for one in found] == ["Ann"]
        # PostgreSQL backs up by open formats, in which no hash is.
        assert People(other).has_lead() == (peopled.where.folder is not None)
        assert Comings(other).sessions(found[0].id, now_s=2.0) == []
        assert People(other).invited(seal_of("link"), now_s=2.0) is None
        assert len(Comings(other).done()) == 2
        assert other.check() == []


def test_nobody_beside_owner_and_group_reads_book_and_backup(peopled, tmp_path):
    peopled.backup(tmp_path / "backup")
    assert (tmp_path / "backup").stat().st_mode & 0o007 == 0
    if peopled.where.folder:
        for one in peopled.where.folder.glob("book.sqlite*"):
            assert one.stat().st_mode & 0o007 == 0
