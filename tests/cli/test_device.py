"""The name of this device: told, set, or made once for each home."""

import re
from concurrent.futures import ProcessPoolExecutor
from multiprocessing import get_context

import pytest

from farwall.cli.device import DEVICE, device_name


@pytest.fixture
def state(tmp_path, monkeypatch):
    """A home that has no name yet; where the name is going to lie."""
    monkeypatch.delenv(DEVICE)
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "state"))
    return tmp_path / "state" / "farwall" / "device"


def test_a_name_is_made_at_first_use_and_kept(state):
    name = device_name()
    assert re.fullmatch(r"desk-[0-9a-f]{6}", name)
    assert state.read_text() == f"{name}\n"
    assert device_name() == name
    assert [one.name for one in state.parent.iterdir()] == ["device"]


def test_two_homes_have_two_names(state, monkeypatch, tmp_path):
    ann = device_name()
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "bea"))
    assert device_name() != ann


def test_what_is_told_wins_over_what_is_set_and_that_over_the_home(state, monkeypatch):
    kept = device_name()
    monkeypatch.setenv(DEVICE, "left pocket")
    assert device_name() == "left pocket"
    assert device_name("right pocket") == "right pocket"
    monkeypatch.setenv(DEVICE, "")
    assert device_name() == kept


def test_a_state_folder_that_is_not_absolute_is_passed_over(state, monkeypatch, tmp_path):
    monkeypatch.setenv("XDG_STATE_HOME", "somewhere")
    monkeypatch.setenv("HOME", str(tmp_path / "home"))
    name = device_name()
    assert (tmp_path / "home/.local/state/farwall/device").read_text() == f"{name}\n"


@pytest.mark.parametrize("spoilt", ["", " \n", "\x00\x01", "x" * 300])
def test_what_is_no_name_is_replaced(state, spoilt):
    state.parent.mkdir(parents=True)
    state.write_text(spoilt)
    name = device_name()
    assert name.startswith("desk-")
    assert device_name() == name


def test_the_first_of_two_that_make_one_at_once_wins(state, monkeypatch):
    def while_another_makes_one():
        monkeypatch.setattr("farwall.cli.device.secrets.token_hex", lambda _: "aaaaaa")
        assert device_name() == "desk-aaaaaa"
        return "bbbbbb"

    assert device_name(some_hex=while_another_makes_one) == "desk-aaaaaa"


def test_many_at_once_agree(state):
    with ProcessPoolExecutor(4, mp_context=get_context("spawn")) as hands:
        names = set(hands.map(device_name, [None] * 16))
    assert len(names) == 1


def test_a_home_that_is_a_file_still_gives_a_name(state, monkeypatch, tmp_path):
    (tmp_path / "file").write_text("")
    monkeypatch.setenv("XDG_STATE_HOME", str(tmp_path / "file"))
    assert device_name().startswith("desk-")
