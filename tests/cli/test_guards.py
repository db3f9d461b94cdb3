"""`farwall read --guards` says which walls stand, and exits by what held."""

import sys

import pytest

from farwall.cli.guards import guards_told
from farwall.cli.main import main
from farwall.readers.apart import start

FOUND = {
    "guards": {"limits": True, "powers": True, "landlock": False, "seccomp": True, "hook": True},
    "holds": {"no network": True, "no file outside": False},
}


def test_what_holds_and_what_does_not_is_told() -> None:
    told = guards_told(FOUND)
    assert "  no   Landlock" in told
    assert "holds  no network" in told
    assert "  no   no file outside" in told
    assert "10 s of processor time" in told


@pytest.mark.parametrize(("outside", "code"), [(True, 0), (False, 1)])
def test_the_exit_says_whether_all_held(monkeypatch, capsys, outside, code) -> None:
    found = {**FOUND, "holds": {"no network": True, "no file outside": outside}}
    monkeypatch.setattr(start, "guards", lambda: found)
    with pytest.raises(SystemExit) as end:
        main(["read", "--guards"])
    assert end.value.code == code
    assert "Tried from inside" in capsys.readouterr().out


@pytest.mark.skipif(sys.platform != "linux", reason="these walls are Linux's")
def test_they_are_truly_tried(capsys) -> None:
    with pytest.raises(SystemExit) as end:
        main(["read", "--guards"])
    assert end.value.code == 0
    assert capsys.readouterr().out.count("holds") >= 9
