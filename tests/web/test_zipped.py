"""A folder as a ZIP in pieces: whole, and never held as a whole."""

import io
import zipfile

from farwall.web.zipped import zipped


def test_what_comes_out_is_what_was_put_in(tmp_path):
    folder = tmp_path / "book"
    (folder / "files" / "ab").mkdir(parents=True)
    told = {"jobs.jsonl": b"{}\n" * 9, "files/ab/cd": bytes(range(256)) * 40, "empty": b""}
    for name, content in told.items():
        (folder / name).write_bytes(content)
    found = zipfile.ZipFile(io.BytesIO(b"".join(zipped(folder, "farwall"))))
    assert found.testzip() is None
    assert {name: found.read(name) for name in found.namelist()} == {
        f"farwall/{name}": content for name, content in told.items()
    }


def test_no_piece_is_as_large_as_the_file(tmp_path):
    folder = tmp_path / "book"
    folder.mkdir()
    (folder / "large").write_bytes(b"\x00" * 3_000_000)
    pieces = [len(one) for one in zipped(folder, "x")]
    assert max(pieces) < 600_000
    assert sum(pieces) > 3_000_000
