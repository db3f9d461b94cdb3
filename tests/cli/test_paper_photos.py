"""`farwall papers --only before-after.pdf`: two files given, or one missing."""

import argparse

import pytest
from tests.colour_photos import shot

from farwall.cli.paper_photos import log_photos, pair_given
from farwall.errors import Refused
from farwall.store.files import put_file


def options(**told):
    return argparse.Namespace(**{"before": None, "after": None, "values": None, "log": None} | told)


def test_two_files_are_read_in_a_process_of_their_own(tmp_path):
    path = tmp_path / "floor.jpg"
    path.write_bytes(shot("24").data)
    before, after = pair_given(options(before=path, after=path))
    assert before == after
    assert before.error_de is not None
    assert before.jpeg.startswith(b"\xff\xd8\xff")


def test_one_alone_and_one_that_is_not_there_are_refused(tmp_path):
    assert pair_given(options()) is None
    with pytest.raises(Refused):
        pair_given(options(before=tmp_path / "a.jpg"))
    with pytest.raises(Refused):
        pair_given(options(before=tmp_path / "a.jpg", after=tmp_path / "b.jpg"))


def test_photos_of_a_log_lie_beside_it_and_a_spoilt_one_is_told(tmp_path, capsys):
    from farwall.cli.log_file import LogFile

    folder = LogFile(tmp_path).files
    good, bad = put_file(folder, shot("24").data), put_file(folder, b"no picture")
    shown = log_photos(options(log=tmp_path))
    assert shown(good) is not None
    assert shown(bad) is None
    assert bad[:12] in capsys.readouterr().err
    assert log_photos(options()) is None
