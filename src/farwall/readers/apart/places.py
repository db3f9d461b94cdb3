"""Where Python and its libraries lie: all that a reader may look at."""

from __future__ import annotations

import os
import sys
import sysconfig
from collections.abc import Sequence
from pathlib import Path

_SYSTEM = (
    "/lib", "/lib64", "/usr/lib", "/usr/lib64", "/usr/local/lib", "/etc/ld.so.cache", "/dev/null",
    "/dev/urandom", "/proc/self", "/proc/cpuinfo", "/proc/meminfo", "/sys/devices/system/cpu",
)  # fmt: skip
_LIBRARY_FOLDERS = ("site-packages", "dist-packages")


def search_path() -> list[str]:
    """The folders from which the other process imports: ours, less any that is not Python's.

    Whoever starts Python in a folder of drawings has that folder on the path; a reader does not.
    """
    ours = str(Path(__file__).resolve().parents[3])
    homes = tuple(str(Path(home)) + os.sep for home in (sys.prefix, sys.base_prefix))
    kept = [
        entry
        for entry in sys.path
        if entry.startswith(homes) or Path(entry).name in _LIBRARY_FOLDERS
    ]
    return list(dict.fromkeys([*kept, ours]))


def readable(path: Sequence[str]) -> list[Path]:
    """Python's own folders, those of the search path, and the system's libraries."""
    own = [sysconfig.get_path(name) for name in ("stdlib", "platstdlib")]
    places = [*(entry for entry in own if entry), *path]
    if sys.platform == "linux":
        places += [*_SYSTEM, *_loaded()]
    return [Path(place) for place in dict.fromkeys(places)]


def _loaded() -> list[str]:
    """The folders of the libraries that this process runs on, wherever they lie."""
    maps = Path("/proc/self/maps")
    try:
        lines = maps.read_text(errors="replace").splitlines()
    except OSError:
        return []
    files = {line.split(maxsplit=5)[5] for line in lines if line.count("/")}
    return sorted({str(Path(file).parent) for file in files if ".so" in Path(file).name})
