"""`farwall serve`: where it cannot listen it says so, before it says anything else."""

from __future__ import annotations

import socket

from farwall.cli.main import main


def refused(tmp_path, capsys, *words):
    assert main(["serve", "--book", str(tmp_path / "book"), *words]) == 2
    told = capsys.readouterr()
    assert not told.out
    assert "answers at" not in told.err
    return told.err


def test_a_port_that_is_taken_is_told_with_a_way_out(tmp_path, capsys):
    with socket.create_server(("127.0.0.1", 0)) as taken:
        port = taken.getsockname()[1]
        told = refused(tmp_path, capsys, "--port", str(port))
    assert f"--port: 127.0.0.1:{port} cannot be listened at" in told
    assert "Say another --port." in told


def test_no_port_and_no_host_are_told(tmp_path, capsys):
    assert "99999 is no port" in refused(tmp_path, capsys, "--port", "99999")
    told = refused(tmp_path, capsys, "--host", "no host at all")
    assert "--host: no host at all is not known here." in told
