"""A folder is written whole or not at all; an older one stays as it was when writing fails."""

from __future__ import annotations

import stat
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from farwall.errors import Refused
from farwall.papers.folder import write_folder

FILES = {"plan.json": b"{}", "floor.svg": b"<svg/>", "run-sheet.pdf": b"%PDF"}


def content(folder):
    return {path.name: path.read_bytes() for path in folder.iterdir()}


def left_over(folder):
    """What else lies beside a folder: nothing may."""
    return sorted(path.name for path in folder.parent.iterdir() if path != folder)


def break_at(monkeypatch, name):
    """Let the disk fail when a file of this name is written."""
    write = Path.write_bytes

    def failing(self, data):
        if self.name == name:
            write(self, data[: len(data) // 2])
            raise OSError(28, "No space left on device")
        return write(self, data)

    monkeypatch.setattr(Path, "write_bytes", failing)


def test_a_new_folder_holds_every_file(tmp_path):
    write_folder(tmp_path / "out", FILES)
    assert content(tmp_path / "out") == FILES
    assert left_over(tmp_path / "out") == []


def test_a_new_folder_may_be_opened_by_others(tmp_path):
    write_folder(tmp_path / "out", FILES)
    assert stat.S_IMODE((tmp_path / "out").stat().st_mode) == 0o755


def test_folders_above_it_are_made(tmp_path):
    write_folder(tmp_path / "spring" / "lot 9" / "plan", FILES)
    assert content(tmp_path / "spring" / "lot 9" / "plan") == FILES


@pytest.mark.parametrize("name", ["with space", "Größe · 9", "-dash", "dot.", "#1 $bath$"])
def test_names_of_all_kinds(tmp_path, name):
    write_folder(tmp_path / name, FILES)
    assert content(tmp_path / name) == FILES


def test_an_older_plan_is_replaced_and_other_files_are_left_alone(tmp_path):
    out = tmp_path / "out"
    out.mkdir()
    (out / "plan.json").write_bytes(b"old")
    (out / "photo.jpg").write_bytes(b"mine")
    write_folder(out, FILES)
    assert content(out) == {**FILES, "photo.jpg": b"mine"}
    assert left_over(out) == []


@pytest.mark.parametrize("name", FILES)
def test_a_failure_in_the_middle_leaves_no_folder(tmp_path, monkeypatch, name):
    break_at(monkeypatch, name)
    with pytest.raises(Refused, match="No space left"):
        write_folder(tmp_path / "out", FILES)
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize("name", FILES)
def test_a_failure_in_the_middle_leaves_an_older_folder_whole(tmp_path, monkeypatch, name):
    out = tmp_path / "out"
    old = {"plan.json": b"old plan", "floor.svg": b"old floor", "run-sheet.pdf": b"old sheet"}
    write_folder(out, old)
    break_at(monkeypatch, name)
    with pytest.raises(Refused):
        write_folder(out, FILES)
    assert content(out) == old
    assert left_over(out) == []


@pytest.mark.parametrize("into", ["out", ".before"])
@pytest.mark.parametrize("name", ["plan.json", "run-sheet.pdf"])
def test_a_failure_between_two_files_puts_the_older_ones_back(tmp_path, monkeypatch, name, into):
    """Whether the new file cannot be brought in or the older one cannot be moved away."""
    out = tmp_path / "out"
    old = {"plan.json": b"old plan", "run-sheet.pdf": b"old sheet", "photo.jpg": b"mine"}
    write_folder(out, old)
    replace = Path.replace

    def failing(self, target):
        if self.name == name and target.parent.name == into and self.parent.name != ".before":
            raise OSError(5, "Input/output error")
        return replace(self, target)

    monkeypatch.setattr(Path, "replace", failing)
    with pytest.raises(Refused, match="Input/output error"):
        write_folder(out, FILES)
    assert content(out) == old
    assert left_over(out) == []


def test_a_folder_in_the_place_of_a_file_is_refused_and_kept(tmp_path):
    out = tmp_path / "out"
    (out / "floor.svg").mkdir(parents=True)
    (out / "floor.svg" / "drawing").write_text("mine")
    (out / "plan.json").write_text("old")
    with pytest.raises(Refused, match=r"floor\.svg is a folder"):
        write_folder(out, FILES)
    assert (out / "floor.svg" / "drawing").read_text() == "mine"
    assert (out / "plan.json").read_text() == "old"


def test_any_error_leaves_nothing_behind(tmp_path):
    """Also one that is not the disk's: content that is no bytes."""
    with pytest.raises(TypeError):
        write_folder(tmp_path / "out", {"plan.json": b"{}", "floor.svg": None})
    assert list(tmp_path.iterdir()) == []


def test_a_place_that_is_a_file_is_refused_calmly(tmp_path):
    (tmp_path / "out").write_text("a letter")
    with pytest.raises(Refused, match="is a file") as no:
        write_folder(tmp_path / "out", FILES)
    assert no.value.mistakes[0].remedy
    assert (tmp_path / "out").read_text() == "a letter"


def test_a_folder_below_a_file_is_refused_calmly(tmp_path):
    (tmp_path / "letter").write_text("a letter")
    with pytest.raises(Refused, match="cannot be written"):
        write_folder(tmp_path / "letter" / "out", FILES)


def test_a_place_that_may_not_be_written_is_refused_calmly(tmp_path, monkeypatch):
    """Whoever runs this may be allowed everything: the refusal of the disk is played."""

    def no(*args, **kwargs):
        raise PermissionError(13, "Permission denied")

    monkeypatch.setattr("tempfile.mkdtemp", no)
    with pytest.raises(Refused, match="Permission denied") as refused:
        write_folder(tmp_path / "out", FILES)
    assert str(tmp_path / "out") in str(refused.value)


@given(st.dictionaries(st.sampled_from(["a", "b.json", "c d"]), st.binary(max_size=99), min_size=1))
def test_what_is_written_is_what_was_given(tmp_path_factory, files):
    out = tmp_path_factory.mktemp("some") / "out"
    write_folder(out, {"a": b"older"})
    write_folder(out, files)
    assert content(out) == {"a": b"older", **files}
