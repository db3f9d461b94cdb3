"""`farwall authority`, and the words of `serve` for https: made, told, refused."""

from __future__ import annotations

import argparse
import json
from datetime import UTC, datetime

import pytest

from farwall.cli import serve_https
from farwall.cli.main import main
from farwall.errors import Refused
from farwall.web.authority import authority_of, certificate_here

NOW = datetime(2026, 11, 26, 12, tzinfo=UTC)


def test_it_makes_the_files_once_and_tells_the_steps_with_the_fingerprint(tmp_path, capsys):
    words = ["authority", "--book", str(tmp_path / "book"), "--name", "192.168.7.7"]
    assert main(words) == 0
    first = capsys.readouterr()
    assert main(words) == 0
    assert capsys.readouterr() == first
    [folder] = [one.parent for one in tmp_path.rglob("authority.crt")]
    assert authority_of(folder.parent, NOW).fingerprint in first.out
    assert "https://192.168.7.7:8750/slab/ID#KEY" in first.out
    assert "192.168.7.7" in first.out.partition("known as: ")[2].partition("\n")[0]
    assert "PRIVATE" not in first.out
    assert main([*words, "--json"]) == 0
    told = json.loads(capsys.readouterr().out)
    assert told["fingerprint_sha256"] in first.out
    assert set(told["names"]) >= {"192.168.7.7", "localhost"}
    assert {one.name: one.stat().st_mode & 0o077 for one in folder.iterdir()} == {
        "authority.crt": 0o044, "authority-key.pem": 0, "here.pem": 0,
    }  # fmt: skip


def told(*words):
    parser = argparse.ArgumentParser()
    parser.add_argument("--host", default="0.0.0.0")
    serve_https.arguments(parser)
    return parser.parse_args(words)


def test_without_words_it_stays_plain(tmp_path):
    assert serve_https.certificate_of(told(), tmp_path) == {}


def test_its_own_certificate_is_made_where_there_is_none(tmp_path):
    found = serve_https.certificate_of(told("--local-certificate"), tmp_path)
    assert found["ssl_certfile"] == found["ssl_keyfile"]
    assert found["ssl_certfile"].startswith(str(tmp_path))


def test_a_certificate_and_its_key_are_looked_at_before_anything_is_begun(tmp_path):
    path, _ = certificate_here(tmp_path / "one", ("localhost",), NOW)
    other, _ = certificate_here(tmp_path / "two", ("localhost",), NOW)
    good = told("--certificate", str(path), "--key", str(path))
    assert serve_https.certificate_of(good, tmp_path)["ssl_certfile"] == str(path)
    for words in (
        ("--certificate", str(path)),
        ("--key", str(path)),
        ("--certificate", str(path), "--key", str(tmp_path / "none.pem")),
        ("--certificate", str(path), "--local-certificate"),
        ("--certificate", str(authority_of(tmp_path / "two", NOW).public), "--key", str(path)),
    ):
        with pytest.raises(Refused):
            serve_https.certificate_of(told(*words), tmp_path)
    assert other != path
