"""A file is read by a process of its own; however that ends, a calm sentence comes of it."""

import os
import sys
import threading
import time
from collections.abc import Callable
from pathlib import Path

import pytest
from tests.drawings import Manner, drawn
from tests.strategies.floors import House

from farwall.errors import FarwallError, Refused
from farwall.facts.reading import Reading
from farwall.readers import any_plan
from farwall.readers.apart import limits, start

HOUSE = drawn(House((4.0, 3.0), (3.0,), 0.1, ()), Manner())
linux = pytest.mark.skipif(sys.platform != "linux", reason="these walls are Linux's")


def told(content: bytes = HOUSE) -> str:
    """The sentences of a refusal."""
    with pytest.raises(Refused) as refusal:
        start.read_bytes(content, name="house.dxf")
    assert refusal.value.about == "house.dxf was not read."
    assert all(mistake.remedy for mistake in refusal.value.mistakes)
    return str(refusal.value)


def child_is(monkeypatch: pytest.MonkeyPatch, code: str) -> None:
    """Have the other process run this instead of a reader."""
    monkeypatch.setattr(start, "_BOOT", code)


def no_process_left() -> bool:
    try:
        return os.waitpid(-1, os.WNOHANG) == (0, 0)
    except ChildProcessError:
        return True


@pytest.mark.parametrize("scale", [None, 0.0254])
def test_the_reading_is_the_one_of_this_process(tmp_path: Path, scale: float | None) -> None:
    path = tmp_path / "house.dxf"
    path.write_bytes(HOUSE)
    here = any_plan.read_bytes(HOUSE, scale_m_per_unit=scale)
    assert any_plan.read_plan(path, scale_m_per_unit=scale) == here
    assert any_plan.read_content(HOUSE, scale_m_per_unit=scale) == here
    assert here.floor.rooms


def test_the_refusal_is_the_one_of_this_process() -> None:
    with pytest.raises(Refused) as here:
        any_plan.read_bytes(b"hello, slab", name="house.dxf")
    assert told(b"hello, slab") == str(here.value)


def test_a_file_without_a_name_is_refused_all_the_same() -> None:
    with pytest.raises(Refused) as refusal:
        any_plan.read_content(b"")
    assert refusal.value.about == "The file was not read."


@pytest.mark.parametrize("read", [any_plan.read_plan, any_plan.read_content])
def test_a_scale_that_cannot_be_is_refused_before_anything_is_opened(
    read: Callable[..., Reading],
) -> None:
    with pytest.raises(Refused, match="cannot be"):
        read(Path("none"), scale_m_per_unit=float("nan"))


def test_a_folder_is_refused(tmp_path: Path) -> None:
    with pytest.raises(Refused, match="This is a folder"):
        any_plan.read_plan(tmp_path)


@pytest.mark.skipif(sys.platform == "win32", reason="no such files there")
def test_a_pipe_and_a_device_are_refused_and_not_waited_for(tmp_path: Path) -> None:
    os.mkfifo(tmp_path / "pipe")
    for path in (tmp_path / "pipe", Path("/dev/zero")):
        with pytest.raises(Refused, match="a device or a pipe"):
            any_plan.read_plan(path)


def test_a_huge_file_is_refused_by_its_size_alone(tmp_path: Path) -> None:
    path = tmp_path / "huge.dxf"
    with path.open("wb") as file:
        file.truncate(limits.MOST_FILE_BYTES + 1)
    with pytest.raises(Refused, match="200 MB"):
        any_plan.read_plan(path)


def test_huge_bytes_are_refused_by_their_size_alone(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(limits, "MOST_FILE_BYTES", 1000)
    assert "more than the 0 that" in told(b"x" * 1001)


def test_what_sleeps_is_ended_by_the_clock(monkeypatch: pytest.MonkeyPatch) -> None:
    child_is(monkeypatch, "import time; time.sleep(600)")
    monkeypatch.setattr(limits, "WALL_S", 0.3)
    assert "takes longer than the 10 seconds" in told()
    assert no_process_left()


def gone_within(most_s: float, status: Path) -> bool:
    """Whether a process ends; one killed while it runs ends when its processor next looks."""
    until = time.monotonic() + most_s
    while time.monotonic() < until:
        try:
            if status.read_text().rpartition(")")[2].split()[0] in "ZX":
                return True
        except (FileNotFoundError, ProcessLookupError):
            return True
        time.sleep(0.02)
    return False


@linux
def test_what_it_began_is_ended_with_it(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    left = tmp_path / "left"
    child_is(
        monkeypatch,
        "import os, sys, time\n"
        "child = os.fork()\n"
        f"if child: open({str(left)!r}, 'w').write(str(child))\n"
        "time.sleep(600)",
    )
    monkeypatch.setattr(limits, "WALL_S", 2)
    told()
    assert gone_within(10.0, Path("/proc", left.read_text(), "stat"))


@linux
def test_what_reckons_for_ever_is_ended_by_the_system(monkeypatch: pytest.MonkeyPatch) -> None:
    child_is(
        monkeypatch,
        "import resource; resource.setrlimit(resource.RLIMIT_CPU, (1, 2))\nwhile True: pass",
    )
    assert "takes longer than the 10 seconds" in told()


@pytest.mark.parametrize(
    ("code", "words"),
    [
        ("import os; os.kill(os.getpid(), 9)", "signal 9"),
        ("import os; os.abort()", "signal 6"),
        ("import sys; sys.exit(3)", "exit 3"),
        ("raise ValueError", "exit 1"),
        ("", "unsound answer"),
        ("print('nothing')", "unsound answer"),
        ("print('[' * 1000000)", "unsound answer"),
        ("print('{\"reading\": {}}')", "unsound answer"),
        ('print(\'{"broke": "KeyError at read.py:3"}\')', "KeyError at read.py:3"),
        ('print(\'{"broke": "MemoryError at read.py:3"}\')', "more memory than the 1 GB"),
    ],
)
def test_however_it_ends_a_sentence_comes_of_it(
    monkeypatch: pytest.MonkeyPatch, code: str, words: str
) -> None:
    child_is(monkeypatch, code)
    assert words in told()
    assert no_process_left()


def test_where_no_process_can_be_started_this_is_told(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "executable", "/none/python")
    with pytest.raises(FarwallError, match="No process could be started"):
        start.read_bytes(HOUSE)


def test_no_more_than_so_many_are_read_at_once(monkeypatch: pytest.MonkeyPatch) -> None:
    lock, now, most = threading.Lock(), [0], [0]
    run = start._run

    def counted(order: dict[str, object], file: int) -> tuple[int | None, bytes]:
        with lock:
            now[0] += 1
            most[0] = max(most[0], now[0])
        try:
            return run(order, file)
        finally:
            with lock:
                now[0] -= 1

    monkeypatch.setattr(start, "_run", counted)
    found: list[Reading] = []
    threads = [
        threading.Thread(target=lambda: found.append(start.read_bytes(HOUSE)))
        for _ in range(start.AT_ONCE + 3)
    ]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert len(found) == len(threads)
    assert len(set(map(repr, found))) == 1
    assert 1 <= most[0] <= start.AT_ONCE
    assert no_process_left()


def test_who_waits_too_long_is_told_to_come_again(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(start, "_seats", threading.BoundedSemaphore(1))
    monkeypatch.setattr(start, "_WAIT_S", 0.01)
    with start._seats:
        assert "Too many files" in told()
    assert start.read_bytes(HOUSE).floor.rooms


@linux
def test_all_walls_stand_on_linux() -> None:
    """The kernel that runs these tests may lack one; what was forbidden failed all the same."""
    found = start.guards()
    assert found["holds"] == dict.fromkeys(found["holds"], True)
    assert len(found["holds"]) == 7
    assert found["guards"]["limits"]
    assert found["guards"]["hook"]
