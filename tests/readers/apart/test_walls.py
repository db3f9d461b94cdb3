"""Each wall by itself: what it forbids fails with nothing but it in the way."""

import re
import struct
import subprocess
import sys
from pathlib import Path

import pytest

from farwall.readers.apart import calls, hook, places, seccomp

linux = pytest.mark.skipif(sys.platform != "linux", reason="these walls are Linux's")
HEADERS = {
    "x86_64": Path("/usr/include/x86_64-linux-gnu/asm/unistd_64.h"),
    "aarch64": Path("/usr/include/asm-generic/unistd.h"),
}


def alone(wall: str, deed: str) -> str:
    """The last line of a process that puts up one wall and does something."""
    tried = (
        f"try:\n {deed}\n print('done')\nexcept OSError as e:\n print(type(e).__name__, e.errno)"
    )
    code = f"import os, ctypes, pathlib\n{wall}\n{tried}"
    asked = [sys.executable, "-c", code]
    return (
        subprocess.run(asked, check=False, capture_output=True, text=True)
        .stdout.strip()
        .rpartition("\n")[2]
    )


SECCOMP = "from farwall.readers.apart.seccomp import filter_calls; assert filter_calls()"
LANDLOCK = (
    "from farwall.readers.apart.landlock import read_only_below\n"
    "from farwall.readers.apart.places import readable, search_path\n"
    "assert read_only_below(readable(search_path()))"
)
HOOK = (
    "from farwall.readers.apart.hook import refuse_deeds\n"
    "from farwall.readers.apart.places import readable, search_path\n"
    "refuse_deeds(readable(search_path()))"
)
has_seccomp = pytest.mark.skipif(seccomp.machine() is None, reason="no table for this processor")
has_landlock = pytest.mark.skipif(
    alone(LANDLOCK, "pass") != "done", reason="this kernel has no Landlock"
)


@has_seccomp
@pytest.mark.parametrize(
    "deed",
    [
        "__import__('socket').socket()",
        "__import__('socket').socketpair()",
        "os.fork()",
        "os.posix_spawn('/bin/true', ['true'], {})",
        "os.execv('/bin/true', ['true'])",
        "open('/tmp/farwall-wall', 'w')",
        "open('/dev/null', 'r+')",
        "os.open('/dev/null', os.O_WRONLY)",
        "os.mkdir('/tmp/farwall-wall')",
        "os.unlink('/tmp/farwall-none')",
        "os.rename('/tmp/farwall-none', '/tmp/farwall-wall')",
        "os.symlink('/tmp', '/tmp/farwall-wall')",
        "os.chmod('/tmp/farwall-none', 0o600)",
        "os.kill(os.getppid(), 0)",
        "os.memfd_create('x')",
        "os.setpriority(os.PRIO_PROCESS, 0, 5)",
    ],
)
def test_the_filter_of_calls_forbids(deed: str) -> None:
    assert alone(SECCOMP, deed) == "PermissionError 1"


@has_seccomp
@pytest.mark.parametrize(
    "deed",
    [
        "open('/dev/null').read()",
        "__import__('threading').Thread(target=print).start()",
        "__import__('resource').getrlimit(0)",
        "os.listdir('/')",
        "bytearray(50_000_000)",
    ],
)
def test_the_filter_of_calls_lets_a_reader_work(deed: str) -> None:
    assert alone(SECCOMP, deed) == "done"


@has_seccomp
def test_the_filter_answers_that_it_knows_no_newer_call() -> None:
    ring = "ctypes.CDLL(None, use_errno=True).syscall(425, 1, 0)"
    deed = f"{ring}; raise OSError(ctypes.get_errno(), '')"
    assert alone(SECCOMP, deed) == "OSError 38"


@has_landlock
@pytest.mark.parametrize(
    "deed",
    [
        "open('/etc/passwd')",
        "os.listdir('/')",
        "os.listdir(pathlib.Path.home())",
        "open('/tmp/farwall-wall', 'w')",
        "os.execv('/bin/true', ['true'])",
    ],
)
def test_landlock_forbids(deed: str) -> None:
    assert alone(LANDLOCK, deed) == "PermissionError 13"


@has_landlock
def test_landlock_lets_a_reader_import() -> None:
    assert alone(LANDLOCK, "import numpy, shapely, ezdxf, cv2, pypdfium2, PIL.Image") == "done"


@pytest.mark.parametrize(
    "deed",
    [
        "open('/etc/passwd')",
        "os.open('/etc/passwd', os.O_RDONLY)",
        "open(os.path.join(os.path.dirname(os.__file__), '..', '..', '..', 'etc', 'passwd'))",
        "open(os.__file__, 'a')",
        "pathlib.Path('/tmp/farwall-wall').write_text('')",
        "os.listdir('/')",
        "os.mkdir('/tmp/farwall-wall')",
        "__import__('socket').socket()",
        "__import__('urllib.request').request.urlopen('http://127.0.0.1:9')",
        "__import__('subprocess').run(['true'])",
        "os.system('true')",
        "os.fork()",
    ],
)
def test_the_hook_forbids(deed: str) -> None:
    assert alone(HOOK, deed) == "PermissionError None"


def test_the_hook_lets_a_reader_import() -> None:
    assert alone(HOOK, "import numpy, shapely, ezdxf, cv2, pypdfium2, PIL.Image") == "done"


def test_the_hook_takes_no_folder_of_drawings_for_python(monkeypatch, tmp_path: Path) -> None:
    monkeypatch.syspath_prepend(str(tmp_path))
    monkeypatch.syspath_prepend("")
    assert str(tmp_path) not in places.search_path()
    assert all(Path(entry).is_absolute() for entry in places.search_path())
    assert hook.refuse_deeds.__doc__


@linux
@pytest.mark.parametrize("arch", list(calls.ARCHES))
def test_the_numbers_of_calls_are_those_of_the_kernels_headers(arch: str) -> None:
    if not HEADERS[arch].exists():
        pytest.skip(f"{HEADERS[arch].name} is not installed")
    text = HEADERS[arch].read_text()
    known = {
        name: int(number)
        for name, number in re.findall(r"#define __NR(?:3264)?_(\w+)\s+(\d+)\s", text)
    }
    column = list(calls.ARCHES).index(arch)
    ours = {name: numbers[column] for name, numbers in (calls.ASKED | calls.DENIED).items()}
    assert {name: known.get(name, 0) for name in ours} == ours
    new = {name: number for name, number in calls.NEW_ALLOWED.items() if name in known}
    assert {name: known[name] for name in new} == new


@pytest.mark.parametrize("arch", list(calls.ARCHES))
def test_the_filter_jumps_nowhere_but_into_itself(arch: str) -> None:
    program = seccomp.program_of(arch, 77)
    steps = list(struct.iter_unpack("<HBBI", program))
    assert len(steps) <= 4096  # BPF_MAXINSNS
    for at, (code, if_true, if_false, _) in enumerate(steps):
        assert code in (0x20, 0x15, 0x35, 0x45, 0x06)
        assert at + 1 + max(if_true, if_false) < len(steps) or code == 0x06
    assert steps[-1] == (0x06, 0, 0, 0x7FFF0000)
